import { expect, test } from 'vitest';
import { jsonSchemasOf } from '@seatwright/core';
import { workshopFileField } from '@seatwright/core/job';
import { calculations } from '@seatwright/core/registry';
import * as z from 'zod/mini';

interface Schema {
  readonly type?: string | readonly string[];
  readonly label?: string;
  readonly unit?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema | boolean;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly allOf?: readonly Schema[];
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
}

/** Ends of the names of numbers, with the unit that each tells; an empty unit is a plain number. */
const suffixes: readonly (readonly [suffix: string, unit: string])[] = [
  ['MmRpm', 'mm·rpm'],
  ['PaM3PerS', 'Pa·m³/s'],
  ['MlPerMin', 'mL/min'],
  ['Cm3', 'cm³'],
  ['MillionRev', '10⁶ turns'],
  ['KgPerM3', 'kg/m³'],
  ['Mm2PerS', 'mm²/s'],
  ['Mm2', 'mm²'],
  ['PerK', '1/K'],
  ['Percent', '%'],
  ['Thou', 'thou'],
  ['Hours', 'h'],
  ['Kpa', 'kPa'],
  ['Mpa', 'MPa'],
  ['Gpa', 'GPa'],
  ['Rpm', 'rpm'],
  ['Mps', 'm/s'],
  ['Hrc', 'HRC'],
  ['Deg', '°'],
  ['Nm', 'N·m'],
  ['Km', 'km'],
  ['Mm', 'mm'],
  ['Um', 'µm'],
  ['In', 'in'],
  ['Ratio', ''],
  ['Factor', ''],
  ['Coefficient', ''],
  ['Probability', ''],
  ['Count', ''],
  ['version', ''],
  ['seed', ''],
  ['hours', 'h'],
  ['hoursPerYear', 'h'],
  ['Days', 'days'],
  ['C', '°C'],
  ['K', 'K'],
  ['N', 'N'],
  ['J', 'J'],
  ['W', 'W'],
  ['TimeS', 's'],
];

/** Parts of a span: their unit is that of the field around them. */
const parts = new Set(['min', 'max', 'probableLow', 'probableHigh', 'low', 'high', 'nominal', 'probable', 'earliest', 'latest', 'value', 'upToValue', 'hub', 'shaft', 'bore', 'surface', 'outside']);

/** Places in a list: they count, and measure nothing. */
const ordinals = new Set(['line']);

interface Leaf {
  readonly path: string;
  readonly name: string;
  readonly schema: Schema;
}

function leaves(schema: Schema, path: string, name: string, root: Schema): readonly Leaf[] {
  if (schema.$ref !== undefined) {
    const target = root.$defs?.[schema.$ref.replace('#/$defs/', '')];
    return target === undefined ? [] : leaves(target, path, name, root);
  }
  const branches = schema.anyOf ?? schema.oneOf ?? schema.allOf;
  if (branches !== undefined && schema.properties === undefined) return branches.flatMap((branch) => leaves({ ...('label' in schema ? { label: schema.label } : {}), ...('unit' in schema ? { unit: schema.unit } : {}), ...branch }, path, name, root));
  if (schema.properties !== undefined) {
    return Object.entries(schema.properties).flatMap(([key, child]) => leaves(child, path === '' ? key : `${path}.${key}`, parts.has(key) ? name : key, root));
  }
  if (typeof schema.items === 'object') return leaves({ ...('unit' in schema ? { unit: schema.unit } : {}), ...schema.items }, `${path}[]`, name, root);
  return [{ path, name, schema }];
}

const isNumber = ({ type }: Schema) => type === 'number' || type === 'integer' || (Array.isArray(type) && type.includes('number'));

const schemas: readonly (readonly [string, Schema])[] = [
  ...calculations.flatMap((calculation) => {
    const { input, output } = jsonSchemasOf(calculation);
    return [[`${calculation.name}, input`, input as Schema], [`${calculation.name}, output`, output as Schema]] as const;
  }),
  ['workshop file', z.toJSONSchema(workshopFileField, { io: 'input' }) as Schema],
];

test.each(schemas)('%s: every number tells its unit by the end of its name, and says the same unit', (_, schema) => {
  const faults: string[] = [];
  for (const leaf of leaves(schema, '', '', schema)) {
    if (!isNumber(leaf.schema) || leaf.schema.unit === 'see unit' || /(^|\.)(assumptions|parameters)(\[\])?(\.|$)/.test(leaf.path)) continue;
    if (ordinals.has(leaf.name)) continue;
    const found = suffixes.find(([suffix]) => leaf.name.endsWith(suffix));
    if (found === undefined) faults.push(`${leaf.path}: no unit at the end of "${leaf.name}"`);
    else if (leaf.schema.unit !== undefined && leaf.schema.unit !== found[1]) faults.push(`${leaf.path}: named in ${found[1]}, says ${leaf.schema.unit}`);
  }
  expect(faults).toEqual([]);
});

test.each(schemas.filter(([name]) => name.endsWith('input') || name === 'workshop file'))('%s: every field has a label, and every number a unit', (_, schema) => {
  const faults: string[] = [];
  for (const leaf of leaves(schema, '', '', schema)) {
    if (leaf.path === '' || Object.keys(leaf.schema).length === 0) continue;
    if (leaf.schema.label === undefined) faults.push(`${leaf.path}: no label`);
    if (isNumber(leaf.schema) && leaf.schema.unit === undefined) faults.push(`${leaf.path}: no unit`);
  }
  expect(faults).toEqual([]);
});
