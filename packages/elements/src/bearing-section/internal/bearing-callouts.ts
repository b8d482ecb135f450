import type { ElementWords } from '../../words/element-words.js';
import { along, diameter, type Callout, type CalloutOptions } from '../../section/internal/callouts.js';
import type { SectionDimension } from '../../section/internal/dimensions.js';
import { round } from '../../section/internal/path.js';
import type { SectionLayout } from '../../section/internal/section-layout.js';
import type { BearingGeometry, SectionBearing } from './bearing-geometry.js';

/** The dimensions of the bearing itself, and where each is entered: the designation, or its own field. */
export function bearingDimensionsOf({ bearing }: BearingGeometry, given: SectionBearing | null, words: ElementWords['section']): readonly SectionDimension[] {
  const path = (key: 'boreMm' | 'outsideMm' | 'widthMm') => (given?.designation === undefined && given?.[key] !== undefined ? `bearing.${key}` : 'bearing.designation');
  const { known, boreMm, outsideMm, widthMm } = bearing;
  return [
    { name: 'bearing-bore', label: words.bearing.bore, valueMm: known.bore ? boreMm : null, isDiameter: true, path: path('boreMm') },
    { name: 'bearing-outside', label: words.bearing.outside, valueMm: known.outside ? outsideMm : null, isDiameter: true, path: path('outsideMm') },
    { name: 'bearing-width', label: words.bearing.width, valueMm: known.width ? widthMm : null, isDiameter: false, path: path('widthMm') },
  ];
}

/** Its bore and width to the right and below; its outside to the right too, or in front where it stands alone. */
export function bearingCallouts(geometry: BearingGeometry, layout: SectionLayout, dimensions: readonly SectionDimension[], options: CalloutOptions, isAlone: boolean): readonly Callout[] {
  const { x, y, width } = layout;
  const { faceMm, widthMm, boreMm, outsideMm } = geometry.bearing;
  const backX = x(faceMm + widthMm);
  const right = (name: SectionDimension['name'], atX: number, radiusMm: number) => {
    const dimension = dimensions.find((one) => one.name === name);
    return dimension === undefined ? [] : [diameter(dimension, { x: atX, surfaceY: y(radiusMm), extension: `M${round(backX + 3)} ${round(y(radiusMm))}H${atX + 5}` }, layout, options)];
  };
  const outside = dimensions.find(({ name }) => name === 'bearing-outside');
  const across = dimensions.find(({ name }) => name === 'bearing-width');
  const room = dimensions.find(({ name }) => name === 'room');
  const sealEnd = x(geometry.depthMm + geometry.widthMm);
  return [
    ...(across === undefined ? [] : [along(across, { fromX: x(faceMm), toX: backX, fromY: y(boreMm / 2) - 3, toY: y(boreMm / 2) - 3 }, layout, options)]),
    ...(room === undefined || x(faceMm) - sealEnd < 3 || layout.isCompact ? [] : [along(room, { fromX: sealEnd, toX: x(faceMm), fromY: y(geometry.boreMm / 2) + 8, toY: y(boreMm / 2) - 3 }, layout, options)]),
    ...(isAlone && outside !== undefined ? [diameter(outside, { x: 26, surfaceY: y(outsideMm / 2), extension: `M${round(x(Math.min(0, faceMm)) - 3)} ${round(y(outsideMm / 2))}H21` }, layout, options)] : right('bearing-outside', width - 28, outsideMm / 2)),
    ...right('bearing-bore', isAlone ? width - 28 : width - 74, boreMm / 2),
  ];
}
