import { inchFit } from '@seatwright/core/tolerance';
import { describe, expect, it } from 'vitest';

describe('ansi-b4-1-1967, tables of RC, LC, LT, LN and FN fits, sizes over 0.95 to 1.19 in (held: memory)', () => {
  /** Hole upper, hole lower, shaft upper, shaft lower, least and most clearance, in thousandths of an inch. */
  it.each([
    ['RC1', 0.4, 0, -0.3, -0.55, 0.3, 0.95],
    ['RC2', 0.5, 0, -0.3, -0.7, 0.3, 1.2],
    ['RC3', 0.8, 0, -0.8, -1.3, 0.8, 2.1],
    ['RC4', 1.2, 0, -0.8, -1.6, 0.8, 2.8],
    ['RC5', 1.2, 0, -1.6, -2.4, 1.6, 3.6],
    ['RC6', 2, 0, -1.6, -2.8, 1.6, 4.8],
    ['RC7', 2, 0, -2.5, -3.7, 2.5, 5.7],
    ['RC8', 3.5, 0, -4.5, -6.5, 4.5, 10],
    ['RC9', 5, 0, -7, -10.5, 7, 15.5],
    ['LC1', 0.5, 0, 0, -0.4, 0, 0.9],
    ['LC2', 0.8, 0, 0, -0.5, 0, 1.3],
    ['LC3', 1.2, 0, 0, -0.8, 0, 2],
    ['LC4', 3.5, 0, 0, -2, 0, 5.5],
    ['LC5', 0.8, 0, -0.3, -0.8, 0.3, 1.6],
    ['LC6', 2, 0, -0.8, -2, 0.8, 4],
    ['LC7', 3.5, 0, -1.6, -3.6, 1.6, 7.1],
    ['LC8', 3.5, 0, -2.5, -4.5, 2.5, 8],
    ['LC9', 5, 0, -4.5, -8, 4.5, 13],
    ['LC11', 12, 0, -10, -22, 10, 34],
    ['LT1', 0.8, 0, 0.25, -0.25, -0.25, 1.05],
    ['LT2', 1.2, 0, 0.4, -0.4, -0.4, 1.6],
    ['LT3', 0.8, 0, 0.6, 0.1, -0.6, 0.7],
    ['LT4', 1.2, 0, 0.9, 0.1, -0.9, 1.1],
    ['LT5', 0.8, 0, 1.1, 0.6, -1.1, 0.2],
    ['LT6', 0.8, 0, 1.4, 0.6, -1.4, 0.2],
    ['LN2', 0.8, 0, 1.3, 0.8, -1.3, 0],
    ['FN2', 0.8, 0, 1.9, 1.4, -1.9, -0.6],
    ['FN3', 0.8, 0, 2.1, 1.6, -2.1, -0.8],
    ['FN4', 0.8, 0, 2.3, 1.8, -2.3, -1],
    ['FN5', 1.2, 0, 3.3, 2.5, -3.3, -1.3],
  ])('%s', (fitClass, holeUpper, holeLower, shaftUpper, shaftLower, minimum, maximum) => {
    for (const nominalIn of [0.95001, 1, 1.19]) {
      expect(inchFit.run({ nominalIn, fitClass })).toMatchObject({
        hole: { upperThou: holeUpper, lowerThou: holeLower },
        shaft: { upperThou: shaftUpper, lowerThou: shaftLower },
        minimumThou: minimum,
        maximumThou: maximum,
      });
    }
  });
});

describe('ansi-b4-1-1967, FN2: limits of interference (held: memory)', () => {
  /** Upper end of the range [in], least and most interference in thousandths of an inch. */
  it.each([
    [0.12, 0.2, 0.85],
    [0.24, 0.2, 1],
    [0.4, 0.4, 1.4],
    [0.56, 0.5, 1.6],
    [0.71, 0.5, 1.6],
    [0.95, 0.6, 1.9],
    [1.19, 0.6, 1.9],
    [1.58, 0.8, 2.4],
    [1.97, 0.8, 2.4],
    [2.56, 0.8, 2.7],
    [3.15, 1, 2.9],
    [3.94, 1.4, 3.7],
    [4.73, 1.6, 3.9],
    [5.52, 1.9, 4.5],
    [6.3, 2.4, 5],
    [7.09, 2.9, 5.5],
    [7.88, 3.2, 6.2],
  ])('up to %d in', (nominalIn, least, most) => {
    expect(inchFit.run({ nominalIn, fitClass: 'FN2' })).toMatchObject({ minimumThou: -most, maximumThou: -least, kind: 'interference' });
  });
});
