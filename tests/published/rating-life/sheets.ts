import { ratingLife } from '@seatwright/core/bearing';
import { ballLoadFactors, lifeReliability, rowsOf } from '@seatwright/core/tables';
import type { Entry, How, Sheet } from '../ledger/sheet.js';

type Asked = Parameters<typeof ratingLife.run>[0];

const common = { unit: '', allowed: 'printed digits', layout: 'list' } as const;
const held = (how: How) => (row: string, column: string, printed: string, ours: () => number | null | undefined): Entry => ({ row, column, printed, how, ours: () => [ours()] });
const [recalled, byHand] = [held('memory'), held('by hand')];
const life = (asked: Asked) => ratingLife.run(asked);

/** N in one lbf. */
const lbf = 4.4482216152605;
const balls = { basicDynamicLoadRatingN: 30_000, equivalentLoadN: 2000, kind: 'ball', speedRpm: 1000 } as const;

/** Load factors of deep groove balls. f0·Fa/C0 of ISO 281 over f0 of about 12.3 is the Fa/C0 of the textbook; its e and Y stand in the row of ISO. */
const textbookRows: readonly (readonly [faOverC0: string, f0FaOverC0: number, e: string, y: string])[] = [['0.084', 1.03, '0.28', '1.55'], ['0.110', 1.38, '0.30', '1.45'], ['0.17', 2.07, '0.34', '1.31'], ['0.28', 3.45, '0.38', '1.15']];

/** Equivalent load of a deep groove ball bearing at f0·Fa/C0, by its radial load. */
function equivalentAt(f0FaOverC0: number): { readonly axialLoadN: number; readonly of: (radialLoadN: number) => number } {
  const axialLoadN = (f0FaOverC0 * 10_000) / 14;
  return { axialLoadN, of: (radialLoadN) => life({ basicDynamicLoadRatingN: 20_000, basicStaticLoadRatingN: 10_000, f0Factor: 14, radialLoadN, axialLoadN, kind: 'ball', speedRpm: 1000 }).equivalentLoadN };
}

const rowOf = (f0FaOverC0: number) => rowsOf(ballLoadFactors).find(({ f0FaOverC0Ratio }) => f0FaOverC0Ratio === f0FaOverC0);

/** Y from P = 0.56·Fr + Y·Fa. */
function axialFactor(f0FaOverC0: number): number {
  const { axialLoadN, of } = equivalentAt(f0FaOverC0);
  return Number(((of(axialLoadN / 2) - 0.56 * (axialLoadN / 2)) / axialLoadN).toFixed(9));
}

const viscosity = (speedRpm: number, meanDiameterMm: number) => life({ basicDynamicLoadRatingN: 1000, equivalentLoadN: 100, kind: 'ball', speedRpm, meanDiameterMm }).nominalViscosityMm2PerS;
const modification = (kind: 'ball' | 'roller') =>
  life({ basicDynamicLoadRatingN: 10_000, equivalentLoadN: 1000, speedRpm: 1000, meanDiameterMm: 100, fatigueLoadLimitN: 1000, contaminationFactor: 0.1, viscosityMm2PerS: 4500 * 1000 ** -0.5 * 100 ** -0.5, kind }).lifeModificationFactor?.low;

const firstEdition: readonly (readonly [percent: number, printed: string])[] = [[95, '0.62'], [96, '0.53'], [97, '0.44'], [98, '0.33'], [99, '0.21']];
const secondEdition: readonly (readonly [percent: number, printed: string])[] = [[90, '1'], [95, '0.64'], [96, '0.55'], [97, '0.47'], [98, '0.37'], [99, '0.25']];
const isoRows: readonly (readonly [ratio: number, e: string, y: string])[] = [[0.172, '0.19', '2.3'], [0.689, '0.26', '1.71'], [6.89, '0.44', '1']];

export const ratingLives: readonly Sheet[] = [
  {
    ...common, layout: 'grid', allowed: 'exactly', kind: 'another page', work: 'shigley-8', place: 'equivalent load factors of ball bearings, by Fa/C0', title: 'e and Y of deep groove balls',
    asked: 'table of load factors in the row of ISO 281 that the ratio stands for (f0 about 12.3), and Y by the equivalent load there', note: 'Our table is from memory of ISO 281: four of its nine rows are confirmed here.',
    entries: textbookRows.flatMap(([ratio, iso, e, y]): readonly Entry[] => [
      { row: ratio, column: 'e', printed: e, how: 'page', ours: () => [rowOf(iso)?.eRatio] },
      { row: ratio, column: 'Y', printed: y, how: 'page', ours: () => [rowOf(iso)?.yFactor, axialFactor(iso)] },
    ]),
  },
  {
    ...common, layout: 'grid', allowed: 'exactly', kind: 'same page', work: 'iso-281-2007', place: 'edition of 1990, life factor a1', title: 'Factor a1 by reliability in %', asked: 'table of both editions',
    entries: firstEdition.map(([percent, printed]) => ({ row: String(percent), column: 'a1', printed, how: 'page', ours: () => [rowsOf(lifeReliability).find(({ reliabilityPercent }) => reliabilityPercent === percent)?.a1Edition1990Factor] })),
  },
  {
    ...common, layout: 'grid', allowed: 'exactly', kind: 'another page', work: 'iso-281-2007', place: 'edition of 2007, life factor a1', title: 'Factor a1 by reliability in %', asked: 'rating life',
    entries: secondEdition.map(([percent, printed]) => recalled(String(percent), 'a1', printed, () => life({ basicDynamicLoadRatingN: 1000, equivalentLoadN: 100, kind: 'ball', speedRpm: 100, reliabilityPercent: percent }).reliabilityFactor)),
  },
  {
    ...common, layout: 'grid', allowed: 'exactly', kind: 'another page', work: 'iso-281-2007', place: 'Table 3, deep groove balls', title: 'e and Y by f0·Fa/C0', asked: 'e from the table, Y by the equivalent load',
    entries: isoRows.flatMap(([ratio, e, y]) => [recalled(String(ratio), 'e', e, () => rowOf(ratio)?.eRatio), recalled(String(ratio), 'Y', y, () => axialFactor(ratio))]),
  },
  {
    ...common, kind: 'worked example', work: 'shigley-8', place: 'example 11-1: 5 000 h at 1 725 rpm under 400 lbf ask for a rating of 3 211 lbf', title: 'Basic rating life', unit: '1000 h', asked: 'rating life of that rating',
    entries: [recalled('life', 'L10h', '5.00', () => life({ basicDynamicLoadRatingN: 3211 * lbf, equivalentLoadN: 400 * lbf, kind: 'ball', speedRpm: 1725 }).basicRatingLifeHours / 1000)],
  },
  {
    ...common, kind: 'worked example', work: 'iso-281-2007', place: 'equations at single points', title: 'Life, viscosity wanted, factor a_ISO', asked: 'rating life',
    entries: [
      byHand('balls, 30 kN at 2 kN', '15³ [10⁶ turns]', '3375', () => life(balls).basicRatingLifeMillionRev),
      byHand('balls, load doubled', 'an eighth [10⁶ turns]', '421.875', () => life({ ...balls, equivalentLoadN: 4000 }).basicRatingLifeMillionRev),
      byHand('rollers, C/P = 8', '8^(10/3) = 2¹⁰ [10⁶ turns]', '1024', () => life({ basicDynamicLoadRatingN: 80_000, equivalentLoadN: 10_000, kind: 'roller', speedRpm: 500 }).basicRatingLifeMillionRev),
      byHand('3 375·10⁶ turns at 1 000 rpm', '10⁶·L/(60·n) [h]', '56250', () => life(balls).basicRatingLifeHours),
      byHand('3 000 rpm, 70 mm', 'ν1 = 4 500·n^−0.5·D^−0.5 [mm²/s]', '9.82', () => viscosity(3000, 70)),
      byHand('1 000 rpm, 100 mm', 'ν1 = 4 500·n^−0.5·D^−0.5 [mm²/s]', '14.23', () => viscosity(1000, 100)),
      byHand('100 rpm, 100 mm', 'ν1 = 45 000·n^−0.83·D^−0.5 [mm²/s]', '98.45', () => viscosity(100, 100)),
      byHand('ball, κ 1, eC·Cu/P 0.1', '0.1·(1 − 0.5684^0.83·0.1^(1/3))^−9.3', '2.43', () => modification('ball')),
      byHand('roller, κ 1, eC·Cu/P 0.1', '0.1·(1 − 0.3511·0.1^0.4)^−9.185', '0.399', () => modification('roller')),
    ],
  },
];
