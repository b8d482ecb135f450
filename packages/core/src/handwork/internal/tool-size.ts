import { measuredSize, type OwnInstrument } from '../../measure/index.js';
import type { OwnMaterial } from '../../material/index.js';
import { CalculationError, commonPractice, type Assumption, type SourceReference, type Span } from '../../result/index.js';
import type { Tool } from '../tool-field.js';
import { calliperUncertainty } from './calliper.js';
import { toolMaterial, type ToolMaterial } from './tool-material.js';
import { practiceValue } from './practice-value.js';

/** A tool as it can turn out: every size as the band that tolerance, wall, ovality and reading leave. */
export interface ToolSize {
  readonly name: string;
  readonly origin: 'own' | 'standard';
  readonly kind: 'tube' | 'socket' | 'turned';
  /** Outside, ovality included: the largest point and the smallest. */
  readonly outsideMm: Span;
  /** Inner edge of the face that pushes. */
  readonly insideMm: Span;
  /** What passes through: as the inside, or across the flats of a socket. */
  readonly passageMm: Span;
  readonly nominalOutsideMm: number;
  readonly wallMm: number;
  readonly material: ToolMaterial | null;
  /** null: cut to length, or not given. */
  readonly lengthMm: number | null;
  readonly isCutToLength: boolean;
  readonly isClosed: boolean;
  readonly closedEndDepthMm: number | null;
  readonly endSquarenessMm: number | null;
  readonly source: SourceReference;
  readonly assumptions: readonly Assumption[];
  /** Path of one of its fields in the input, for what is missing: a standard tool has none until it is entered as one's own. */
  readonly pathOf: (field: 'readings' | 'wallMm' | 'insideMm' | 'lengthMm' | 'closedEndDepthMm') => string;
}

/** Inscribed over circumscribed circle of a hexagon. */
const acrossFlatsShare = Math.sqrt(3) / 2;

/** [mm] Ovality of a plastic pipe that nobody turned while measuring. */
const plasticOvalityMm = practiceValue('plastic-ovality', 'Mm').high;

/** A tool of the workshop, with the error of whatever it was measured with. */
export function ownTool(tool: Tool, at: number, instruments: readonly OwnInstrument[] = [], materials: readonly OwnMaterial[] = []): ToolSize {
  const path = `toolsAtHand[${at}]`;
  const material = tool.material === undefined ? null : toolMaterial(tool.material, materials, `${path}.material`);
  const assumptions: Assumption[] = [];
  const size = readingsOf(tool, path, instruments);
  const isTurnedRound = size !== null && size.count > 1;
  const ovalityMm = tool.outOfRoundMm ?? (isTurnedRound || tool.kind !== 'tube' || material?.isPlastic !== true ? 0 : plasticOvalityMm);
  if (tool.outOfRoundMm === undefined && ovalityMm > 0) assumptions.push({ name: 'pipe-ovality', value: ovalityMm, unit: 'mm', source: { id: 'iso-1452-2', held: 'memory', clause: 'ovality up to dn 40' }, effect: 'driver-bands' });
  const round = size?.band ?? around(tool.outsideMm, outsideSpread(tool, assumptions));
  const outsideMm = { low: Math.max(round.low - ovalityMm / 2, 0), high: round.high + ovalityMm / 2 };
  const insideMm = insideOf(tool, round, ovalityMm);
  return {
    name: tool.name,
    origin: 'own',
    kind: tool.kind,
    outsideMm,
    insideMm,
    passageMm: tool.kind === 'socket' ? { low: insideMm.low * acrossFlatsShare, high: insideMm.high } : insideMm,
    nominalOutsideMm: tool.outsideMm,
    wallMm: tool.wallMm ?? (tool.outsideMm - (tool.insideMm ?? 0)) / 2,
    material,
    lengthMm: tool.lengthMm ?? null,
    isCutToLength: false,
    isClosed: tool.kind === 'socket' || tool.closedEndDepthMm !== undefined,
    closedEndDepthMm: tool.closedEndDepthMm ?? null,
    endSquarenessMm: tool.endSquarenessMm ?? null,
    source: commonPractice,
    assumptions,
    pathOf: (field) => `${path}.${field}`,
  };
}

function outsideSpread(tool: Tool, assumptions: Assumption[]): number {
  if (tool.outsideToleranceMm !== undefined) return tool.outsideToleranceMm;
  const { uncertaintyMm, source } = calliperUncertainty('outside', tool.outsideMm);
  assumptions.push({ name: 'tool-by-calliper', value: uncertaintyMm, unit: 'mm', source, effect: 'driver-bands' });
  return uncertaintyMm;
}

function insideOf(tool: Tool, round: Span, ovalityMm: number): Span {
  if (tool.wallMm === undefined && tool.insideMm === undefined) return { low: 0, high: 0 };
  if (tool.insideMm !== undefined) {
    if (tool.insideMm === 0) return { low: 0, high: 0 };
    const spread = (tool.wallToleranceMm === undefined ? calliperUncertainty('inside', tool.insideMm).uncertaintyMm : 2 * tool.wallToleranceMm) + ovalityMm / 2;
    return clipped(around(tool.insideMm, spread));
  }
  const wallMm = tool.wallMm ?? 0;
  const wallSpread = tool.wallToleranceMm ?? calliperUncertainty('outside', wallMm).uncertaintyMm;
  return clipped({ low: round.low - 2 * (wallMm + wallSpread) - ovalityMm / 2, high: round.high - 2 * Math.max(wallMm - wallSpread, 0) + ovalityMm / 2 });
}

function readingsOf(tool: Tool, path: string, instruments: readonly OwnInstrument[]): { readonly band: Span; readonly count: number } | null {
  if (tool.readings === undefined) return null;
  try {
    const size = measuredSize(tool.readings, 'outside', instruments);
    if (size === null) return null;
    return { band: { low: size.smallestMm - size.expandedUncertaintyMm, high: size.largestMm + size.expandedUncertaintyMm }, count: size.readingCount };
  } catch (error) {
    throw error instanceof CalculationError ? error.within(`${path}.readings`) : error;
  }
}

function around(value: number, spread: number): Span {
  return { low: value - spread, high: value + spread };
}

function clipped({ low, high }: Span): Span {
  return { low: Math.max(low, 0), high: Math.max(high, 0) };
}
