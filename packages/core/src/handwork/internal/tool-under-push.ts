import { deciding, plainGeometry, plainMechanics, type Finding } from '../../result/index.js';
import type { DriverNeed } from './driver-need.js';
import { tiltShare } from './final-depth.js';
import type { ToolSize } from './tool-size.js';
import { bucklingSource, toolStrength, type ToolStrength } from './tool-strength.js';
import { practiceValue } from './practice-value.js';

/** [°C] Unmodified PVC turns brittle about here. */
const pvcBrittle = practiceValue('pvc-brittle-below', 'C');
const pvcBrittleC = pvcBrittle.low;
/** [mm] Length counted for bending over where neither the tool's nor the shaft's is known. */
export const unknownLengthMm = practiceValue('driver-length-unknown', 'Mm').high;

export interface UnderPush {
  readonly findings: readonly Finding[];
  readonly strength: ToolStrength | null;
  readonly stressMpa: number | null;
  readonly reserveFactor: number | null;
}

/** Wall, buckling, cold and squareness of a tool under the push that the seal may ask for. */
export function strengthFindings(tool: ToolSize, need: DriverNeed, workshopTemperatureC: number | null): UnderPush {
  const findings: Finding[] = [...cold(tool, workshopTemperatureC), ...squareness(tool, need)];
  const { material } = tool;
  const { pushForceN } = need;
  const strength = material === null ? null : toolStrength(tool, material, lengthFor(tool, need));
  if (material === null || pushForceN === null || strength === null) return { findings, strength, stressMpa: null, reserveFactor: null };
  const stressMpa = pushForceN.high / strength.areaMm2;
  const reserveFactor = pushForceN.high > 0 ? Math.min(strength.collapseForceN / pushForceN.high, 1e6) : 1e6;
  const from = strength.governedBy === 'wrinkling' ? bucklingSource : strength.governedBy === 'squash' ? material.strengthSource : plainMechanics;
  const numbers = { stressMpa, collapseN: strength.collapseForceN, pushHighN: pushForceN.high, governedBy: strength.governedBy, reserveFactor, wantedFactor: material.wantedReserveFactor };
  if (reserveFactor >= material.wantedReserveFactor) findings.push(deciding('driver-strong-enough', 'good', numbers, from));
  else if (strength.collapseForceN >= pushForceN.low) findings.push(deciding('driver-may-give-way', 'care', numbers, from));
  else findings.push(deciding('driver-gives-way', 'bad', numbers, from));
  return { findings, strength, stressMpa, reserveFactor };
}

function lengthFor({ lengthMm }: Pick<ToolSize, 'lengthMm'>, { lengthOverMm }: Pick<DriverNeed, 'lengthOverMm'>): number {
  return lengthMm ?? Math.max(lengthOverMm ?? unknownLengthMm, 50);
}

function cold({ material }: ToolSize, workshopTemperatureC: number | null): readonly Finding[] {
  if (material?.isBrittleCold !== true || workshopTemperatureC === null || workshopTemperatureC >= pvcBrittleC) return [];
  return [deciding('driver-pvc-brittle-in-cold', 'care', { workshopTemperatureC, limitC: pvcBrittleC }, pvcBrittle.source)];
}

/** The seal copies the error of the end, widened or narrowed to its own diameter. */
function squareness({ endSquarenessMm, nominalOutsideMm }: ToolSize, { situation }: DriverNeed): readonly Finding[] {
  if (endSquarenessMm === null) return [];
  const outsideMm = situation.seal.outsideMm;
  const spreadMm = (endSquarenessMm * outsideMm) / nominalOutsideMm;
  const tiltDeg = (Math.atan(endSquarenessMm / nominalOutsideMm) * 180) / Math.PI;
  const numbers = { endSquarenessMm, spreadMm, tiltDeg, limitMm: tiltShare.good * outsideMm };
  if (spreadMm <= numbers.limitMm) return [deciding('driver-end-square', 'good', numbers, plainGeometry)];
  if (spreadMm <= tiltShare.most * outsideMm) return [deciding('driver-end-nearly-square', 'care', numbers, tiltShare.source)];
  return [deciding('driver-end-not-square', 'bad', { ...numbers, missMm: spreadMm - tiltShare.most * outsideMm }, tiltShare.source)];
}
