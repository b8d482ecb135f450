import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jobSheet, type SealOutcome } from '@seatwright/core/job';
import { plainStyle } from '@seatwright/core/wording';
import { putInLine, takeOutLine } from './summaries.js';

interface SamplePosition {
  readonly name: string;
  shaft: { protrusionMm?: number };
}

/** The seal of the first sample, in its place as it is or as `change` leaves it. */
function sealOf(change: (position: SamplePosition) => void = () => undefined): SealOutcome {
  const workshop = JSON.parse(readFileSync(new URL('../../public/samples/bilge-pump.json', import.meta.url), 'utf8')) as { readonly machines: readonly [{ readonly name: string; readonly positions: readonly [SamplePosition] }] };
  const [{ name: machine, positions: [position] }] = workshop.machines;
  change(position);
  const seal = jobSheet.run({ workshop, machine, position: position.name, asOfDate: '2026-01-01' }).parts.find((part) => part.kind === 'seal');
  if (seal === undefined) throw new Error('the sample has no seal');
  return seal;
}

/** A number of a step as the steps write it. */
function told(steps: readonly { readonly parameters: Readonly<Record<string, number | string>> }[] | undefined, name: string): number {
  return Number(steps?.find(({ parameters }) => name in parameters)?.parameters[name]);
}

test('the line of taking out says the depth and the circle that its steps say', () => {
  const seal = sealOf();
  const steps = seal.extraction?.steps;
  const line = takeOutLine(seal, plainStyle);
  expect(line).toContain(`stop at ${told(steps, 'drillStopFromSealFaceMm')}\u00a0mm`);
  expect(line).toContain(`circle of ${2 * told(steps, 'holeCircleRadiusMm')}\u00a0mm`);
  expect(told(steps, 'drillStopFromSealFaceMm')).toBeLessThanOrEqual(seal.extraction?.hole.drillStopFromSealFaceMm ?? NaN);
});

test('where the face is pierced it says so, and no drill', () => {
  const seal = sealOf((position) => { position.shaft.protrusionMm = 400; });
  expect(seal.extraction?.hole.isPierced).toBe(true);
  const line = takeOutLine(seal, plainStyle);
  expect(line).toContain(`no deeper than ${told(seal.extraction?.steps, 'punchStopMm')}\u00a0mm`);
  expect(line).not.toMatch(/drill/iu);
});

test('the line of putting in says the gauge limits of its steps, which lie within those of the plan', () => {
  const seal = sealOf();
  const steps = seal.seating?.steps;
  const [low, high] = [told(steps, 'lowMm'), told(steps, 'highMm')];
  expect(putInLine(seal, 'tube', plainStyle)).toContain(`gauge ${String(low).replace('-', '−')}\u00a0mm to ${high}\u00a0mm`);
  expect(low).toBeGreaterThanOrEqual(seal.seating?.gauge?.lowMm ?? NaN);
  expect(high).toBeLessThanOrEqual(seal.seating?.gauge?.highMm ?? NaN);
});
