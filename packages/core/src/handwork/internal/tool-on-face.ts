import { commonPractice, deciding, plainGeometry, supporting, type Finding } from '../../result/index.js';
import { rimSource, type DriverNeed } from './driver-need.js';
import type { ToolSize } from './tool-size.js';

/** Where a tool presses: on the stiff rim, on the bend, on what bends, or not at all. */
export function faceFindings(tool: ToolSize, need: DriverNeed): readonly Finding[] {
  return [rim(tool, need), ...landing(tool, need), ...inner(tool, need)];
}

function rim({ outsideMm, pathOf }: ToolSize, { rimFromMm, bendFromMm }: DriverNeed): Finding {
  const numbers = { outsideLowMm: outsideMm.low, rimFromMm, bendFromMm };
  if (outsideMm.low >= rimFromMm) return deciding('driver-bears-on-rim', 'good', numbers, rimSource);
  if (outsideMm.low >= bendFromMm) return deciding('driver-bears-on-bend', 'care', numbers, rimSource);
  if (outsideMm.high < bendFromMm) return deciding('driver-too-small', 'bad', { ...numbers, missMm: bendFromMm - outsideMm.high }, rimSource);
  return deciding('driver-near-the-bend', 'unknown', numbers, plainGeometry, pathOf('readings'));
}

function landing({ insideMm, pathOf }: ToolSize, { faceUpToMm, touchBelowMm }: DriverNeed): readonly Finding[] {
  const numbers = { insideHighMm: insideMm.high, faceUpToMm, touchBelowMm };
  if (insideMm.high <= faceUpToMm) return [];
  if (insideMm.high < touchBelowMm) return [deciding('driver-lands-on-corner', 'care', numbers, plainGeometry)];
  if (insideMm.low >= touchBelowMm) return [deciding('driver-inside-too-large', 'bad', { ...numbers, missMm: insideMm.low - touchBelowMm }, plainGeometry)];
  return [deciding('driver-inside-near-edge', 'unknown', numbers, plainGeometry, pathOf('wallMm'))];
}

/** What bends lies inward of the midway circle: with the lip outward it is the lip itself with its spring. */
function inner({ insideMm, pathOf }: ToolSize, { rimAloneFromMm, section }: DriverNeed): readonly Finding[] {
  if (insideMm.low >= rimAloneFromMm) return [];
  const numbers = { insideLowMm: insideMm.low, rimAloneFromMm };
  if (section.lipFacing === 'inward') return [supporting('driver-reaches-what-bends', 'care', numbers, commonPractice)];
  if (insideMm.high < rimAloneFromMm) return [deciding('driver-reaches-lip-and-spring', 'bad', { ...numbers, missMm: rimAloneFromMm - insideMm.high }, commonPractice)];
  return [deciding('driver-near-lip-and-spring', 'unknown', numbers, commonPractice, pathOf('wallMm'))];
}
