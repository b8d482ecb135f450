import { expect } from 'vitest';
import { english, placeholdersOf } from '@seatwright/core/wording';

/** What an output may say by code. */
interface Spoken {
  readonly findings?: readonly { readonly code: string; readonly parameters: object; readonly missing?: string | undefined }[];
  readonly steps?: readonly { readonly code: string; readonly parameters: object; readonly cautions: readonly string[] }[];
  readonly cautions?: readonly string[];
  readonly assumptions: readonly { readonly name: string; readonly effect: string }[];
  readonly notChecked: readonly string[];
}

/** Every code of an output has words, and every placeholder of its words a parameter; so has every reading that is asked for. */
export function expectWords(output: Spoken): void {
  for (const { code, parameters, missing } of output.findings ?? []) {
    const words = english.findings[code];
    expect(words, code).toBeDefined();
    expectFilled(code, `${words?.says ?? ''} ${words?.todo ?? ''}`, parameters);
    if (missing !== undefined) expect(Object.keys(english.readings), missing).toContain(missing.replace(/\[\d+\].*$/, ''));
  }
  for (const { code, parameters, cautions } of output.steps ?? []) {
    expect(Object.keys(english.steps), code).toContain(code);
    expectFilled(code, english.steps[code] ?? '', parameters);
    for (const caution of cautions) expect(Object.keys(english.cautions), caution).toContain(caution);
  }
  for (const caution of output.cautions ?? []) expect(Object.keys(english.cautions), caution).toContain(caution);
  for (const { name, effect } of output.assumptions) {
    expect(Object.keys(english.assumed), name).toContain(name);
    expect(Object.keys(english.effects), effect).toContain(effect);
  }
  for (const code of output.notChecked) expect(Object.keys(english.notChecked), code).toContain(code);
}

function expectFilled(code: string, words: string, parameters: object): void {
  for (const name of placeholdersOf(words)) expect(Object.keys(parameters), `${code} {${name}}`).toContain(name);
}

/** Every number anywhere in a value. */
export function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersIn);
  return [];
}
