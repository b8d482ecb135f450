import type { Candour } from '../../result/index.js';
import { readClassName } from './class-names.js';
import { zoneAssumptions } from './zone-candour.js';
import { zoneOf, type Zone } from './zone.js';

const nothingLeftOut: readonly string[] = Object.freeze([]);

/** What `toleranceZone` answers, apart from its schemas and its working, which a sheet need not fetch. Trusts its input. @internal */
export function zoneOfClass({ nominalMm, toleranceClass }: { readonly nominalMm: number; readonly toleranceClass: string }): Zone & Candour {
  const name = readClassName(toleranceClass, 'toleranceClass');
  const zone = zoneOf(nominalMm, name, 'toleranceClass');
  // Written out field by field: spreading costs more than all the rest.
  return {
    nominalMm: zone.nominalMm,
    toleranceClass: zone.toleranceClass,
    kind: zone.kind,
    letter: zone.letter,
    grade: zone.grade,
    upperLimitDeviationUm: zone.upperLimitDeviationUm,
    lowerLimitDeviationUm: zone.lowerLimitDeviationUm,
    standardToleranceUm: zone.standardToleranceUm,
    fundamentalDeviationUm: zone.fundamentalDeviationUm,
    upperLimitOfSizeMm: zone.upperLimitOfSizeMm,
    lowerLimitOfSizeMm: zone.lowerLimitOfSizeMm,
    held: zone.held,
    assumptions: zoneAssumptions(name, nominalMm),
    notChecked: nothingLeftOut,
  };
}
