import { noSuchClass, outsideTable, source, type SourceReference, type Span } from '../../result/index.js';
import { iso15DeepGroove as dimensions } from '../../tables/generated/iso-15-deep-groove.js';
import { iso492Radial as deviations } from '../../tables/generated/iso-492-radial.js';
import { iso57531Clearance as clearances } from '../../tables/generated/iso-5753-1-clearance.js';
import { iso15WideSeries as wide } from '../../tables/generated/iso-15-wide-series.js';
import { markAt } from '../../tables/table.js';
import type { BearingToleranceClass, ClearanceGroup } from './bearing-choices.js';

/** [mm] Smaller cylindrical rollers are not in the series. */
const leastRollerBoreMm = 20;

/** Boundary dimensions of one bearing. */
export interface BearingSize {
  readonly designation: string;
  readonly boreMm: number;
  readonly outsideMm: number;
  readonly widthMm: number;
  readonly cornerMinMm: number | null;
  readonly kind: 'deep-groove-ball' | 'cylindrical-roller';
  readonly source: SourceReference;
}

const balls: readonly BearingSize[] = dimensions.columns.designation.map((designation, i) => ({
  designation,
  boreMm: dimensions.columns.boreMm[i] ?? 0,
  outsideMm: dimensions.columns.outsideMm[i] ?? 0,
  widthMm: dimensions.columns.widthMm[i] ?? 0,
  cornerMinMm: dimensions.columns.cornerMinMm[i] ?? null,
  kind: 'deep-groove-ball',
  source: source(dimensions.source, markAt(dimensions, 'boreMm', i), `dimension series ${dimensions.columns.dimensionSeries[i] ?? ''}`),
}));

/** Series of cylindrical rollers by the dimension series that they share: NU 2 has the sizes of series 02, NU 10 those of 10. */
const rollerSeries: Readonly<Record<string, string>> = { '10': '10', '02': '2', '03': '3' };

/** Cylindrical rollers, named NU; NJ, NUP and N of the same numbers have the same sizes. */
const rollers: readonly BearingSize[] = [
  ...balls.flatMap((size, i) => {
    const series = rollerSeries[dimensions.columns.dimensionSeries[i] ?? ''];
    if (series === undefined || size.boreMm < leastRollerBoreMm || size.boreMm % 5 !== 0) return [];
    return [{ ...size, designation: `NU ${series}${String(size.boreMm / 5).padStart(2, '0')}`, kind: 'cylindrical-roller' as const }];
  }),
  ...wide.columns.boreMm.map((boreMm, i): BearingSize => ({
    designation: `NU ${wide.columns.dimensionSeries[i] ?? ''}${wide.columns.boreCode[i] ?? ''}`, boreMm, outsideMm: wide.columns.outsideMm[i] ?? 0, widthMm: wide.columns.widthMm[i] ?? 0, cornerMinMm: null, kind: 'cylindrical-roller',
    source: source(wide.source, markAt(wide, 'widthMm', i), `dimension series ${wide.columns.dimensionSeries[i] ?? ''}`),
  })),
];

export const bearingSizes: readonly BearingSize[] = [...balls, ...rollers];

/** Where a size stands in the tables of ISO 15: rollers share the rows of the dimension series that they are named after. */
export function tableRowOf({ designation, boreMm, outsideMm, widthMm }: Pick<BearingSize, 'designation' | 'boreMm' | 'outsideMm' | 'widthMm'>): { readonly table: string; readonly row: string } {
  const [, series, boreCode] = /^NU (22|23)(\d\d)$/u.exec(designation) ?? [];
  if (series !== undefined && boreCode !== undefined) return { table: wide.id, row: `${series} ${boreCode}` };
  const sharing = balls.find((ball) => ball.designation === designation) ?? balls.find((ball) => ball.boreMm === boreMm && ball.outsideMm === outsideMm && ball.widthMm === widthMm);
  return { table: dimensions.id, row: sharing?.designation ?? designation };
}

/** The bearing of a basic designation. Throws `CalculationError` no-such-class with those of the same start. */
export function bearingSize(designation: string, path = 'designation'): BearingSize {
  const found = bearingSizes.find((size) => size.designation === designation.replace(/^(?:NJ|NUP|N) /u, 'NU '));
  if (found !== undefined) return found;
  const near = bearingSizes.filter((size) => size.designation.slice(0, 4).startsWith(designation.slice(0, designation.startsWith('N') ? 4 : 2))).map((size) => size.designation);
  throw noSuchClass(path, designation, near.slice(0, 12), 'the tables hold deep groove ball bearings and cylindrical roller bearings of ISO 15; of any other bearing enter bore, outside and width', 'bearing');
}

/** Deviations of the mean diameter of a ring [µm]: `low` to `high`. */
export function ringDeviations(ring: 'inner' | 'outer', toleranceClass: BearingToleranceClass, diameterMm: number): Span & { readonly source: SourceReference } {
  const { columns } = deviations;
  for (let i = 0; i < deviations.rowCount; i += 1) {
    if (columns.ring[i] !== ring || columns.toleranceClass[i] !== toleranceClass) continue;
    if (diameterMm > (columns.overMm[i] ?? Infinity) && diameterMm <= (columns.upToMm[i] ?? 0)) {
      return { low: columns.lowerUm[i] ?? 0, high: columns.upperUm[i] ?? 0, source: source(deviations.source, markAt(deviations, 'lowerUm', i), `class ${toleranceClass}, ${ring} ring`) };
    }
  }
  throw outsideTable(`the deviations of ISO 492, class ${toleranceClass}`, ring === 'inner' ? 'boreMm' : 'outsideMm', diameterMm, { over: ring === 'inner' ? 2.5 : 6, upTo: 500, unit: 'mm' });
}

/** Radial clearance of a group before mounting [µm]. */
export function unmountedClearance(group: ClearanceGroup, boreMm: number, kind: string = 'deep-groove-ball'): Span & { readonly source: SourceReference } {
  const { columns } = clearances;
  for (let i = 0; i < clearances.rowCount; i += 1) {
    if (columns.bearingType[i] !== kind || columns.clearanceGroup[i] !== group) continue;
    if (boreMm > (columns.overMm[i] ?? Infinity) && boreMm <= (columns.upToMm[i] ?? 0)) {
      return { low: columns.minimumUm[i] ?? 0, high: columns.maximumUm[i] ?? 0, source: source(clearances.source, markAt(clearances, 'minimumUm', i), `group ${group}`) };
    }
  }
  throw outsideTable(`the clearances of ISO 5753-1, group ${group}`, 'boreMm', boreMm, { over: 2.5, upTo: 250, unit: 'mm' });
}
