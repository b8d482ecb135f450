import { fill, type Catalogue } from '@seatwright/core/wording';
import type { ExtractionPlanOutput } from '@seatwright/core/handwork';
import type { ElementWords } from '../../words/element-words.js';
import type { LengthStyle } from './dimensions.js';
import type { SectionGeometry } from './section-geometry.js';

/** The drawing in words, for those who do not see it. */
export function describeSection(geometry: SectionGeometry, extraction: ExtractionPlanOutput | null, words: ElementWords['section'], catalogue: Catalogue, style: LengthStyle): string {
  const { shaftMm, outsideMm, widthMm, depthMm, lipFacing, mode, driver, drill, pushTube, behind, clearBehindMm, wearTrack, known } = geometry;
  const put = (template: string, parameters: Readonly<Record<string, number | string>>) => fill(template, parameters, catalogue, style);
  const parts = [mode === 'taking out' ? words.takingOut : words.asDriven];
  parts.push(known.shaft && known.bore && known.width ? put(words.spokenPart, { shaftMm, boreMm: outsideMm, widthMm, depthMm }) : words.standIn);
  parts.push(put(words.spokenLip, { lipFacing }));
  if (mode === 'taking out') {
    if (drill !== null) parts.push(put(drill.isPunch ? words.spokenPunch : words.spokenDrill, { holeCircleMm: drill.radiusMm * 2, drillMm: drill.diameterMm, stopMm: drill.tipMm - drill.stopMm }));
    else if (pushTube !== null) parts.push(put(words.spokenPushOut, { outsideUpToMm: pushTube.outsideRadiusMm * 2, insideOverMm: pushTube.insideRadiusMm * 2 }));
    else if (extraction !== null) parts.push(words.spokenRim);
  } else parts.push(driver === null ? words.spokenNoDriver : put(words.spokenDriver, { name: driver.name, outsideMm: driver.outsideRadiusMm * 2, insideMm: driver.insideRadiusMm * 2 }));
  if (wearTrack !== null) parts.push(put(words.spokenTrack, { fromFaceMm: wearTrack.fromFaceMm }));
  if (behind !== null && clearBehindMm !== null) parts.push(put(words.spokenBehind, { behind, clearBehindMm }));
  return parts.join(' ');
}
