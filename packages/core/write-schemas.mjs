// Writes the JSON Schemas of every calculation and of the workshop file to schemas/, for those who check input without this library.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { inputSchemaOf, jsonSchemasOf, libraryVersion, tablesEdition } from './dist/index.js';
import { workshopFileField } from './dist/job/index.js';
import { calculations } from './dist/registry.js';

const folder = new URL('./schemas/', import.meta.url);
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder);
const write = (name, schema) => writeFileSync(new URL(`${name}.json`, folder), `${JSON.stringify({ $id: `urn:seatwright:${name}`, ...schema }, null, 1)}\n`);

for (const calculation of calculations) {
  const { input, output } = jsonSchemasOf(calculation);
  write(`${calculation.name}.input`, input);
  write(`${calculation.name}.output`, output);
}
write('workshop-file', inputSchemaOf(workshopFileField));
const list = { libraryVersion, tablesEdition, calculations: calculations.map(({ name, summary }) => ({ name, summary, input: `${name}.input.json`, output: `${name}.output.json` })), workshopFile: 'workshop-file.json' };
writeFileSync(new URL('index.json', folder), `${JSON.stringify(list, null, 1)}\n`);
