import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CalculationError } from '@seatwright/core';
import { disputedPoints, leakCheck, leakSearch, type LeakCheckInput } from '@seatwright/core/handwork';
import { english } from '@seatwright/core/wording';
import { leakCheckNames, outcomesOf, suspects } from '../../packages/core/src/handwork/internal/leak-checks.js';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords, numbersIn } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

const holds: fc.Arbitrary<LeakCheckInput> = fc.record(
  {
    volumeCm3: fc.integer({ min: 1, max: 100_000 }),
    startPressureMpa: fc.oneof(fc.integer({ min: 1, max: 500 }), fc.integer({ min: -80, max: -1 })).map((kpa) => kpa / 1000),
    share: fc.integer({ min: 0, max: 100 }),
    holdHours: fc.integer({ min: 1, max: 6000 }).map((seconds) => seconds / 3600),
    temperatures: fc.option(fc.tuple(fc.integer({ min: -10, max: 60 }), fc.integer({ min: -10, max: 60 })), { nil: undefined }),
    limitDropMpa: fc.integer({ min: 1, max: 50 }).map((kpa) => kpa / 1000),
  },
  { requiredKeys: ['volumeCm3', 'startPressureMpa', 'share', 'holdHours'] },
).map(({ share, temperatures, startPressureMpa, ...rest }) => ({
  ...rest,
  startPressureMpa,
  endPressureMpa: (startPressureMpa * share) / 100,
  ...(temperatures === undefined ? {} : { startTemperatureC: temperatures[0], endTemperatureC: temperatures[1] }),
}));

test('leak-check: words, working and numbers hold; more time, a finer gauge and a larger volume do what they should', () => {
  fc.assert(
    fc.property(holds, (input) => {
      const output = leakCheck.compute(input);
      expectWords(output);
      expectWorkingHolds(leakCheck.explain(input, output));
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      expect(leakCheck.compute({ ...input, holdHours: input.holdHours * 2 }).leakPaM3PerS).toBeCloseTo(output.leakPaM3PerS / 2, 9);
      expect(leakCheck.compute({ ...input, volumeCm3: input.volumeCm3 * 2 }).leakPaM3PerS).toBeCloseTo(output.leakPaM3PerS * 2, 6);
      const finer = leakCheck.compute({ ...input, gaugeErrorMpa: 0.0001 });
      expect(finer.leakUncertaintyMlPerMin).toBeLessThanOrEqual(output.leakUncertaintyMlPerMin);
      const [coarse] = output.findings;
      if (coarse?.code === 'holds-air' || coarse?.code === 'leaks-air') expect(finer.findings[0]?.code).toBe(coarse.code);
    }),
    { numRuns },
  );
});

test('leak-check: the same readings backwards in time are the same leak the other way; units do not matter', () => {
  fc.assert(
    fc.property(holds, fc.integer({ min: 1, max: 99 }), ({ startPressureMpa, ...rest }, percent) => {
      const endPressureMpa = (startPressureMpa * percent) / 100;
      const { startTemperatureC, endTemperatureC, ...others } = rest;
      const swapped = startTemperatureC === undefined || endTemperatureC === undefined ? {} : { startTemperatureC: endTemperatureC, endTemperatureC: startTemperatureC };
      const there = leakCheck.compute({ ...rest, startPressureMpa, endPressureMpa });
      const back = leakCheck.compute({ ...others, ...swapped, startPressureMpa: endPressureMpa, endPressureMpa: startPressureMpa });
      expect(back.leakPaM3PerS).toBeCloseTo(-there.leakPaM3PerS, 9);
      const inBar = leakCheck.run({ ...rest, holdHours: `${rest.holdHours * 3600} s`, startPressureMpa: `${startPressureMpa * 10} bar`, endPressureMpa: `${endPressureMpa * 1000} kPa` });
      expect(inBar.leakMlPerMin / (there.leakMlPerMin || 1)).toBeCloseTo(there.leakMlPerMin === 0 ? inBar.leakMlPerMin : 1, 5);
    }),
    { numRuns },
  );
});

test('leak-check: after the time told the gauge decides; where none is told, ten times as long does not', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: -40, max: 40 }), fc.constantFrom(0, 2, 10), fc.constantFrom(0.00005, 0.0016), (dropTenthKpa, offPercent, volumeErrorPercent, gaugeErrorMpa) => {
      const dropMpa = dropTenthKpa / 1e4;
      // Temperatures and gauge as given, the same leak for as long as it takes: the pressure falls evenly.
      const held = (times: number, limitMlPerMin?: number) => leakCheck.compute({ volumeCm3: 500, startPressureMpa: 0.05, endPressureMpa: 0.05 - dropMpa * times, holdHours: 0.1 * times, gaugeErrorMpa, volumeErrorPercent, temperatureErrorK: 1e-6, ...(limitMlPerMin === undefined ? {} : { limitMlPerMin }) });
      const limit = held(1).leakMlPerMin * (1 + (offPercent + 0.5) / 100);
      const first = held(1, limit);
      if (first.verdict !== 'cannot tell') expect(first.holdToDecideHours).toBeNull();
      else if (first.holdToDecideHours === null) {
        expect(first.findings[0]?.code).toBe('leak-too-near-limit');
        expect(held(Math.min(10, 0.05 / dropMpa), limit).verdict).toBe('cannot tell');
      } else expect(held((first.holdToDecideHours / 0.1) * 1.000001, limit).verdict).not.toBe('cannot tell');
    }),
    { numRuns },
  );
});

test('leak-check: a coarse step of the gauge widens, a fine one hardly', () => {
  const test = { volumeCm3: 300, startPressureMpa: 0.05, endPressureMpa: 0.04, holdHours: 0.1 };
  const [none, fine, coarse] = [undefined, 0.00001, 0.005].map((gaugeStepMpa) => leakCheck.compute({ ...test, ...(gaugeStepMpa === undefined ? {} : { gaugeStepMpa }) }).leakUncertaintyMlPerMin);
  expect(fine).toBeCloseTo(none ?? 0, 4);
  expect(coarse).toBeGreaterThan((none ?? 0) * 1.3);
});

test('a tight part that warms or cools does not leak; its pressure moves by the gas law', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 200 }), fc.integer({ min: 0, max: 50 }), fc.integer({ min: 0, max: 50 }), (kpa, startTemperatureC, endTemperatureC) => {
      const absolute = 0.101325 + kpa / 1000;
      const end = (absolute * (endTemperatureC + 273.15)) / (startTemperatureC + 273.15) - 0.101325;
      if (end < 0) return;
      const output = leakCheck.compute({ volumeCm3: 1000, startPressureMpa: kpa / 1000, endPressureMpa: end, holdHours: 0.1, startTemperatureC, endTemperatureC });
      expect(output.leakMlPerMin).toBeCloseTo(0, 9);
      expect(output.pressureByHeatMpa).toBeCloseTo(end - kpa / 1000, 12);
      expect(output.equivalentHoleMm === null || output.equivalentHoleMm.high < 1e-4).toBe(true);
    }),
    { numRuns },
  );
});

test('a hole at sonic flow: 0.1 mm passes some 0.1 L/min at 2 bar over the air (orifice formula by hand)', () => {
  // m = C·A·P·√(γ/(R·T))·(2/(γ+1))^((γ+1)/(2(γ−1))): C 0.6, A 7.854e-9 m², P 301 325 Pa, T 293.15 K → 3.351e-6 kg/s → 167 mL/min.
  const massFlow = 0.6 * ((Math.PI * 1e-8) / 4) * 301_325 * Math.sqrt(1.4 / (287.05 * 293.15)) * (2 / 2.4) ** 3;
  const q = massFlow * 287.05 * 293.15;
  const volume = 0.01;
  const output = leakCheck.compute({ volumeCm3: volume * 1e6, startPressureMpa: 0.2 + (q * 60) / volume / 2 / 1e6, endPressureMpa: 0.2 - (q * 60) / volume / 2 / 1e6, holdHours: 60 / 3600 });
  expect(output.equivalentHoleMm?.high).toBeCloseTo(0.1, 6);
  expect(output.leakMlPerMin).toBeCloseTo((q / 101_325) * 60e6, 6);
});

test('leak-search: every check and outcome has words; answers only narrow; the search ends', () => {
  for (const check of leakCheckNames) expect(english.steps[`leak-${check}`], check).toBeDefined();
  for (const suspect of suspects) {
    expect(english.findings[`suspect-${suspect}`], suspect).toBeDefined();
    expect(english.values[suspect], suspect).toBeDefined();
    expect(leakCheckNames.some((check) => Object.values(outcomesOf(check)).some(({ convicts }) => convicts.includes(suspect))), suspect).toBe(true);
  }
  const answer = fc.constantFrom(...leakCheckNames).chain((check) => fc.constantFrom(...Object.keys(outcomesOf(check))).map((outcome) => ({ check, outcome })));
  fc.assert(
    fc.property(fc.uniqueArray(answer, { selector: ({ check }) => check, maxLength: 13 }), fc.boolean(), (answers, isTwoStrokeCrankcase) => {
      let before = leakSearch.compute({ isTwoStrokeCrankcase });
      for (let i = 1; i <= answers.length; i += 1) {
        let now: typeof before;
        try {
          now = leakSearch.compute({ answers: answers.slice(0, i), isTwoStrokeCrankcase });
        } catch (error) {
          expect((error as CalculationError).code).toBe('contradiction');
          return;
        }
        expectWords({ ...now, findings: [...now.found, ...now.suspects], cautions: now.nextChecks.flatMap(({ step }) => step.cautions) });
        expect(now.suspects.length).toBeLessThanOrEqual(before.suspects.length);
        expect(now.found.length).toBeGreaterThanOrEqual(before.found.length);
        expect(now.nextChecks.map(({ check }) => check)).not.toContain(answers[i - 1]?.check);
        before = now;
      }
    }),
    { numRuns },
  );
});

test('leak-search: says what it would understand, and who is found out', () => {
  expect(() => leakSearch.run({ answers: [{ check: 'oil-level', outcome: 'low' }] })).toThrow(/right; too high/);
  expect(() => leakSearch.run({ answers: [{ check: 'oil-level', outcome: 'right' }, { check: 'oil-level', outcome: 'too high' }] })).toThrow(/answered twice/);
  const { found, nextChecks } = leakSearch.run({ answers: [{ check: 'oil-level', outcome: 'right' }, { check: 'breather-open', outcome: 'blocked' }] });
  expect(found.map(({ code }) => code)).toEqual(['suspect-breather-blocked']);
  expect(nextChecks[0]?.check).toBe('clean-dust-and-run');
});

test('disputed points: an answer and evidence in words for each, the weightiest first, none dressed up', () => {
  for (const { answer, evidence } of disputedPoints.run({}).points) {
    expectWords({ findings: [answer, ...evidence.map(({ finding }) => finding)], assumptions: [], notChecked: [] });
    expect(evidence.length).toBeGreaterThan(1);
    for (const { weight, finding } of evidence) {
      if (weight === 'published standard' || weight === 'handbook' || weight === 'maker or army manual' || weight === 'trade article') expect(finding.source.held).toBe('page');
      else expect(finding.source.held).not.toBe('page');
    }
  }
  expect(disputedPoints.run({ point: 'scratch' }).points).toHaveLength(1);
});
