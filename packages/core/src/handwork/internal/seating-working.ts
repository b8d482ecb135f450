import { plainGeometry, source, type WorkingStep } from '../../result/index.js';
import { widthToleranceMm } from '../../seal/index.js';
import { calliperUncertainty } from './calliper.js';
import { tiltShare } from './final-depth.js';
import { seatShare, type Seating } from './seating.js';

/** The working of a seating plan: depth, gauge, grip, move of the lip. */
export function seatingWorking(plan: Seating): readonly WorkingStep[] {
  return [...depthSteps(plan), ...gripSteps(plan), ...moveSteps(plan)];
}

function depthSteps({ final, situation, gauge }: Seating): readonly WorkingStep[] {
  const { bore, seal } = situation;
  const { depthMm, kind } = final;
  const steps: WorkingStep[] = [{ kind: 'choice', symbol: 'seat', meaning: 'where the seal ends', value: kind, unit: '', why: situation.seat === undefined ? 'not said: the shoulder if there is one, else flush' : 'as asked for', source: source('workshop-manuals-1995', 'page', 'to the shoulder; flush where there is none') }];
  if (depthMm === null) return steps;
  if (kind === 'shoulder' && bore?.depthMm !== undefined) {
    const T = bore.depthMm;
    const b = seal.widthMm;
    const v = widthToleranceMm(situation);
    const U = calliperUncertainty('depth', T).uncertaintyMm;
    steps.push(
      { kind: 'formula', symbol: 'h', meaning: 'outer face below the housing face', formula: 'T - b', scope: { T, b }, value: depthMm.nominal, unit: 'mm', source: plainGeometry },
      { kind: 'formula', symbol: 'h_low', meaning: 'least', formula: 'T - b - (v + U)', scope: { T, b, v, U }, value: depthMm.low, unit: 'mm', source: plainGeometry },
      { kind: 'formula', symbol: 'h_high', meaning: 'most', formula: 'T - b + (v + U)', scope: { T, b, v, U }, value: depthMm.high, unit: 'mm', source: plainGeometry },
    );
  } else steps.push({ kind: 'choice', symbol: 'h', meaning: 'outer face below the housing face', value: depthMm.nominal, unit: 'mm', why: kind, source: plainGeometry });
  if (gauge !== null) steps.push({ kind: 'formula', symbol: 's', meaning: 'largest spread of four readings', formula: 'k * D', scope: { k: tiltShare.good, D: seal.outsideMm }, value: gauge.largestSpreadMm, unit: 'mm', source: tiltShare.source });
  return steps;
}

function gripSteps({ situation, section, final, engagedMm, leastEngagedMm, chamferLengthMm, boreLeftMm }: Seating): readonly WorkingStep[] {
  const din = source('din-3760-1996', 'page', 't1 = 0.85 b');
  const steps: WorkingStep[] = [{ kind: 'formula', symbol: 't_1', meaning: 'seat length asked for', formula: 'k * b', scope: { k: seatShare, b: situation.seal.widthMm }, value: leastEngagedMm, unit: 'mm', source: din }];
  const { depthMm } = final;
  if (engagedMm === null || depthMm === null) return steps;
  const T = situation.bore?.depthMm;
  const grips = (h: number, b: number) => Math.max(Math.min(h + b, T ?? Infinity) - Math.max(h, chamferLengthMm), 0);
  const widths = [section.widthMm.low, section.widthMm.high];
  const least = [depthMm.low, depthMm.nominal, depthMm.high].flatMap((h) => widths.map((b) => ({ h, b }))).reduce((found, pair) => (grips(pair.h, pair.b) < grips(found.h, found.b) ? pair : found));
  steps.push(
    T === undefined
      ? { kind: 'formula', symbol: 'e', meaning: 'least length that grips plain bore', formula: 'max(h + b - max(h, c), 0)', scope: { ...least, c: chamferLengthMm }, value: engagedMm.low, unit: 'mm', source: plainGeometry }
      : { kind: 'formula', symbol: 'e', meaning: 'least length that grips plain bore', formula: 'max(min(h + b, T) - max(h, c), 0)', scope: { ...least, T, c: chamferLengthMm }, value: engagedMm.low, unit: 'mm', source: plainGeometry },
  );
  if (boreLeftMm !== null && T !== undefined) {
    steps.push({ kind: 'formula', symbol: 'l', meaning: 'bore left behind the seal, least', formula: 'T - U - h - b', scope: { T, U: calliperUncertainty('depth', T).uncertaintyMm, h: depthMm.high, b: section.widthMm.high }, value: boreLeftMm.low, unit: 'mm', source: plainGeometry });
  }
  return steps;
}

function moveSteps({ moveMm, oldDepth, final, roomBehindMm, situation, section }: Seating): readonly WorkingStep[] {
  const steps: WorkingStep[] = [];
  const { depthMm } = final;
  if (moveMm !== null && oldDepth !== null && depthMm !== null) steps.push({ kind: 'formula', symbol: 'm', meaning: 'new outer face deeper than the old one by', formula: 'h - h_old', scope: { h: depthMm.nominal, h_old: oldDepth.meanMm }, value: moveMm, unit: 'mm', source: plainGeometry });
  if (roomBehindMm !== null && depthMm !== null && situation.clearBehindMm !== undefined) {
    const old = oldDepth?.meanMm ?? depthMm.high;
    steps.push({ kind: 'formula', symbol: 'r', meaning: 'room behind the seal, least', formula: 'c + h_old - h - v', scope: { c: situation.clearBehindMm, h_old: old, h: depthMm.high, v: section.widthMm.high - situation.seal.widthMm }, value: roomBehindMm.low, unit: 'mm', source: plainGeometry });
  }
  return steps;
}
