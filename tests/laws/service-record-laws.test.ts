import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CalculationError } from '@seatwright/core';
import { appendChange, dateOf, serviceRecord } from '@seatwright/core/job';
import { theilSen } from '../../packages/core/src/job/internal/theil-sen.js';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const real = (min: number, max: number) => fc.integer({ min: min * 1000, max: max * 1000 }).map((value) => value / 1000);
const points = fc.uniqueArray(fc.integer({ min: 0, max: 200 }), { minLength: 2, maxLength: 15 }).chain((xs) => fc.tuple(...xs.toSorted((a, b) => a - b).map((x) => real(-50, 50).map((y) => ({ x, y })))));

test('a robust slope follows shift, scale and mirror of its points, lies in its interval, and is exact on a line', () => {
  fc.assert(
    fc.property(points, real(-100, 100), real(-5, 5), (list, shift, tilt) => {
      const base = theilSen(list);
      const moved = theilSen(list.map(({ x, y }) => ({ x, y: y + shift + tilt * x })));
      const mirrored = theilSen(list.map(({ x, y }) => ({ x, y: -y })));
      if (base === null || moved === null || mirrored === null) return expect(base).not.toBeNull();
      expect(moved.slope).toBeCloseTo(base.slope + tilt, 7);
      expect(mirrored.slope).toBeCloseTo(-base.slope, 9);
      if (base.interval !== null) {
        expect(base.interval.low).toBeLessThanOrEqual(base.slope);
        expect(base.interval.high).toBeGreaterThanOrEqual(base.slope);
      }
      const line = theilSen(list.map(({ x }) => ({ x, y: shift + tilt * x })));
      expect(line?.slope).toBeCloseTo(tilt, 8);
      return undefined;
    }),
    { numRuns },
  );
});

test('one wild reading among many does not bend the slope', () => {
  const line = Array.from({ length: 9 }, (_, x) => ({ x, y: 3 * x }));
  expect(theilSen(line.map((point, i) => (i === 4 ? { x: 4, y: 900 } : point)))?.slope).toBe(3);
});

const sample = JSON.parse(readFileSync(new URL('../../apps/bench/public/samples/bilge-pump.json', import.meta.url), 'utf8')) as { machines: { name: string; hourMeterHours?: number; positions: Record<string, unknown>[] }[] };
const withChanges = (changes: readonly unknown[], more: object = {}) => ({
  ...sample,
  machines: sample.machines.map((machine, m) => ({ ...machine, positions: machine.positions.map((position, p) => (m === 0 && p === 0 ? { ...position, ...more, changes } : position)) })),
});
const place = { machine: sample.machines[0]?.name ?? '', position: String(sample.machines[0]?.positions[0]?.['name']) };
const micrometer = (valueMm: number) => [{ instrument: 'inside-micrometer-rod', valuesMm: [valueMm] }];

const histories = fc.array(fc.record({ days: fc.integer({ min: 0, max: 500 }), hours: fc.integer({ min: 0, max: 200 }), boreUm: fc.option(fc.integer({ min: 0, max: 90 }), { nil: null }) }), { maxLength: 8 }).map((steps) => {
  let [day, hours] = [18_000, 0];
  return steps.map((step) => {
    day += step.days;
    hours += step.hours;
    return { date: dateOf(day), hourMeterHours: hours, renewed: 'seal', ...(step.boreUm === null ? {} : { boreReadings: micrometer(35 + step.boreUm / 1000) }) };
  });
});

test('any record: words, working and numbers hold; the forecast ends stand in order', () => {
  fc.assert(
    fc.property(histories, fc.integer({ min: 17_000, max: 25_000 }), (changes, today) => {
      const input = { workshop: withChanges(changes), ...place, asOfDate: dateOf(today) };
      const output = serviceRecord.run(input);
      expectWords(output);
      expectWorkingHolds(serviceRecord.explain(serviceRecord.input.parse(input), output));
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      const { changesLeftEarliestCount: earliest, changesLeftProbableCount: probable, changesLeftLatestCount: latest } = output.boreTrend ?? { changesLeftEarliestCount: null, changesLeftProbableCount: null, changesLeftLatestCount: null };
      if (earliest !== null && probable !== null) expect(earliest).toBeLessThanOrEqual(probable);
      if (probable !== null && latest !== null) expect(probable).toBeLessThanOrEqual(latest);
    }),
    { numRuns: Math.min(numRuns, 400) },
  );
});

test('appending one by one gives the same file as writing them at once, and touches nothing else', () => {
  fc.assert(
    fc.property(histories, (changes) => {
      const start = withChanges([], { ownField: { kept: true } });
      const before = JSON.stringify(start);
      const grown = changes.reduce<unknown>((file, change) => appendChange(file, place, change), start);
      expect(JSON.stringify(start)).toBe(before);
      expect(grown).toEqual(withChanges(changes, { ownField: { kept: true } }));
    }),
    { numRuns: Math.min(numRuns, 200) },
  );
});

test('a change that goes backwards or is none is refused, by name', () => {
  const file = withChanges([{ date: '2025-05-01', hourMeterHours: 300, renewed: 'seal' }]);
  const refused = (change: unknown) => {
    try {
      appendChange(file, place, change);
    } catch (error) {
      if (error instanceof CalculationError) return error.path;
    }
    return null;
  };
  expect(refused({ date: '2025-04-30', renewed: 'seal' })).toBe('change.date');
  expect(refused({ date: '2025-06-01', hourMeterHours: 299, renewed: 'seal' })).toBe('change.hourMeterHours');
  expect(refused({ date: '2025-02-30', renewed: 'seal' })).toBe('change.date');
  expect(refused({ date: '2025-06-01', renewed: 'gasket' })).toBe('change.renewed');
  expect(refused({ date: '2025-06-01', hourMeterHours: 301, renewed: 'seal' })).toBeNull();
});

test('a bore that grows evenly: limit, growth and the change that leaves it', () => {
  const changes = [0, 1, 2, 3, 4].map((i) => ({ date: `202${i}-05-01`, hourMeterHours: 100 * i, renewed: 'seal', boreReadings: micrometer(35 + 0.012 * i) }));
  const { boreTrend, medianIntervalHours, findings } = serviceRecord.run({ workshop: withChanges(changes), ...place });
  expect(boreTrend?.growthPerChangeUm).toBeCloseTo(12, 9);
  expect(boreTrend?.growthPer100HoursUm).toBeCloseTo(12, 9);
  expect(medianIntervalHours).toBe(100);
  const left = Math.max(0, Math.ceil((1000 * ((boreTrend?.limitMm ?? 0) - 35.048)) / 12));
  expect(boreTrend?.changesLeftProbableCount).toBe(left);
  expect(findings.map(({ code }) => code).some((code) => code.startsWith('bore-'))).toBe(true);
});

test('due is the earliest of hour meter and calendar', () => {
  const changes = [{ date: '2025-01-01', hourMeterHours: 100, renewed: 'seal' }];
  const at = (more: object) => serviceRecord.run({ workshop: withChanges(changes, more), ...place, asOfDate: '2025-02-01' });
  expect(at({ serviceIntervalHours: 100, serviceIntervalDays: 10 })).toMatchObject({ dueDate: '2025-01-11', dueAtHours: 200 });
  expect(at({ serviceIntervalDays: 365 }).dueDate).toBe('2026-01-01');
});
