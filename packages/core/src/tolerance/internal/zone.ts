import type { HeldMark } from '../../result/index.js';
import type { ClassLimits } from './class-limits.js';
import { classLimitsAt } from './class-limits.js';
import type { ClassName, PartKind } from './class-names.js';
import { missingClass } from './missing-class.js';
import { sizeStepOf } from './size-steps.js';

/** Limits of one part of a fit, by its nominal size and class. */
export interface Zone {
  /** Nominal size, settled to a millionth of a millimetre. */
  readonly nominalMm: number;
  /** The class as the standard writes it. */
  readonly toleranceClass: string;
  readonly kind: PartKind;
  readonly letter: string;
  /** `01`, `0`, `1` … `18`. */
  readonly grade: string;
  readonly upperLimitDeviationUm: number;
  readonly lowerLimitDeviationUm: number;
  readonly standardToleranceUm: number;
  /** The limit nearer to the nominal size; for JS and js, half the tolerance. */
  readonly fundamentalDeviationUm: number;
  readonly upperLimitOfSizeMm: number;
  readonly lowerLimitOfSizeMm: number;
  /** How the least trusted cell behind it is held. */
  readonly held: HeldMark;
}

/** The zone of a class at a nominal size. Throws `CalculationError` `outside-table` | `no-such-class`, the latter with `path`. */
export function zoneOf(nominalMm: number, name: ClassName, path: string, step = sizeStepOf(nominalMm)): Zone {
  const limits = classLimitsAt(name, step);
  if (limits === null) throw missingClass(name, step, path);
  return zoneFrom(Math.round(nominalMm * 1e6), name, limits);
}

/** The zone from limits already looked up; the nominal size is counted in millionths of a millimetre. */
function zoneFrom(nominalNm: number, name: ClassName, limits: ClassLimits): Zone {
  return {
    nominalMm: nominalNm / 1e6,
    toleranceClass: name.text,
    kind: name.kind,
    letter: name.letter,
    grade: name.grade,
    upperLimitDeviationUm: limits.upperUm,
    lowerLimitDeviationUm: limits.lowerUm,
    standardToleranceUm: limits.toleranceUm,
    fundamentalDeviationUm: limits.fundamentalUm,
    upperLimitOfSizeMm: (nominalNm + Math.round(limits.upperUm * 1000)) / 1e6,
    lowerLimitOfSizeMm: (nominalNm + Math.round(limits.lowerUm * 1000)) / 1e6,
    held: limits.held,
  };
}
