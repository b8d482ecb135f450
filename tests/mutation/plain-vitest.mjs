import { ASYMMETRIC_MATCHERS_OBJECT, GLOBAL_EXPECT, JestAsymmetricMatchers, JestChaiExpect, JestExtend, chai, getState, setState } from '@vitest/expect';

/**
 * What the tests of a room take from vitest, without its processes: the same assertions; tests are put on a list
 * (`globalThis.seatwrightTests`) that the runner goes through again and again in one process.
 */
chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
// A snapshot in the line of the test is a matter of wording, and left to the real runner.
chai.use((_chai, { addMethod }) => addMethod(chai.Assertion.prototype, 'toMatchInlineSnapshot', () => undefined));

export const expect = (value, message) => {
  setState({ assertionCalls: (getState(expect).assertionCalls ?? 0) + 1 }, expect);
  return chai.expect(value, message);
};
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
setState({ assertionCalls: 0, isExpectingAssertions: false }, expect);
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, configurable: true });

const list = (globalThis.seatwrightTests ??= []);
const names = [];

export function test(name, ...rest) {
  const run = rest.find((item) => typeof item === 'function');
  list.push({ name: [...names, name].join(' '), run });
}
test.each = (rows) => (name, run) => {
  for (const [i, row] of rows.entries()) test(`${name} (${i})`, () => (Array.isArray(row) ? run(...row) : run(row)));
};
/** The other name of a test. */
export const it = Object.assign((...all) => test(...all), { each: test.each });

export function describe(name, body) {
  names.push(name);
  body();
  names.pop();
}
describe.each = (rows) => (name, body) => {
  for (const [i, row] of rows.entries()) describe(`${name} (${i})`, () => (Array.isArray(row) ? body(...row) : body(row)));
};

/** Types are the compiler's matter. */
const anything = new Proxy(() => anything, { get: () => anything });
export const expectTypeOf = anything;
