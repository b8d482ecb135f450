import { expect, test } from 'vitest';
import type { Json, JsonObject } from '../document/raw-document.js';
import { duesOf } from './due-of.js';

const seal: Json = { kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const file = (machine: JsonObject, positions: readonly Json[]): JsonObject => ({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', ...machine, positions }] });
const told = (document: JsonObject) => [...duesOf(document, '2026-03-02')].map(([key, { text, isOverdue }]) => `${key} ${text.replaceAll('\u00a0', ' ')}${isOverdue ? '!' : ''}`);
const changes: Json = [{ date: '2026-01-10', hourMeterHours: 300, renewed: 'seal' }];
const at = (name: string, serviceIntervalHours: Json): Json => ({ name, serviceIntervalHours, parts: [seal], changes });

test('each position tells when it is due, or by how much it is over', () => {
  expect(told(file({ hourMeterHours: 360 }, [at('drive side', 100), at('far side', 80)]))).toEqual(['0.0 due in 40 h', '0.1 due in 20 h']);
  expect(told(file({ hourMeterHours: 420 }, [at('drive side', 150), at('far side', 100)]))).toEqual(['0.0 due in 30 h', '0.1 overdue by 20 h!']);
  expect(told(file({ serviceIntervalDays: 30 }, [{ name: 'drive side', parts: [seal], changes }]))).toEqual(['0.0 overdue by 21 days!']);
});

test('a position without an interval says nothing, and one half typed does not silence the others', () => {
  expect(told(file({}, [{ name: 'drive side', parts: [seal] }]))).toEqual([]);
  expect(told(file({ hourMeterHours: 360 }, [at('drive side', 'many'), at('far side', 80)]))).toEqual(['0.1 due in 20 h']);
  expect(told(file({ hourMeterHours: 'many' }, [at('drive side', 100)]))).toEqual([]);
  expect(told({ format: 'other' })).toEqual([]);
});
