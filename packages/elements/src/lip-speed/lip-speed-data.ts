import type { SourceReference } from '@seatwright/core/result';
import { writeValue, type Catalogue, type WritingStyle } from '@seatwright/core/wording';
import { writtenAs, type ChartOrWhy } from '../internal/chart/chart-data.js';
import { sourceText } from '../internal/source-text.js';
import type { ElementWords } from '../words/element-words.js';

/** A limit of the speed under the lip, by name. */
export interface LipLimit {
  readonly name: string;
  readonly limitMps: number;
  /** Where it comes from; a limit without one is told as such. */
  readonly source?: SourceReference;
}

/** The speed under the lip against the speed of the shaft, π·d·n, with the limits that it meets. */
export function lipSpeedData(shaftDiameterMm: number | null, speedRpm: number | null, limits: readonly LipLimit[], words: ElementWords, catalogue: Catalogue, style: WritingStyle): ChartOrWhy {
  const { lipSpeed } = words.charts;
  if (shaftDiameterMm === null || !(shaftDiameterMm > 0)) return { why: lipSpeed.nothing };
  const mpsAt = (rpm: number) => (Math.PI * shaftDiameterMm * rpm) / 60_000;
  const highestMps = Math.max(...limits.map(({ limitMps }) => limitMps), speedRpm === null ? 0 : mpsAt(speedRpm), 1);
  const endRpm = (1.15 * highestMps * 60_000) / (Math.PI * shaftDiameterMm);
  const rpm = (value: number) => writeValue('speedRpm', value, style);
  const mps = (value: number) => writeValue('speedMps', value, style);
  const here = speedRpm === null ? '' : ` ${lipSpeed.here}: ${rpm(speedRpm)}, ${mps(mpsAt(speedRpm))}.`;
  return {
    title: lipSpeed.title,
    spoken: `${lipSpeed.spoken}${here} ${limits.map(({ name, limitMps }) => `${name}: ${mps(limitMps)}`).join('; ')}`,
    x: { label: lipSpeed.shaft, from: 0, to: endRpm, ...writtenAs('speedRpm', style) },
    y: { label: lipSpeed.lip, from: 0, to: 1.15 * highestMps, ...writtenAs('speedMps', style) },
    bands: [],
    boxes: [],
    lines: [{ name: lipSpeed.line, pattern: 'first', points: [{ x: 0, y: 0 }, { x: endRpm, y: mpsAt(endRpm) }] }],
    limits: limits.map(({ name, limitMps }) => ({ name: `${name}, ${mps(limitMps)}`, axis: 'y' as const, at: limitMps })),
    marks: speedRpm === null ? [] : [{ name: lipSpeed.here, x: speedRpm, y: mpsAt(speedRpm) }],
    table: {
      columns: [lipSpeed.what, lipSpeed.lip, lipSpeed.shaft, lipSpeed.from],
      rows: [...(speedRpm === null ? [] : [[lipSpeed.here, mps(mpsAt(speedRpm)), rpm(speedRpm), '']]), ...limits.map(({ name, limitMps, source }) => [name, mps(limitMps), rpm((limitMps * 60_000) / (Math.PI * shaftDiameterMm)), source === undefined ? lipSpeed.given : sourceText(source, catalogue)])],
    },
  };
}
