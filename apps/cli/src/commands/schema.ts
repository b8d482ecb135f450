import { inputSchemaOf, jsonSchemasOf } from '@seatwright/core';
import { workshopFileField } from '@seatwright/core/job';
import { calculations, findCalculation } from '@seatwright/core/registry';

/** JSON Schemas of a calculation, or of the workshop file. */
export function schema(name: string): Promise<void> {
  const calculation = findCalculation(name);
  if (calculation === undefined && name !== 'workshop-file') throw new Error(`no calculation "${name}"; there are ${calculations.map((known) => known.name).join(', ')}, and workshop-file`);
  const schemas = calculation === undefined ? inputSchemaOf(workshopFileField) : jsonSchemasOf(calculation);
  process.stdout.write(`${JSON.stringify(schemas, null, 2)}\n`);
  return Promise.resolve();
}

/** The calculations, a line each. */
export function list({ json }: { readonly json?: boolean }): Promise<void> {
  const rows = calculations.map(({ name, summary }) => ({ name, summary }));
  const width = Math.max(...rows.map(({ name }) => name.length)) + 2;
  process.stdout.write(json === true ? `${JSON.stringify(rows)}\n` : `${rows.map(({ name, summary }) => `${name.padEnd(width)}${summary}`).join('\n')}\n`);
  return Promise.resolve();
}
