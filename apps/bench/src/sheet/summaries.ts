import type { JobSheetOutput, SealOutcome } from '@seatwright/core/job';
import type { PlanStep, Severity } from '@seatwright/core/result';
import { fill, wordFor, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';

/** The result of each block in one line. */

export function decideLine(output: JobSheetOutput): string {
  const findings = [...output.parts.flatMap((part) => part.findings), ...output.fileFindings];
  const count = (severity: Severity) => findings.filter((finding) => finding.severity === severity).length;
  const parts: (readonly [number, string])[] = [
    [count('bad'), words.bad],
    [count('unknown'), words.unknown],
    [count('care'), words.outstanding],
    [count('good'), words.inOrder],
  ];
  const counted = parts.filter(([n]) => n > 0).map(([n, word]) => `${n} ${word}`).join(', ');
  return `${sentences.values[output.verdict] ?? output.verdict}: ${counted}`;
}

export function takeOutLine(seal: SealOutcome, style: WritingStyle): string {
  const { extraction } = seal;
  if (extraction === null) return words.notComputed;
  const { hole, steps, screwCount } = extraction;
  const template = hole.isPierced ? words.out.pierced : words.out[extraction.method];
  const stopMm = toldIn(steps, hole.isPierced ? 'punchStopMm' : 'drillStopFromSealFaceMm');
  return fill(template, { drillMm: hole.drillMm ?? 0, holeCircleMm: 2 * toldIn(steps, 'holeCircleRadiusMm'), stopMm, screwCount }, sentences, style);
}

export function putInLine(seal: SealOutcome, driverName: string, style: WritingStyle): string {
  const { seating } = seal;
  if (seating === null) return words.notComputed;
  const name = driverName === '' ? words.in.noDriver : wordFor(driverName, sentences);
  const where = seating.seat === 'depth' ? fill(words.in.depth, { depthMm: seating.faceDepthMm?.nominal ?? 0 }, sentences, style) : words.in[seating.seat];
  const gauge = seating.gauge === null ? '' : `, ${fill(words.in.gauge, { lowMm: toldIn(seating.steps, 'lowMm'), highMm: toldIn(seating.steps, 'highMm') }, sentences, style)}`;
  return `${name}, ${where}${gauge}`;
}

export function measureLine(seal: SealOutcome, style: WritingStyle): string {
  const { check } = seal;
  const size = (label: string, value: { readonly meanMm: number; readonly expandedUncertaintyMm: number } | null) =>
    value === null ? `${label} ?` : `${label} ${writeValue('valueMm', value.meanMm, style)} ±\u00a0${writeValue('valueMm', value.expandedUncertaintyMm, style)}`;
  return check === null ? '' : `${size(sentences.labels['shaft'] ?? '', check.shaft)}, ${size(words.boreInLine, check.bore)}`;
}

/** When it is due again, as the printed sheet says it. */
export function dueLine({ due }: JobSheetOutput, style: WritingStyle): string {
  const label = (key: string) => sentences.labels[key] ?? key;
  if (due.intervalHours === null && due.intervalDays === null) return words.noInterval;
  const hours = (value: number) => writeValue('valueHours', value, style);
  const parts: string[] = [];
  if (due.intervalHours !== null) parts.push(`${label('dueEvery')} ${hours(due.intervalHours)}`);
  if (due.intervalDays !== null) parts.push(`${label('dueEvery')} ${due.intervalDays} ${label(due.intervalDays === 1 ? 'day' : 'days')}`);
  if (due.dueAtHours !== null) parts.push(`${label('dueAt')} ${hours(due.dueAtHours)}`);
  if (due.dueDate !== null) parts.push(`${label('dueDay')} ${wordFor(due.dueDate, sentences)}`);
  return parts.join(', ');
}

/** A number as the steps tell it, rounded to the safe side: the line above them says the same. */
function toldIn(steps: readonly PlanStep[], name: string): number {
  const [told = 0] = steps.flatMap(({ parameters }) => parameters[name] ?? []);
  return Number(told);
}
