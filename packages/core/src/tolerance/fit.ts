import * as z from 'zod/mini';
import {
  candourFields,
  choiceField,
  defineCalculation,
  invalidInput,
  outputNumber,
  source,
  textField,
  type WorkingStep,
} from '../result/index.js';
import { readClassName, type ClassName, type PartKind } from './internal/class-names.js';
import { nominalField } from './internal/nominal-field.js';
import { sizeStepOf } from './internal/size-steps.js';
import { zoneAssumptions } from './internal/zone-candour.js';
import { zoneField } from './internal/zone-fields.js';
import { zoneOf, type Zone } from './internal/zone.js';
import { zoneWorking } from './internal/zone-working.js';
import { settledUm } from './internal/settled.js';

export type FitKind = 'clearance' | 'transition' | 'interference';

/** The two zones of a fit and what they leave between the parts; diametral. */
export interface FitLimits {
  readonly kind: FitKind;
  /** `hole-basis` also where both parts are H and h. */
  readonly basis: 'hole-basis' | 'shaft-basis' | 'none';
  readonly maximumClearanceUm: number;
  readonly minimumClearanceUm: number;
  readonly maximumInterferenceUm: number;
  readonly minimumInterferenceUm: number;
  /** How much the fit can vary: the sum of both tolerances. */
  readonly fitToleranceUm: number;
  readonly holeZone: Zone;
  readonly shaftZone: Zone;
}

const notLookedAt: readonly string[] = Object.freeze(['fit-away-from-20-c', 'form-and-roughness']);

/**
 * Clearance or interference between a hole and a shaft of one nominal size.  c_max = ES − ei, c_min = EI − es
 * @returns clearances and interferences [µm], diametral, each zero where there is none; scalar, both parts at 20 °C
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source iso-286-1-2010, clause 3.3 (held as: page)
 * @example fit.compute({ nominalMm: 25, hole: 'H7', shaft: 'p6' }).maximumInterferenceUm // 35
 */
export const fit = defineCalculation({
  name: 'fit',
  summary: 'Clearance or interference of an ISO 286 fit',
  input: z.strictObject({
    nominalMm: nominalField,
    hole: textField({ label: 'class of the hole', typical: 'H7', longest: 16 }),
    shaft: textField({ label: 'class of the shaft', typical: 'p6', longest: 16 }),
  }),
  output: z.strictObject({
    kind: choiceField(['clearance', 'transition', 'interference'], { label: 'kind of fit' }),
    basis: choiceField(['hole-basis', 'shaft-basis', 'none'], { label: 'fit system' }),
    maximumClearanceUm: outputNumber('largest clearance', 'µm'),
    minimumClearanceUm: outputNumber('smallest clearance', 'µm'),
    maximumInterferenceUm: outputNumber('largest interference', 'µm'),
    minimumInterferenceUm: outputNumber('smallest interference', 'µm'),
    fitToleranceUm: outputNumber('tolerance of the fit', 'µm'),
    holeZone: zoneField,
    shaftZone: zoneField,
    ...candourFields,
  }),
  compute({ nominalMm, hole, shaft }) {
    const holeName = readKind(hole, 'hole');
    const shaftName = readKind(shaft, 'shaft');
    const step = sizeStepOf(nominalMm);
    const holeZone = zoneOf(nominalMm, holeName, 'hole', step);
    const shaftZone = zoneOf(nominalMm, shaftName, 'shaft', step);
    const mostUm = settledUm(holeZone.upperLimitDeviationUm - shaftZone.lowerLimitDeviationUm);
    const leastUm = settledUm(holeZone.lowerLimitDeviationUm - shaftZone.upperLimitDeviationUm);
    return {
      kind: kindOf(leastUm, mostUm),
      basis: basisOf(holeName, shaftName),
      maximumClearanceUm: Math.max(0, mostUm),
      minimumClearanceUm: Math.max(0, leastUm),
      maximumInterferenceUm: Math.max(0, -leastUm),
      minimumInterferenceUm: Math.max(0, -mostUm),
      fitToleranceUm: settledUm(holeZone.standardToleranceUm + shaftZone.standardToleranceUm),
      holeZone,
      shaftZone,
      assumptions: zoneAssumptions(holeName, nominalMm),
      notChecked: notLookedAt,
    };
  },
  explain(input, output) {
    const { holeZone, shaftZone } = output;
    return [
      ...zoneWorking(holeZone, readClassName(input.hole, 'hole'), input.nominalMm),
      ...zoneWorking(shaftZone, readClassName(input.shaft, 'shaft'), input.nominalMm),
      ...fitSteps(output),
    ];
  },
});

export type FitInput = Readonly<Parameters<typeof fit.compute>[0]>;

export type Fit = Readonly<ReturnType<typeof fit.compute>>;

/** A fit clears when the least clearance is zero or more, and interferes when the most is zero or less. */
function kindOf(leastUm: number, mostUm: number): FitKind {
  if (leastUm >= 0) return 'clearance';
  return mostUm <= 0 ? 'interference' : 'transition';
}

function basisOf(hole: ClassName, shaft: ClassName): FitLimits['basis'] {
  if (hole.letter === 'H') return 'hole-basis';
  return shaft.letter === 'h' ? 'shaft-basis' : 'none';
}

function readKind(text: string, kind: PartKind): ClassName {
  const name = readClassName(text, kind);
  if (name.kind === kind) return name;
  const letter = kind === 'hole' ? name.holeLetter : name.letter.toLowerCase();
  const allowed = kind === 'hole' ? `a class with capital letters, e.g. ${letter}${name.grade}` : `a class with small letters, e.g. ${letter}${name.grade}`;
  throw invalidInput(kind, text, allowed, `${name.text} is a class for a ${name.kind}; expected ${allowed}`);
}

function fitSteps(output: FitLimits): readonly WorkingStep[] {
  const { holeZone, shaftZone } = output;
  const sides = {
    ES: holeZone.upperLimitDeviationUm,
    EI: holeZone.lowerLimitDeviationUm,
    es: shaftZone.upperLimitDeviationUm,
    ei: shaftZone.lowerLimitDeviationUm,
  };
  const { ES, EI, es, ei } = sides;
  const rows = [
    ['c_max', 'largest clearance', 'max(0, ES - ei)', { ES, ei }, output.maximumClearanceUm],
    ['c_min', 'smallest clearance', 'max(0, EI - es)', { EI, es }, output.minimumClearanceUm],
    ['i_max', 'largest interference', 'max(0, es - EI)', { es, EI }, output.maximumInterferenceUm],
    ['i_min', 'smallest interference', 'max(0, ei - ES)', { ei, ES }, output.minimumInterferenceUm],
    ['T_fit', 'tolerance of the fit', 'ES - EI + es - ei', sides, output.fitToleranceUm],
  ] as const;
  const by = source('iso-286-1-2010', 'page', 'clause 3.3');
  return [
    ...rows.map(
      ([symbol, meaning, formula, scope, value]): WorkingStep => ({ kind: 'formula', symbol, meaning, formula, scope, value, unit: 'µm', source: by }),
    ),
    {
      kind: 'choice',
      symbol: 'kind',
      meaning: 'kind of fit',
      value: output.kind,
      unit: '',
      why: reasons[output.kind],
      source: by,
    },
  ];
}

const reasons: Readonly<Record<FitKind, string>> = {
  clearance: 'the smallest hole is no smaller than the largest shaft',
  interference: 'the largest hole is no larger than the smallest shaft',
  transition: 'the zones of hole and shaft overlap: either may come out',
};
