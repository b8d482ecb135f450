import * as z from 'zod/mini';
import { readingsField } from '../measure/index.js';
import { lengthField, pressureField } from '../quantity/index.js';
import { choiceField, numberField, rulesInSchema, textField, yesNoField } from '../result/index.js';

export const constructions = ['metal-case', 'half-rubber', 'rubber-covered', 'rubber-covered-ribbed'] as const;
export type Construction = (typeof constructions)[number];

/**
 * True where bare metal presses in the bore: all of the width, or the metal half.
 * @example holdsByMetal('rubber-covered') // false
 */
export function holdsByMetal(construction: Construction): boolean {
  return construction === 'metal-case' || construction === 'half-rubber';
}

export const lipMaterials = ['NBR', 'HNBR', 'ACM', 'VMQ', 'FKM', 'EPDM', 'PTFE'] as const;
export type LipMaterial = (typeof lipMaterials)[number];

/** Shape of a radial lip seal as marked and, where somebody looked, as measured. */
export const sealShape = {
  shaftMm: lengthField({ label: 'shaft diameter marked on the seal', unit: 'mm', over: 0, upTo: 500 }),
  outsideMm: lengthField({ label: 'outside diameter marked on the seal', unit: 'mm', over: 0, upTo: 530 }),
  widthMm: lengthField({ label: 'width marked on the seal', unit: 'mm', over: 0, upTo: 60 }),
  construction: choiceField(constructions, { label: 'outside of the seal' }),
  lipMaterial: choiceField(lipMaterials, { label: 'rubber of the lip (ISO 1629)' }),
  hasDustLip: z.optional(yesNoField({ label: 'has a dust lip' })),
  turns: z.optional(choiceField(['either way', 'clockwise', 'counter-clockwise'], { label: 'shaft rotation the lip is made for, seen from the air side' })),
  outsideReadings: z.optional(z.array(readingsField).check(z.maxLength(20))),
  caseThicknessMm: z.optional(lengthField({ label: 'thickness of the metal case', unit: 'mm', over: 0, upTo: 5 })),
  caseYieldMpa: z.optional(numberField({ label: 'yield strength of the metal case', unit: 'MPa', over: 0, upTo: 2000 })),
  faceThicknessMm: z.optional(lengthField({ label: 'thickness of the face to be drilled, rubber included', unit: 'mm', over: 0, upTo: 10 })),
  edgeRadiusMm: z.optional(lengthField({ label: 'radius where the case turns into the face', unit: 'mm', from: 0, upTo: 10 })),
  ratedPressureMpa: z.optional(pressureField({ label: "pressure the seal's maker permits", unit: 'MPa', over: 0, upTo: 50 })),
  marking: z.optional(textField({ label: 'what is printed on the seal' })),
};

export const sealField = z.strictObject(sealShape).check(
  z.refine((seal) => seal.outsideMm > seal.shaftMm, { error: 'outsideMm must be larger than shaftMm' }),
  rulesInSchema([], ['outsideMm must be larger than shaftMm']),
);

export type Seal = z.infer<typeof sealField>;
