import * as z from 'zod/mini';
import { chooseFit, pressJoint } from '../joint/index.js';
import { CalculationError, candourFields, choiceField, deciding, defineCalculation, findingField, invalidInput, outputNumber, plainGeometry, plainMechanics, supporting, verdictField, verdictOf, type Assumption, type Finding, type WorkingStep } from '../result/index.js';
import { standardSizes } from '../tables/generated/standard-sizes.js';
import { housingGive } from './internal/housing-give.js';
import { sealLimit } from './internal/seal-limit.js';
import { standardSizeSource } from './internal/half-step.js';
import { leastUsefulInterferenceMm } from './largest-useful-bore.js';
import { pressFitAllowanceOf } from './press-fit-allowance.js';
import { holdsByMetal } from './seal-field.js';
import type { RequirementSet } from './requirement-set.js';
import { situationField, type Situation } from './situation-field.js';
import { sizesOf } from './sizes-of.js';

const kinds = ['rubber-covered seal of the same size', 'sleeve in the bore', 'next size', 'retaining compound'] as const;

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const optionField = z.strictObject({
  kind: choiceField(kinds, { label: 'repair' }),
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  newOutsideMm: maybe('outside of the new seal', 'mm'),
  sleeveOutsideMm: maybe('bore for the sleeve', 'mm'),
  sleeveFit: z.nullable(z.string().check(z.meta({ label: 'fit of the sleeve', unit: '' }))),
  sleeveClosesUm: maybe('the bore of the sleeve closes by, at the most', 'µm'),
  wallLeftMm: maybe('wall left around the bore', 'mm'),
});

const outputField = z.strictObject({
  verdict: verdictField,
  boreMm: outputNumber('bore as measured', 'mm'),
  boreUpToMm: outputNumber('largest bore that keeps the hold the standard lets happen', 'mm'),
  overUm: outputNumber('the bore is over that by; below zero it is within', 'µm'),
  options: z.readonly(z.array(optionField)),
  refused: z.readonly(z.array(z.string().check(z.meta({ label: 'what is not a repair', unit: '' })))),
  ...candourFields,
});

export type BoreRepairOutput = z.infer<typeof outputField>;
type Option = BoreRepairOutput['options'][number];

const sleeveWall = sealLimit('sleeve-wall', 'Mm');
const retainingGap = sealLimit('retaining-gap', 'Mm');

/** What can be done where the bore has grown: how much hold is lost, and which repairs give it back.
 * Repairs are compared, not chosen: a rubber-covered seal, a sleeve with its own fit, the next standard size, a retaining compound.
 * @returns the loss [µm], options with their numbers and findings, best first; what is refused
 * @throws CalculationError invalid-input (no reading of the bore) | outside-table
 * @source iso-6194-1-2007, din-3760-1996 (allowances; held row by row); sleeve plain-mechanics; gap and wall common-practice
 * @example boreRepair.run({ bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.15] }], material: 'al-a380' }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).options[0].kind // 'sleeve in the bore'
 */
export const boreRepair = defineCalculation({
  name: 'bore-repair',
  summary: 'What can be done where the bore of a seal has grown too large',
  input: situationField,
  output: outputField,
  compute(situation: Situation): BoreRepairOutput {
    const place = placeOf(situation);
    const options = [...rubberCovered(place), sleeve(place), ...nextSize(place), retaining(place)];
    return {
      verdict: verdictOf([place.overUm <= 0 ? deciding('bore-needs-no-repair', 'good', { boreMm: place.boreMm, boreUpToMm: place.boreUpToMm }, plainGeometry) : deciding('bore-has-grown', 'care', { boreMm: place.boreMm, overUm: place.overUm }, plainGeometry)]),
      boreMm: place.boreMm,
      boreUpToMm: place.boreUpToMm,
      overUm: place.overUm,
      options: options.toSorted((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict)),
      refused: ['knurled-or-punched-bore', 'foil-around-the-seal', 'sealant-for-a-loose-fit'],
      assumptions: assumptionsOf(place),
      notChecked: ['bore-can-be-machined-here', 'compound-against-fluid'],
    };
  },
  explain: (situation: Situation): readonly WorkingStep[] => {
    const { boreUpToMm, sealLeastMm, leastUsefulMm, overUm, boreMm, uncertaintyMm } = placeOf(situation);
    return [
      { kind: 'formula', symbol: 'B_max', meaning: 'largest bore that keeps the hold the standard lets happen', formula: 'S - I', scope: { S: sealLeastMm, I: leastUsefulMm }, value: boreUpToMm, unit: 'mm', source: plainGeometry },
      { kind: 'formula', symbol: 'o', meaning: 'the largest bore that the readings allow is over that by', formula: '1000 * (B + U - B_max)', scope: { B: boreMm, U: uncertaintyMm, B_max: boreUpToMm }, value: overUm, unit: 'µm', source: plainGeometry },
    ];
  },
});

const order: readonly Option['verdict'][] = ['suits', 'suits with care', 'cannot tell', 'does not suit'];

interface Place {
  readonly situation: Situation;
  readonly set: RequirementSet;
  readonly boreMm: number;
  readonly uncertaintyMm: number;
  readonly sealLeastMm: number;
  readonly leastUsefulMm: number;
  readonly boreUpToMm: number;
  readonly overUm: number;
}

function placeOf(situation: Situation): Place {
  const { bore, sealOutside, doubts } = sizesOf(situation);
  if (bore === null) throw invalidInput('bore.readings', undefined, 'at least one reading of the bore', doubts.bore.length === 0 ? 'missing; a repair needs the bore as it is' : 'not to be trusted: they contradict each other, or lie beyond the instrument');
  const set = situation.requirementSet ?? 'iso-6194-1';
  const { seal } = situation;
  const leastUsefulMm = leastUsefulInterferenceMm(set, seal.construction, seal.outsideMm);
  const sealLeastMm = sealOutside?.leastMm ?? seal.outsideMm;
  const boreUpToMm = sealLeastMm - leastUsefulMm;
  return { situation, set, boreMm: bore.meanMm, uncertaintyMm: bore.expandedUncertaintyMm, sealLeastMm, leastUsefulMm, boreUpToMm, overUm: 1000 * (bore.meanMm + bore.expandedUncertaintyMm - boreUpToMm) };
}

function option(kind: Option['kind'], findings: readonly Finding[], numbers: Partial<Option> = {}): Option {
  return { kind, verdict: verdictOf(findings), findings, newOutsideMm: null, sleeveOutsideMm: null, sleeveFit: null, sleeveClosesUm: null, wallLeftMm: null, ...numbers };
}

function rubberCovered({ situation, set, boreMm, uncertaintyMm }: Place): readonly Option[] {
  const { seal } = situation;
  if (!holdsByMetal(seal.construction)) return [];
  const allowance = pressFitAllowanceOf(set, 'rubber-covered', seal.outsideMm);
  const leastMm = seal.outsideMm + allowance.allowanceMinMm - (boreMm + uncertaintyMm);
  const numbers = { leastUm: leastMm * 1000, usefulUm: leastUsefulInterferenceMm(set, 'rubber-covered', seal.outsideMm) * 1000 };
  const severity = numbers.leastUm >= numbers.usefulUm ? 'good' : leastMm > 0 ? 'care' : 'bad';
  const code = { good: 'rubber-cover-takes-it-up', care: 'rubber-cover-takes-up-little', bad: 'rubber-cover-is-too-small' }[severity];
  return [option('rubber-covered seal of the same size', [deciding(code, severity, numbers, allowance.source)], { newOutsideMm: seal.outsideMm })];
}

/** A steel sleeve pressed into the bored-out housing, with a fit that stays tight when hot. */
function sleeve({ situation }: Place): Option {
  const { bore, seal, running, materials } = situation;
  const sleeveOutsideMm = Math.ceil(seal.outsideMm + 2 * sleeveWall.low);
  const give = housingGive(situation);
  const housing = bore?.material;
  if (housing === undefined || give === null) return option('sleeve in the bore', [deciding('sleeve-needs-material', 'unknown', {}, plainMechanics, 'bore.material')], { sleeveOutsideMm });
  const wallMm = bore?.housingOutsideMm === undefined ? null : (bore.housingOutsideMm - sleeveOutsideMm) / 2;
  if (wallMm !== null && wallMm < sleeveWall.low) return option('sleeve in the bore', [deciding('sleeve-leaves-no-wall', 'bad', { wallMm: Math.max(wallMm, 0), sleeveOutsideMm }, sleeveWall.source)], { sleeveOutsideMm, wallLeftMm: Math.max(wallMm, 0) });
  const hubOutsideMm = bore?.housingOutsideMm ?? 10 * sleeveOutsideMm;
  const hotC = running?.housingTemperatureC ?? running?.fluidTemperatureC ?? 20;
  const joint = { shaftBoreMm: seal.outsideMm, hubOutsideMm, lengthMm: bore?.depthMm ?? seal.widthMm, shaft: 'steel-c45', hub: housing, temperatureC: hotC, ...(materials === undefined ? {} : { materials }) };
  const common = { sleeveOutsideMm, ...(wallMm === null ? {} : { wallLeftMm: wallMm }) };
  try {
    const fit = chooseFit.compute({ nominalMm: sleeveOutsideMm, joint, mustStayTight: true, leastInterferenceUm: 1, mostInterferenceUm: 3 * sleeveOutsideMm, maximumCandidateCount: 1 }).candidates[0];
    if (fit === undefined) return option('sleeve in the bore', [deciding('sleeve-finds-no-fit', 'bad', { hotC }, plainMechanics)], common);
    const { shaftBoreGrowthUm } = pressJoint.compute({ ...joint, jointDiameterMm: sleeveOutsideMm, temperatureC: 20, interferenceUm: fit.mostInterferenceUm });
    const sleeveClosesUm = -(shaftBoreGrowthUm ?? 0);
    const numbers = { fit: `${fit.hole}/${fit.shaft}`, sleeveOutsideMm, sleeveClosesUm, hotC };
    return option('sleeve in the bore', [deciding('sleeve-restores-bore', 'good', numbers, plainMechanics)], { ...common, sleeveFit: numbers.fit, sleeveClosesUm });
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return option('sleeve in the bore', [deciding('sleeve-finds-no-fit', 'bad', { hotC }, plainMechanics)], common);
  }
}

/** The next larger seal on the same shaft, for a bore opened to it. */
function nextSize({ situation, boreMm }: Place): readonly Option[] {
  const { seal, bore } = situation;
  const { columns } = standardSizes;
  const larger = columns.outsideMm.filter((outsideMm, i) => columns.shaftMm[i] === seal.shaftMm && outsideMm > boreMm);
  if (larger.length === 0) return [];
  const newOutsideMm = Math.min(...larger);
  const wallMm = bore?.housingOutsideMm === undefined ? null : (bore.housingOutsideMm - newOutsideMm) / 2;
  if (wallMm !== null && wallMm < sleeveWall.low) return [option('next size', [deciding('next-size-leaves-no-wall', 'bad', { wallMm: Math.max(wallMm, 0), newOutsideMm }, sleeveWall.source)], { newOutsideMm, wallLeftMm: Math.max(wallMm, 0) })];
  const findings = [deciding('next-size-after-boring', 'care', { newOutsideMm, shaftMm: seal.shaftMm }, standardSizeSource)];
  return [option('next size', findings, { newOutsideMm, ...(wallMm === null ? {} : { wallLeftMm: wallMm }) })];
}

/** A compound fills a gap; it is no press fit. */
function retaining({ boreMm, uncertaintyMm, sealLeastMm, situation }: Place): Option {
  const gapMm = Math.max(0, boreMm + uncertaintyMm - sealLeastMm);
  const numbers = { gapMm, limitMm: retainingGap.high };
  if (!holdsByMetal(situation.seal.construction)) return option('retaining compound', [deciding('compound-not-on-rubber', 'bad', {}, retainingGap.source)]);
  if (gapMm > retainingGap.high) return option('retaining compound', [deciding('compound-gap-too-wide', 'bad', numbers, retainingGap.source)]);
  return option('retaining compound', [deciding('compound-fills-gap', 'care', numbers, retainingGap.source), supporting('compound-makes-removal-hard', 'note', {}, retainingGap.source)]);
}

function assumptionsOf({ situation }: Place): readonly Assumption[] {
  const list: Assumption[] = [
    { name: 'sleeve-wall', value: sleeveWall.low, upToValue: sleeveWall.high, unit: 'mm', source: sleeveWall.source, effect: 'which-repair' },
    { name: 'retaining-gap', value: retainingGap.high, unit: 'mm', source: retainingGap.source, effect: 'which-repair' },
  ];
  if (situation.bore?.housingOutsideMm === undefined) list.push({ name: 'endless-wall', value: 'thick', unit: '', source: plainMechanics, effect: 'which-repair' });
  return list;
}
