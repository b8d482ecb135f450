import * as z from 'zod/mini';
import { expandedUncertaintyMm, findInstrument } from '../measure/index.js';
import { lengthField } from '../quantity/index.js';
import { anyGiven, candourFields, choiceField, defineCalculation, exactlyOne, given, outputNumber, readWithin, rulesInSchema, sourceField, textField } from '../result/index.js';
import { bearingKinds } from './internal/bearing-choices.js';
import { bearingSize, bearingSizes, tableRowOf, type BearingSize } from './internal/bearing-table.js';
import { readSuffixes } from './internal/read-suffixes.js';

const inputField = z
  .strictObject({
    designation: z.optional(textField({ label: 'designation', typical: '6203 2RS C3', longest: 40 })),
    boreMm: z.optional(lengthField({ label: 'bore', unit: 'mm', over: 0, upTo: 500 })),
    outsideMm: z.optional(lengthField({ label: 'outside', unit: 'mm', over: 0, upTo: 800 })),
    widthMm: z.optional(lengthField({ label: 'width', unit: 'mm', over: 0, upTo: 300 })),
    bearingKind: z.optional(choiceField(bearingKinds, { label: 'kind of bearing; balls if left out' })),
    instrument: z.optional(textField({ label: 'instrument that the sizes were read with', typical: 'digital-calliper-outside', longest: 80 })),
    readingErrorMm: z.optional(lengthField({ label: 'the readings may be off by, plus or minus', unit: 'mm', from: 0, upTo: 2, typical: '0.05' })),
  })
  .check(z.refine((input) => (input.designation === undefined) !== (input.boreMm === undefined && input.outsideMm === undefined && input.widthMm === undefined), { error: 'give a designation, or measured dimensions' }), rulesInSchema([exactlyOne(given('designation'), anyGiven('boreMm', 'outsideMm', 'widthMm'))]));

const sizeField = z.strictObject({
  designation: textField({ label: 'basic designation' }),
  boreMm: outputNumber('bore', 'mm'),
  outsideMm: outputNumber('outside', 'mm'),
  widthMm: outputNumber('width', 'mm'),
  cornerMinMm: z.nullable(outputNumber('smallest corner dimension', 'mm')),
  kind: choiceField(bearingKinds, { label: 'kind of bearing' }),
  differenceMm: outputNumber('largest difference from what was measured', 'mm'),
  source: sourceField,
});

const outputField = z.strictObject({
  matches: z.readonly(z.array(sizeField)),
  nearest: z.readonly(z.array(sizeField)),
  seal: choiceField(['open', 'shields', 'seals', 'not said'], { label: 'what closes it' }),
  closedSideCount: outputNumber('sides that are closed', ''),
  clearanceGroup: z.nullable(choiceField(['2', 'N', '3', '4', '5'], { label: 'clearance group; none: not said' })),
  hasSnapRingGroove: z.boolean().check(z.meta({ label: 'groove for a snap ring', unit: '' })),
  unknownSuffixes: z.readonly(z.array(z.string().check(z.meta({ label: 'suffix whose meaning is not shared by the trade', unit: '' })))),
  ...candourFields,
});

export type BearingDimensionsOutput = z.infer<typeof outputField>;

const usualErrorMm = 0.05;
const nearestCount = 6;

/** Which bearing is it: dimensions of a designation, or the designation behind three measured dimensions.
 * Deep groove balls (618, 619, 160, 60, 62, 63, 64) and cylindrical rollers (NU, NJ, NUP, N 10, 2, 3, 22, 23, which share ISO 15's sizes).
 * Needle bearings and drawn cups have no table here: give their sizes. Suffixes are read only where the trade shares them: 2RS, RS (seals), ZZ, 2Z, Z (shields), C2 … C5 (clearance), N, NR (snap ring).
 * @returns matches within the error of the readings; the nearest where none match
 * @throws CalculationError invalid-input | no-such-class (names those of the same start)
 * @source iso-15 (held row by row: page or memory)
 * @example bearingDimensions.run({ boreMm: 17, outsideMm: 40, widthMm: 12 }).matches[0].designation // '6203'
 */
export const bearingDimensions = defineCalculation({
  name: 'bearing-dimensions',
  summary: 'Dimensions of a ball bearing by its designation, or which bearing was measured',
  input: inputField,
  output: outputField,
  compute(input): BearingDimensionsOutput {
    if (input.designation !== undefined) {
      const { basic, seal, clearanceGroup, ...suffixes } = readSuffixes(input.designation);
      // A suffix that was not understood may stand for a seal or a clearance: then open and N are not said.
      const isAllRead = suffixes.unknownSuffixes.length === 0;
      return { matches: [shown(bearingSize(basic), 0)], nearest: [], seal: isAllRead || seal !== 'open' ? seal : 'not said', clearanceGroup: isAllRead || clearanceGroup !== 'N' ? clearanceGroup : null, ...suffixes, assumptions: [], notChecked: ['dimensions-as-listed', 'ratings-by-the-maker'] };
    }
    const errorMm = input.readingErrorMm ?? (input.instrument === undefined ? usualErrorMm : instrumentErrorMm(input.instrument, input.outsideMm ?? input.boreMm ?? input.widthMm ?? 0));
    const kind = input.bearingKind ?? 'deep-groove-ball';
    const judged = bearingSizes.filter((size) => size.kind === kind).map((size) => shown(size, differenceOf(size, input))).sort((a, b) => a.differenceMm - b.differenceMm);
    const matches = judged.filter(({ differenceMm }) => differenceMm <= errorMm + 1e-9);
    return {
      matches,
      nearest: matches.length > 0 ? [] : judged.slice(0, nearestCount),
      seal: 'not said',
      closedSideCount: 0,
      clearanceGroup: null,
      hasSnapRingGroove: false,
      unknownSuffixes: [],
      assumptions: input.readingErrorMm === undefined && input.instrument === undefined ? [{ name: 'reading-error', value: usualErrorMm, unit: 'mm', source: { id: 'common-practice', held: 'practice' }, effect: 'which-bearing' }] : [],
      notChecked: ['dimensions-as-listed', 'clearance-group-is-marked', 'ratings-by-the-maker'],
    };
  },
  explain: (_, output) => output.matches.slice(0, 1).map((size) => ({ kind: 'lookup', symbol: 'd', meaning: 'bore', ...tableRowOf(size), column: 'boreMm', value: size.boreMm, unit: 'mm', source: size.source })),
});

/** Expanded uncertainty of an instrument at the largest of the sizes. */
function instrumentErrorMm(id: string, sizeMm: number): number {
  return readWithin('instrument', () => expandedUncertaintyMm(findInstrument(id, 'outside', sizeMm)));
}

function differenceOf(size: BearingSize, { boreMm, outsideMm, widthMm }: { readonly boreMm?: number | undefined; readonly outsideMm?: number | undefined; readonly widthMm?: number | undefined }): number {
  return Math.max(Math.abs((boreMm ?? size.boreMm) - size.boreMm), Math.abs((outsideMm ?? size.outsideMm) - size.outsideMm), Math.abs((widthMm ?? size.widthMm) - size.widthMm));
}

function shown(size: BearingSize, differenceMm: number): BearingDimensionsOutput['matches'][number] {
  return { ...size, differenceMm: Math.round(differenceMm * 1e6) / 1e6 };
}
