import { CalculationError } from '@seatwright/core';
import { calculations, findCalculation } from '@seatwright/core/registry';
import { answerJson } from './stamp.js';

/** One line of a batch: a request in, an answer out; null stands for a line too long to be kept. Never throws. */
export function answerLine(text: string | null, line: number): { readonly answer: string; readonly ok: boolean } {
  let id: unknown;
  try {
    if (text === null) throw refused('', 'the line is longer than 16 MiB');
    const request = requestOf(text);
    id = request.id;
    const calculation = typeof request.calc === 'string' ? findCalculation(request.calc) : undefined;
    if (calculation === undefined) throw refused('calc', `unknown calculation; known are ${calculations.map(({ name }) => name).join(', ')}`);
    const input = calculation.parse(request.input);
    const output = calculation.compute(input);
    return { answer: answerJson(output, request.explain === true ? calculation.explain(input, output) : undefined, id), ok: true };
  } catch (error) {
    const told = error instanceof CalculationError ? error.toJSON() : { code: 'internal', path: '', message: error instanceof Error ? error.message : String(error), received: null, allowed: '' };
    return { answer: JSON.stringify({ ...(id === undefined ? {} : { id }), ok: false, error: told, line }), ok: false };
  }
}

function requestOf(text: string): { readonly id?: unknown; readonly calc?: unknown; readonly input?: unknown; readonly explain?: unknown } {
  let value: unknown;
  try {
    value = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch (error) {
    throw refused('', `not JSON: ${error instanceof Error ? error.message : String(error)}`);
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw refused('', 'a line is an object {"calc": name, "input": {…}}');
  return value;
}

function refused(path: string, message: string): CalculationError {
  return new CalculationError('invalid-input', { path, message, allowed: 'one request a line: {"calc": name, "input": {…}, "id"?: any, "explain"?: true}' });
}
