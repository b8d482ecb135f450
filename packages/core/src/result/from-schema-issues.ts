import type * as z from 'zod/mini';
import { CalculationError, invalidInput, joinPath } from './calculation-error.js';
import { knownFields, likelyFields } from './known-fields.js';
import { describeLimits } from './limits.js';

type Issue = z.core.$ZodIssue;

/**
 * `['bore', 'readings', 2]` as `bore.readings[2]`.
 * @internal
 */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => joinPath(text, typeof key === 'number' ? `[${key}]` : String(key)), '');
}

/**
 * The one door between the schema library and our errors: its first issue as a `CalculationError`.
 * `input` is the value that was parsed; the received value is looked up in it by path. With the `schema` an unknown field is told which are known.
 * @internal
 */
export function fromSchemaIssues(issues: readonly Issue[], input: unknown, schema?: z.core.$ZodType): CalculationError {
  const issue = issues[0];
  if (issue === undefined) return invalidInput('', input, 'a valid input');
  const path = pathText(issue.path);
  const received = valueAt(input, issue.path);
  switch (issue.code) {
    case 'invalid_type':
      return received === undefined
        ? invalidInput(path, received, kindText(issue.expected), `missing; expected ${kindText(issue.expected)}`)
        : invalidInput(path, received, kindText(issue.expected));
    case 'too_small': {
      const limit = { unit: '', [issue.inclusive ? 'from' : 'over']: Number(issue.minimum) };
      return invalidInput(path, received, rangeText(issue.origin, describeLimits(limit)));
    }
    case 'too_big': {
      const limit = { unit: '', [issue.inclusive ? 'upTo' : 'below']: Number(issue.maximum) };
      return invalidInput(path, received, rangeText(issue.origin, describeLimits(limit)));
    }
    case 'invalid_value':
      return received === undefined
        ? invalidInput(path, received, `one of ${issue.values.map(String).join(', ')}`, `missing; expected one of ${issue.values.map(String).join(', ')}`)
        : invalidInput(path, received, `one of ${issue.values.map(String).join(', ')}`);
    case 'unrecognized_keys': {
      const [key = ''] = issue.keys;
      const known = schema === undefined ? '' : likelyFields(key, knownFields(schema, issue.path)).join(', ');
      return invalidInput(joinPath(path, key), valueAt(input, [...issue.path, key]), known === '' ? 'a known field' : known, known === '' ? 'unknown field' : `unknown field; known are ${known}`);
    }
    case 'custom': {
      const carried: unknown = issue.params?.['error'];
      if (carried instanceof CalculationError) return carried.within(path);
      return invalidInput(path, received, issue.message, issue.message);
    }
    case 'invalid_union': {
      const branch = nearestBranch(issue.errors);
      return branch === undefined
        ? invalidInput(path, received, 'one of the permitted forms')
        : fromSchemaIssues([{ ...branch, path: [...issue.path, ...branch.path] }], input);
    }
    case 'invalid_format':
      return invalidInput(path, received, issue.format === 'regex' ? (issue.message || 'the expected form') : issue.format);
    default:
      return invalidInput(path, received, 'a permitted value');
  }
}

/** Of the alternatives of a union, the one whose fault lies deepest: the one that was most nearly met. */
function nearestBranch(branches: readonly (readonly Issue[])[]): Issue | undefined {
  let best: Issue | undefined;
  for (const [first] of branches) if (first !== undefined && (best === undefined || first.path.length > best.path.length)) best = first;
  return best;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  let value: unknown = input;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[key];
  }
  return value;
}

function kindText(expected: string): string {
  const texts: Record<string, string> = { number: 'a number', string: 'a text', object: 'an object', array: 'a list', boolean: 'true or false', int: 'a whole number' };
  return texts[expected] ?? expected;
}

function rangeText(origin: string, text: string): string {
  if (origin === 'array') return text === 'from 1' ? 'a list that is not empty' : `${text} entries`;
  if (origin === 'string') return text === 'from 1' ? 'a text that is not empty' : `${text} characters`;
  return text;
}
