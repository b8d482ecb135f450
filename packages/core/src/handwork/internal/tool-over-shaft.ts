import { commonPractice, deciding, plainGeometry, supporting, type Finding } from '../../result/index.js';
import type { DriverNeed } from './driver-need.js';
import type { ToolSize } from './tool-size.js';
import { practiceValue } from './practice-value.js';
import { atLeastMm } from './workshop-length.js';

/** [mm] Clearance on the diameter below which a tool scrapes along the shaft. */
const scrapesBelowMm = practiceValue('scrapes-shaft-below', 'Mm').low;

/** Does the tool pass over the shaft and what stands on it, and is it long enough? */
export function lengthFindings(tool: ToolSize, need: DriverNeed): readonly Finding[] {
  return [...around(tool, need), ...along(tool, need)];
}

function around({ passageMm, pathOf }: ToolSize, { clearOver }: DriverNeed): readonly Finding[] {
  if (clearOver === null) return [];
  const numbers = { passageLowMm: passageMm.low, overMm: clearOver.mm, part: clearOver.by };
  const clearanceMm = passageMm.low - clearOver.mm;
  if (clearanceMm >= scrapesBelowMm) return [deciding('driver-clears-shaft', 'good', { ...numbers, clearanceMm }, plainGeometry)];
  if (clearanceMm > 0) return [deciding('driver-clears-shaft-barely', 'care', { ...numbers, clearanceMm }, commonPractice)];
  if (passageMm.high <= clearOver.mm) return [deciding('driver-does-not-clear-shaft', 'bad', { ...numbers, missMm: clearOver.mm - passageMm.high }, plainGeometry)];
  return [deciding('driver-shaft-too-close-to-call', 'unknown', numbers, plainGeometry, pathOf('insideMm'))];
}

function along(tool: ToolSize, { lengthOverMm }: DriverNeed): readonly Finding[] {
  if (lengthOverMm !== null && lengthOverMm <= 0) return [];
  return tool.isClosed ? closedEnd(tool, lengthOverMm) : openEnd(tool, lengthOverMm);
}

function closedEnd({ closedEndDepthMm, lengthMm, pathOf }: ToolSize, lengthOverMm: number | null): readonly Finding[] {
  if (lengthOverMm === null) return [deciding('driver-shaft-length-unknown', 'unknown', {}, plainGeometry, 'shaft.protrusionMm')];
  if (closedEndDepthMm === null) {
    if (lengthMm !== null && lengthMm <= lengthOverMm) return [deciding('driver-too-short', 'bad', { lengthMm, lengthOverMm, missMm: lengthOverMm - lengthMm }, plainGeometry)];
    return [deciding('driver-depth-inside-unknown', 'unknown', { lengthOverMm }, plainGeometry, pathOf('closedEndDepthMm'))];
  }
  if (closedEndDepthMm > lengthOverMm) return [deciding('driver-long-enough', 'good', { lengthMm: closedEndDepthMm, lengthOverMm }, plainGeometry)];
  return [deciding('driver-closed-end-too-near', 'bad', { lengthMm: closedEndDepthMm, lengthOverMm, missMm: lengthOverMm - closedEndDepthMm }, plainGeometry)];
}

function openEnd({ lengthMm, isCutToLength, pathOf }: ToolSize, lengthOverMm: number | null): readonly Finding[] {
  if (isCutToLength) return lengthOverMm === null ? [] : [supporting('driver-cut-longer-than', 'note', { lengthOverMm: atLeastMm(lengthOverMm) }, plainGeometry)];
  if (lengthOverMm === null) return [{ ...supporting('driver-length-against-shaft', 'unknown', {}, plainGeometry), missing: 'shaft.protrusionMm' }];
  if (lengthMm === null) return [deciding('driver-length-unknown', 'unknown', { lengthOverMm }, plainGeometry, pathOf('lengthMm'))];
  if (lengthMm > lengthOverMm) return [deciding('driver-long-enough', 'good', { lengthMm, lengthOverMm }, plainGeometry)];
  return [deciding('driver-too-short', 'bad', { lengthMm, lengthOverMm, missMm: lengthOverMm - lengthMm }, plainGeometry)];
}
