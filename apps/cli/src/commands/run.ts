import { calculations, findCalculation } from '@seatwright/core/registry';
import { CalculationError } from '@seatwright/core';
import { readInput } from '../internal/read-input.js';
import { answerText, workingText } from '../internal/write-answer.js';
import { answerJson, stampLine } from '../internal/stamp.js';

/** One calculation from a JSON file. */
export async function run(name: string, options: { readonly input: string; readonly explain?: boolean; readonly json?: boolean }): Promise<void> {
  const calculation = findCalculation(name);
  if (calculation === undefined) throw new Error(`no calculation "${name}"; there are ${calculations.map((known) => known.name).join(', ')}`);
  const text = await readInput(options.input);
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    throw new CalculationError('invalid-input', { message: `${options.input}: not JSON: ${error instanceof Error ? error.message : String(error)}`, allowed: 'JSON' });
  }
  const input = calculation.parse(raw);
  const output = calculation.compute(input);
  const working = options.explain === true ? calculation.explain(input, output) : undefined;
  if (options.json === true) process.stdout.write(`${answerJson(output, working)}\n`);
  else process.stdout.write(answerText(output, calculation) + (working === undefined ? '' : workingText(working)) + `\n${stampLine}`);
}
