import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CalculationError } from '@seatwright/core';
import { appendChange, dateOf, jobSheet, serviceRecord } from '@seatwright/core/job';
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
      expect(theilSen(list.map(({ x, y }) => ({ x: x * 4, y: y * 2 })))?.slope).toBeCloseTo(base.slope / 2, 9);
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

test('an interval of 95 % needs five points: of four, two orders in 24 put every slope on one side', () => {
  const orders = (rest: readonly number[]): number[][] => (rest.length === 0 ? [[]] : rest.flatMap((one, i) => orders(rest.filter((_, at) => at !== i)).map((order) => [one, ...order])));
  for (const n of [4, 5, 6]) {
    const all = orders(Array.from({ length: n }, (_, i) => i));
    const held = all.filter((ys) => {
      const interval = theilSen(ys.map((y, x) => ({ x, y })))?.interval;
      return interval === null || interval === undefined || (interval.low <= 0 && interval.high >= 0);
    });
    expect(held.length / all.length).toBeGreaterThanOrEqual(0.95);
  }
  expect(theilSen([0, 1, 2, 3].map((x) => ({ x, y: x })))?.interval).toBeNull();
});

const evenly = (stepUm: number, count = 5) => Array.from({ length: count }, (_, i) => ({ date: `20${10 + i}-05-01`, hourMeterHours: 100 * i, renewed: 'seal', boreReadings: micrometer(35 + (stepUm * i) / 1000) }));

test('the forecast: the faster a bore grows the sooner it leaves its limit, by changes and by hours', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }), (a, b) => {
      const [slow, fast] = [Math.min(a, b), Math.max(a, b)].map((step) => serviceRecord.run({ workshop: withChanges(evenly(step)), ...place, forecastChangeCount: 100 }).boreTrend);
      expect(fast?.changesLeftProbableCount).toBeLessThanOrEqual(slow?.changesLeftProbableCount ?? 0);
      expect(fast?.leavesLimitProbableHours).toBeLessThanOrEqual(slow?.leavesLimitProbableHours ?? 0);
    }),
    { numRuns: Math.min(numRuns, 60) },
  );
});

test('a bore that grows evenly with the hours makes it due before the meter does, and says so', () => {
  const grown = serviceRecord.run({ workshop: withChanges(evenly(8), { serviceIntervalHours: 1000 }), ...place });
  const trend = grown.boreTrend;
  expect(trend?.leavesLimitEarliestHours).toBeCloseTo(400 + (1000 * ((trend?.limitMm ?? 0) - 35.032)) / 8 * 100, 6);
  expect(grown).toMatchObject({ dueBy: 'growth of the bore', dueAtHours: trend?.leavesLimitEarliestHours });
  expect(serviceRecord.run({ workshop: withChanges(evenly(8), { serviceIntervalHours: 10 }), ...place })).toMatchObject({ dueBy: 'hour meter', dueAtHours: 410 });
});

test('a lip travel that is permitted decides where it is run before the hours, on the record and on the sheet', () => {
  const changes = [{ date: '2025-01-01', hourMeterHours: 1200, renewed: 'seal' }];
  const input = (serviceLipTravelKm: number) => ({ workshop: withChanges(changes, { serviceIntervalHours: 500, serviceLipTravelKm }), ...place });
  const kmInHour = (serviceRecord.run(input(1000)).lipTravelToDateKm ?? 0) / 40;
  expect(serviceRecord.run(input(kmInHour * 100))).toMatchObject({ dueBy: 'lip travel', dueAtHours: expect.closeTo(1300, 6) as number });
  expect(serviceRecord.run(input(kmInHour * 900))).toMatchObject({ dueBy: 'hour meter', dueAtHours: 1700 });
  expect(jobSheet.run(input(kmInHour * 100)).due).toMatchObject({ intervalFrom: 'lip travel', intervalHours: expect.closeTo(100, 6) as number });
});

test('a bearing alone does not renew the seal in front of it', () => {
  const changes = [{ date: '2025-01-01', hourMeterHours: 1100, renewed: 'seal' }, { date: '2025-06-01', hourMeterHours: 1150, renewed: 'bearing' }];
  const workshop = withChanges(changes, { serviceIntervalHours: 100 });
  expect(serviceRecord.run({ workshop, ...place }).dueAtHours).toBe(1200);
  expect(jobSheet.run({ workshop, ...place }).due.sinceLastHours).toBe(140);
});

test('the meter in the file behind its own record: lip travel goes by the record, and the file is named', () => {
  const changes = [{ date: '2025-01-01', hourMeterHours: 100, renewed: 'seal' }, { date: '2025-06-01', hourMeterHours: 1640, renewed: 'seal' }];
  const { lipTravelToDateKm, findings } = serviceRecord.run({ workshop: withChanges(changes), ...place });
  expect(lipTravelToDateKm).toBeCloseTo(((serviceRecord.run({ workshop: withChanges(changes.slice(0, 1)), ...place }).lipTravelToDateKm ?? 0) * 1540) / 1140, 6);
  expect(findings.map(({ code }) => code)).toContain('hour-meter-behind-record');
});

test('a meter that goes back is a new one: its hours are added, and a renewal ahead of the file\'s meter is told', () => {
  const dates = ['2025-01-01', '2025-02-01', '2025-03-01', '2025-04-01'];
  const changes = [700, 800, 30, 130].map((hourMeterHours, i) => ({ date: dates[i], hourMeterHours, renewed: 'seal' }));
  const straight = [0, 100, 130, 230].map((hourMeterHours, i) => ({ date: dates[i], hourMeterHours: 1000 + hourMeterHours, renewed: 'seal' }));
  const kmOf = (list: object[]) => serviceRecord.run({ workshop: withChanges(list), ...place }).lipTravelToDateKm;
  const codes = (list: object[]) => serviceRecord.run({ workshop: withChanges(list, { serviceIntervalHours: 5000 }), ...place }).findings.map(({ code }) => code);
  // The file's meter reads 1240: 1110 h after the last change here, 10 h there.
  expect((kmOf(changes) ?? 0) / (kmOf(straight) ?? 1)).toBeCloseTo((230 + 1110) / (230 + 10), 9);
  expect(codes(changes)).toContain('hour-meter-went-back');
  expect(codes(straight)).not.toContain('hour-meter-went-back');
  expect(codes([...straight, straight[3] ?? {}])).toContain('change-written-twice');
  const ahead = serviceRecord.run({ workshop: withChanges([{ date: '2025-01-01', hourMeterHours: 1300, renewed: 'seal' }], { serviceIntervalHours: 100 }), ...place });
  expect(ahead).toMatchObject({ dueAtHours: 1400, overdueHours: null });
  expect(ahead.findings).toMatchObject([{ code: 'hour-meter-behind-record', severity: 'note', parameters: { meterHours: 1240, recordHours: 1300 } }]);
});

test('growth over hours is not told across two meters', () => {
  const meters = [900, 1000, 0, 100, 200];
  const reset = evenly(2).map((change, i) => ({ ...change, hourMeterHours: meters[i] }));
  const { boreTrend } = serviceRecord.run({ workshop: withChanges(reset), ...place });
  expect(boreTrend).toMatchObject({ growthPer100HoursUm: null, leavesLimitEarliestHours: null });
  expect(boreTrend?.growthPerChangeUm).toBeCloseTo(2, 6);
});

test('a slip among the readings on record is told, and left out of the growth', () => {
  const slipped = evenly(2).map((change, i) => (i === 2 ? { ...change, boreReadings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01, 53.01] }] } : change));
  const { findings, boreTrend, changes } = serviceRecord.run({ workshop: withChanges(slipped), ...place });
  expect(findings).toMatchObject(expect.arrayContaining([expect.objectContaining({ code: 'readings-contradict', role: 'supporting' })]) as object);
  expect(changes[2]?.boreMm).toBeNull();
  expect(boreTrend?.growthPerChangeUm).toBeCloseTo(2, 6);
});

test('a record that cannot be read does not vanish from the sheet; one that looks ahead says on what ground', () => {
  const broken = evenly(2).map((change, i) => (i === 4 ? { ...change, boreReadings: [{ instrument: 'a stick', valuesMm: [35] }] } : change));
  const sheet = jobSheet.run({ workshop: withChanges(broken), ...place });
  expect(sheet.fileFindings.find(({ code }) => code === 'could-not-compute')?.parameters['reason']).toMatch(/changes\[4\]\.boreReadings/u);
  expect(jobSheet.run({ workshop: withChanges(evenly(5)), ...place }).notChecked).toContain('wear-goes-on-as-before');
});

test('without the hours of a year nobody says whether meter or calendar comes first', () => {
  const running = { speedRpm: 1450 };
  const changes = [{ date: '2025-01-01', hourMeterHours: 1200, renewed: 'seal' }];
  const at = (more: object) => serviceRecord.run({ workshop: withChanges(changes, { serviceIntervalHours: 100, serviceIntervalDays: 3000, ...more }), ...place });
  expect(at({ running }).dueBy).toBe('whichever comes first');
  expect(at({ running: { ...running, hoursPerYear: 900 } }).dueBy).toBe('hour meter');
});
