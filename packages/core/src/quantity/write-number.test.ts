import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fixedText, writeNumber } from './write-number.js';

test('half of the last place goes up as on paper, whatever the machine makes of it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999_999 }), fc.integer({ min: 0, max: 6 }), fc.boolean(), (digits, decimals, isNegative) => {
      const sign = isNegative ? '-' : '';
      const shift = 10n ** BigInt(decimals);
      const decimal = (whole: bigint, places: number) => (places === 0 ? String(whole) : `${whole / shift}.${String(whole % shift).padStart(places, '0')}`);
      // The digits with a 5 behind them, as somebody types it; and as rounded on paper.
      const typed = decimals === 0 ? `${digits}.5` : `${decimal(BigInt(digits), decimals)}5`;
      expect(fixedText(Number(sign + typed), decimals)).toBe(sign + decimal(BigInt(digits) + 1n, decimals));
      expect(Number(fixedText(Number(sign + typed), decimals + 1))).toBe(Number(sign + typed));
    }),
  );
});

test('what lies clearly to one side goes there, and what is too large for decimals stays as it is', () => {
  expect([fixedText(28.5749, 2), fixedText(28.5751, 2), fixedText(2.5, 0), fixedText(123_456_789_012_345.6, 1)]).toEqual(['28.57', '28.58', '3', '123456789012345.6']);
  expect(writeNumber(-0.0004, 3)).toBe('0.000');
  expect(writeNumber(-0.0005, 3)).toBe('−0.001');
});
