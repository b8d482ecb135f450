import { writeLength } from '@seatwright/core/quantity';
import type { ElementWords } from '../../words/element-words.js';
import type { SectionGeometry } from './section-geometry.js';

export type DimensionName = 'shaft' | 'bore' | 'width' | 'depth' | 'hole-circle' | 'drill' | 'drill-stop' | 'driver-outside' | 'driver-inside' | 'room' | 'track' | 'bearing-bore' | 'bearing-outside' | 'bearing-width';

/** One dimension of the drawing: what it is called, what it measures, and which entry of a position it stands for. */
export interface SectionDimension {
  readonly name: DimensionName;
  readonly label: string;
  /** null: not known yet. */
  readonly valueMm: number | null;
  readonly isDiameter: boolean;
  /** Entry that a person would change, as a path in a situation; '' where it follows from others. */
  readonly path: string;
}

export interface LengthStyle {
  readonly lengthUnit: 'mm' | 'in';
  readonly decimalMark: '.' | ',';
}

/** All dimensions that the drawing and its table show. */
export function dimensionsOf(geometry: SectionGeometry, words: ElementWords['section']): readonly SectionDimension[] {
  const { known, shaftMm, outsideMm, widthMm, depthMm, mode, driver, drill, pushTube, clearBehindMm, wearTrack } = geometry;
  const list: SectionDimension[] = [
    { name: 'shaft', label: words.shaft, valueMm: known.shaft ? shaftMm : null, isDiameter: true, path: 'seal.shaftMm' },
    { name: 'bore', label: words.bore, valueMm: known.bore ? outsideMm : null, isDiameter: true, path: 'seal.outsideMm' },
    { name: 'width', label: words.width, valueMm: known.width ? widthMm : null, isDiameter: false, path: 'seal.widthMm' },
    { name: 'depth', label: mode === 'taking out' ? words.oldDepth : words.depth, valueMm: known.depth ? depthMm : null, isDiameter: false, path: mode === 'taking out' ? 'oldDepthMm' : 'seat' },
  ];
  if (clearBehindMm !== null) list.push({ name: 'room', label: words.room, valueMm: clearBehindMm, isDiameter: false, path: 'clearBehindMm' });
  if (wearTrack !== null) list.push({ name: 'track', label: words.track, valueMm: wearTrack.fromFaceMm, isDiameter: false, path: 'wearTrack.fromFaceMm' });
  if (driver !== null) {
    list.push({ name: 'driver-outside', label: words.driverOutside, valueMm: driver.outsideRadiusMm * 2, isDiameter: true, path: '' });
    list.push({ name: 'driver-inside', label: words.driverInside, valueMm: driver.insideRadiusMm * 2, isDiameter: true, path: '' });
  }
  if (drill !== null) {
    list.push({ name: 'hole-circle', label: words.holeCircle, valueMm: drill.radiusMm * 2, isDiameter: true, path: '' });
    if (!drill.isPunch) list.push({ name: 'drill', label: words.drill, valueMm: drill.diameterMm, isDiameter: true, path: '' });
    list.push({ name: 'drill-stop', label: drill.isPunch ? words.punchStop : words.drillStop, valueMm: drill.tipMm - drill.stopMm, isDiameter: false, path: '' });
  }
  if (pushTube !== null) {
    list.push({ name: 'driver-outside', label: words.tubeOutside, valueMm: pushTube.outsideRadiusMm * 2, isDiameter: true, path: '' });
    list.push({ name: 'driver-inside', label: words.tubeInside, valueMm: pushTube.insideRadiusMm * 2, isDiameter: true, path: '' });
  }
  return list;
}

/** A length as a drawing writes it: no unit, no needless zeros; inches as a fraction where one is met. */
export function drawnLength(valueMm: number, { lengthUnit, decimalMark }: LengthStyle): string {
  const text = lengthUnit === 'in' ? writeLength(valueMm, { unit: 'in-fraction', decimalMark, decimals: 3 }) : writeLength(valueMm, { decimalMark, decimals: 2 });
  const bare = text.replace(/\s*(mm|in)$/u, '');
  return /[.,]/.test(bare) ? bare.replace(/[.,]?0+$/, '') : bare;
}
