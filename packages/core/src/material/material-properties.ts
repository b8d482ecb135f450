import * as z from 'zod/mini';
import { candourFields, choiceField, defineCalculation, outputNumber, source, sourceField, textField, type HeldMark, type SourceReference } from '../result/index.js';
import { materials as table } from '../tables/generated/materials.js';
import { markAt } from '../tables/table.js';
import { findMaterial } from './find-material.js';
import { materialField } from './material-field.js';

const propertyNames = ['youngsModulus', 'poissonRatio', 'expansion', 'yieldStrength', 'tensileStrength', 'density', 'maximumService'] as const;
type PropertyName = (typeof propertyNames)[number];

const propertyField = z.strictObject({
  property: choiceField(propertyNames, { label: 'property' }),
  value: outputNumber('value', 'see unit'),
  low: z.nullable(outputNumber('lower end of what is published', 'see unit')),
  high: z.nullable(outputNumber('upper end of what is published', 'see unit')),
  unit: z.string().check(z.meta({ label: 'unit of the property', unit: '' })),
  condition: z.nullable(z.string().check(z.meta({ label: 'condition that the value holds for', unit: '' }))),
  source: sourceField,
});

const outputField = z.strictObject({
  id: textField({ label: 'material id' }),
  name: textField({ label: 'material' }),
  family: textField({ label: 'family' }),
  properties: z.readonly(z.array(propertyField)),
  ...candourFields,
});

export type MaterialProperties = z.infer<typeof outputField>;
type Property = MaterialProperties['properties'][number];

type Column = 'youngsModulusGpa' | 'youngsModulusMinGpa' | 'youngsModulusMaxGpa' | 'poissonRatio' | 'expansionUmPerMK' | 'expansionMinUmPerMK' | 'expansionMaxUmPerMK' | 'yieldMpa' | 'yieldMinMpa' | 'yieldMaxMpa' | 'tensileMpa' | 'densityKgPerM3' | 'maxServiceC';

const shown: readonly (readonly [property: PropertyName, unit: string, value: Column, low?: Column, high?: Column])[] = [
  ['youngsModulus', 'GPa', 'youngsModulusGpa', 'youngsModulusMinGpa', 'youngsModulusMaxGpa'],
  ['poissonRatio', '', 'poissonRatio'],
  ['expansion', 'µm/(m·K)', 'expansionUmPerMK', 'expansionMinUmPerMK', 'expansionMaxUmPerMK'],
  ['yieldStrength', 'MPa', 'yieldMpa', 'yieldMinMpa', 'yieldMaxMpa'],
  ['tensileStrength', 'MPa', 'tensileMpa'],
  ['density', 'kg/m³', 'densityKgPerM3'],
  ['maximumService', '°C', 'maxServiceC'],
];

/** What is known of a material, each property with its own source.
 * @returns properties with value, published span, unit, condition and source; a property that is not known is not listed
 * @throws CalculationError invalid-input (unknown id)
 * @source materials-handbooks (row by row, cell by cell; see `source`)
 * @example materialProperties.run({ material: 'steel-c45' }).properties[0].value // 207
 */
export const materialProperties = defineCalculation({
  name: 'material-properties',
  summary: 'What is known of a material, each property with its source',
  input: z.strictObject({
    material: textField({ label: 'material id', typical: 'steel-c45', longest: 80 }),
    materials: z.optional(z.array(materialField).check(z.maxLength(200))),
  }),
  output: outputField,
  compute({ material: id, materials }): MaterialProperties {
    const { name, family, ...found } = findMaterial(id, materials);
    const i = family === 'own' ? -1 : table.columns.id.indexOf(id);
    const properties = i < 0 ? ownProperties(found) : shown.flatMap(([property, unit, value, low, high]) => propertyAt(i, property, unit, value, low, high));
    return { id, name, family, properties, assumptions: [], notChecked: [] };
  },
  explain: (_, output) =>
    output.properties.map(({ property, value, unit, source: by }) => ({ kind: 'lookup', symbol: property, meaning: property, table: table.id, row: output.id, column: property, value, unit, source: by })),
});

function propertyAt(i: number, property: PropertyName, unit: string, value: Column, low?: Column, high?: Column): readonly Property[] {
  const number = table.columns[value][i];
  if (number == null) return [];
  const at = (column: Column | undefined) => (column === undefined ? null : (table.columns[column][i] ?? null));
  const held: HeldMark = markAt(table, value, i);
  const condition = property === 'yieldStrength' ? (table.columns.yieldCondition[i] ?? '') : (table.columns.condition[i] ?? '');
  return [{ property, value: number, low: at(low), high: at(high), unit, condition: condition === '' ? null : condition, source: source(table.columns.rowSource[i] || table.source, held) }];
}

function ownProperties({ youngsModulusGpa, poissonRatio, expansionPerK, yieldMpa, densityKgPerM3, source: by }: { readonly youngsModulusGpa: number; readonly poissonRatio: number; readonly expansionPerK: { readonly low: number; readonly probable: number; readonly high: number }; readonly yieldMpa: number | null; readonly densityKgPerM3: number | null; readonly source: SourceReference }): readonly Property[] {
  const property = (name: PropertyName, value: number, unit: string, low: number | null = null, high: number | null = null): Property => ({ property: name, value, low, high, unit, condition: null, source: by });
  return [
    property('youngsModulus', youngsModulusGpa, 'GPa'),
    property('poissonRatio', poissonRatio, ''),
    property('expansion', expansionPerK.probable * 1e6, 'µm/(m·K)', expansionPerK.low * 1e6, expansionPerK.high * 1e6),
    ...(yieldMpa === null ? [] : [property('yieldStrength', yieldMpa, 'MPa')]),
    ...(densityKgPerM3 === null ? [] : [property('density', densityKgPerM3, 'kg/m³')]),
  ];
}
