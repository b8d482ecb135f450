import { chooseFit } from '../../joint/index.js';
import { partDeviations } from '../../tolerance/index.js';
import { CalculationError, contradiction, deciding, plainGeometry, plainMechanics, source, supporting, verdictOf, verdicts, type Finding } from '../../result/index.js';
import { practiceValue } from './bearing-practice.js';
import { interferenceOf } from './race-change.js';
import { seatProblem, withHousingMaterial, type SeatPart, type SeatProblem } from './seat-parts.js';
import type { SeatRepairInput, SeatRepairOutput } from './seat-repair-fields.js';

type Option = SeatRepairOutput['options'][number];

/**
 * Repairs of a loose seat, from input that is known to be sound: what `seatRepair` computes.
 * @throws CalculationError contradiction | no-such-class | outside-table
 * @example repairSeat({ designation: '6203', housingClass: 'H9', housingMaterial: 'al-a380', shaftClass: 'k5', seat: 'housing', temperatureC: 80 }).seat // 'housing'
 */
export function repairSeat(input: SeatRepairInput): SeatRepairOutput {
  const problem = seatProblem(input.seat === 'housing' ? withHousingMaterial(input) : input);
  const part = input.seat === 'shaft' ? problem.shaft : problem.housing;
  if (part === null) throw contradiction(['seat', `${input.seat}Readings`], `the ${input.seat} seat was not given: its readings say how loose it is`);
  const { leastUm, mostUm } = interferenceOf(part);
  const gap = { mostGapUm: 0 - leastUm, leastGapUm: 0 - mostUm };
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
}

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
