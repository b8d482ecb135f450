import * as z from 'zod/mini';
import { chooseFit } from '../joint/index.js';
import { partDeviations } from '../tolerance/index.js';
import { CalculationError, candourFields, choiceField, contradiction, deciding, defineCalculation, findingField, outputNumber, plainGeometry, plainMechanics, source, supporting, verdictField, verdictOf, verdicts, type Finding, type WorkingStep } from '../result/index.js';
import { bearingSeatShape } from './internal/bearing-seat-fields.js';
import { practiceValue } from './internal/bearing-practice.js';
import { interferenceOf } from './internal/race-change.js';
import { seatProblem, type SeatPart, type SeatProblem } from './internal/seat-parts.js';

const kinds = ['none needed', 'retaining compound', 'sleeve', 'plating'] as const;
const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const optionField = z.strictObject({
  kind: choiceField(kinds, { label: 'repair' }),
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  sleeveOutsideMm: maybe('outside of the sleeve', 'mm'),
  sleeveInsideMm: maybe('inside of the sleeve', 'mm'),
  sleeveFit: z.nullable(z.string().check(z.meta({ label: 'fit of the sleeve', unit: '' }))),
});

const outputField = z.strictObject({
  verdict: verdictField,
  seat: choiceField(['shaft', 'housing'], { label: 'which seat' }),
  mostGapUm: outputNumber('largest gap on the diameter; interference below zero', 'µm'),
  leastGapUm: outputNumber('smallest gap on the diameter; interference below zero', 'µm'),
  findings: z.readonly(z.array(findingField)),
  options: z.readonly(z.array(optionField)),
  refused: z.readonly(z.array(z.string().check(z.meta({ label: 'what is not a repair', unit: '' })))),
  ...candourFields,
});

const inputField = z.strictObject({ ...bearingSeatShape, seat: choiceField(['shaft', 'housing'], { label: 'which seat' }) });

export type SeatRepairInput = z.infer<typeof inputField>;
export type SeatRepairOutput = z.infer<typeof outputField>;
type Option = SeatRepairOutput['options'][number];

/** What can be done where the seat of a bearing is loose: how loose it is, and which repairs give it back.
 * Repairs are compared, not chosen: a retaining compound within its gap, a sleeve with its own fit that stays tight hot, plating by others.
 * @returns the gap [µm], options with their numbers, best first; what is refused
 * @throws CalculationError invalid-input | contradiction (the seat was not given) | no-such-class | outside-table
 * @source plain-mechanics; gap and wall common-practice
 * @example seatRepair.run({ designation: '6203', housingClass: 'H9', housingMaterial: 'al-a380', shaftClass: 'k5', seat: 'housing', temperatureC: 80 }).options[0].kind // 'sleeve'
 */
export const seatRepair = defineCalculation({
  name: 'seat-repair',
  summary: 'What can be done where the seat of a bearing is loose',
  input: inputField,
  output: outputField,
  compute(input): SeatRepairOutput {
    const problem = seatProblem(input);
    const part = input.seat === 'shaft' ? problem.shaft : problem.housing;
    if (part === null) throw contradiction(['seat', `${input.seat}Readings`], `the ${input.seat} seat was not given: its readings say how loose it is`);
    const { leastUm, mostUm } = interferenceOf(part);
    const gap = { mostGapUm: -leastUm, leastGapUm: -mostUm };
    const load = input.seat === 'shaft' ? problem.innerLoad : problem.outerLoad;
    const isNeeded = leastUm <= 0 && (load !== 'stationary' || -leastUm > loosestUm(part));
    const findings: Finding[] = [isNeeded ? deciding(input.seat === 'shaft' ? 'shaft-seat-loose' : 'housing-seat-loose', 'bad', gap, plainGeometry) : deciding('seat-needs-no-repair', 'good', gap, plainGeometry)];
    const options = isNeeded ? [compound(part, load), sleeve(problem, part), plating()] : [option('none needed', findings)];
    return {
      verdict: verdictOf(findings),
      seat: input.seat,
      ...gap,
      findings,
      options: options.toSorted((a, b) => verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict) || a.findings.length - b.findings.length),
      refused: ['punched-or-knurled-seat', 'foil-in-the-seat', 'welded-ring'],
      assumptions: problem.assumptions,
      notChecked: ['compound-against-fluid', 'seat-can-be-machined-here'],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const problem = seatProblem(input);
    const part = input.seat === 'shaft' ? problem.shaft : problem.housing;
    if (part === null) return [];
    const [inner, outer] = part.where === 'shaft' ? [part.seat, part.ring] : [part.ring, part.seat];
    return [{ kind: 'formula', symbol: 'g', meaning: 'largest gap on the diameter', formula: 'ES - ei', scope: { ES: outer.high, ei: inner.low }, value: output.mostGapUm, unit: 'µm', source: part.ringSource }];
  },
});

/** [µm] Largest gap of the loosest seat that is recommended under standing load: G7 in the housing, g6 on the shaft (ANSI/ABMA 7). */
function loosestUm({ where, nominalMm, ring }: SeatPart): number {
  if (where === 'housing') return partDeviations('G7', nominalMm, 'hole').upperUm - ring.low;
  return ring.high - partDeviations('g6', nominalMm, 'shaft').lowerUm;
}

function option(kind: Option['kind'], findings: readonly Finding[], numbers: Partial<Option> = {}): Option {
  return { kind, verdict: verdictOf(findings), findings, sleeveOutsideMm: null, sleeveInsideMm: null, sleeveFit: null, ...numbers };
}

function compound(part: SeatPart, load: string): Option {
  const limit = practiceValue('retaining-gap-bearing', 'Mm');
  const gapMm = -interferenceOf(part).leastUm / 1000;
  const numbers = { gapMm, limitMm: limit.high };
  if (gapMm > limit.high) return option('retaining compound', [deciding('compound-gap-too-wide', 'bad', numbers, limit.source)]);
  return option('retaining compound', [deciding('compound-fills-seat', 'care', numbers, limit.source), ...(load === 'stationary' ? [] : [supporting('compound-under-turning-load', 'care', {}, limit.source)])]);
}

/** A steel sleeve: pressed into the bored housing, or onto the turned-down shaft, with a fit that stays tight when hot. */
function sleeve(problem: SeatProblem, part: SeatPart): Option {
  const wall = practiceValue('sleeve-wall-bearing', 'Mm');
  const isShaft = part.where === 'shaft';
  const jointMm = isShaft ? Math.floor(part.nominalMm - 2 * wall.low) : Math.ceil(part.nominalMm + 2 * wall.low);
  if (isShaft && jointMm <= problem.shaftBoreMm + 2 * wall.low) return option('sleeve', [deciding('sleeve-leaves-too-little-shaft', 'bad', { jointMm }, wall.source)]);
  if (!isShaft && jointMm + 2 * wall.low >= problem.housingOutsideMm) return option('sleeve', [deciding('sleeve-leaves-no-wall', 'bad', { wallMm: Math.max(0, (problem.housingOutsideMm - jointMm) / 2), sleeveOutsideMm: jointMm }, wall.source)]);
  const [state] = problem.running;
  const hotC = isShaft ? state.shaftC : state.housingC;
  try {
    const fit = chooseFit.compute({
      nominalMm: jointMm,
      joint: isShaft
        ? { shaftBoreMm: problem.shaftBoreMm, hubOutsideMm: part.nominalMm, lengthMm: problem.rings.widthMm, shaft: part.given.seat, hub: 'steel-c45', temperatureC: hotC, materials: [...problem.materials] }
        : { shaftBoreMm: part.nominalMm, hubOutsideMm: problem.housingOutsideMm, lengthMm: problem.rings.widthMm, shaft: 'steel-c45', hub: part.given.seat, temperatureC: hotC, materials: [...problem.materials] },
      mustStayTight: true, leastInterferenceUm: 1, mostInterferenceUm: 3 * jointMm, maximumCandidateCount: 1,
    }).candidates[0];
    if (fit === undefined) return option('sleeve', [deciding('sleeve-finds-no-fit', 'bad', { hotC }, plainMechanics)]);
    const numbers = { fit: `${fit.hole}/${fit.shaft}`, jointMm, seatMm: part.nominalMm, hotC };
    const restored = isShaft
      ? deciding('sleeve-restores-shaft-seat', 'care', { ...numbers, strengthPercent: (100 * sectionModulus(jointMm, problem.shaftBoreMm)) / sectionModulus(part.nominalMm, problem.shaftBoreMm) }, plainMechanics)
      : deciding('sleeve-restores-housing-seat', 'good', numbers, plainMechanics);
    return option('sleeve', [restored], { sleeveFit: numbers.fit, sleeveOutsideMm: isShaft ? part.nominalMm : jointMm, sleeveInsideMm: isShaft ? jointMm : part.nominalMm });
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return option('sleeve', [deciding('sleeve-finds-no-fit', 'bad', { hotC }, plainMechanics)]);
  }
}

/** Section modulus of a round shaft with a hole, without the factor that bending and twist do not share. */
function sectionModulus(outsideMm: number, boreMm: number): number {
  return (outsideMm ** 4 - boreMm ** 4) / outsideMm;
}

function plating(): Option {
  return option('plating', [deciding('plating-by-others', 'care', {}, source('common-practice', 'practice'))]);
}
