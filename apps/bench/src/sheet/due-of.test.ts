import { expect, test } from 'vitest';
import type { Json, JsonObject } from '../document/raw-document.js';
import { dueOf } from './due-of.js';

const seal: Json = { kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const file = (machine: JsonObject, positions: readonly Json[]): JsonObject => ({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', ...machine, positions }] });
const told = (document: JsonObject) => dueOf(document, '2026-03-02').replaceAll('\u00a0', ' ');

test('the most urgent position of a file is told: overdue before due, sooner before later', () => {
  const changes: Json = [{ date: '2026-01-10', hourMeterHours: 300, renewed: 'seal' }];
  const at = (name: string, serviceIntervalHours: number): Json => ({ name, serviceIntervalHours, parts: [seal], changes });
  expect(told(file({ hourMeterHours: 360 }, [at('drive side', 100)]))).toBe('Bilge pump: due in 40 h');
  expect(told(file({ hourMeterHours: 360 }, [at('drive side', 100), at('far side', 80)]))).toBe('Bilge pump, far side: due in 20 h');
  expect(told(file({ hourMeterHours: 420 }, [at('drive side', 150), at('far side', 100)]))).toBe('Bilge pump, far side: overdue by 20 h');
});

test('a file without intervals, or one that cannot be read yet, says nothing', () => {
  expect(told(file({}, [{ name: 'drive side', parts: [seal] }]))).toBe('');
  expect(told(file({ hourMeterHours: 'many' }, [{ name: 'drive side', parts: [seal] }]))).toBe('');
  expect(told({ format: 'other' })).toBe('');
});
