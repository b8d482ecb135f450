import { html, mathml, type MathMLTemplateResult, type TemplateResult } from 'lit';
import type { Formula } from './formula.js';

const greek: Readonly<Record<string, string>> = { alpha: 'α', beta: 'β', gamma: 'γ', delta: 'δ', Delta: 'Δ', eta: 'η', kappa: 'κ', lambda: 'λ', mu: 'μ', nu: 'ν', rho: 'ρ', sigma: 'σ', tau: 'τ', phi: 'φ', omega: 'ω', pi: 'π' };

/** What differs from one language to another. */
interface Setting {
  readonly decimalMark: '.' | ',';
  readonly if: string;
}

/** How tightly a formula holds together: what is looser than its place needs brackets. */
const strength = { either: 0, compare: 1, sum: 2, product: 3, power: 4, whole: 5 } as const;

/** A formula as books set it, in MathML: fractions with a bar, powers raised, roots under their sign. */
export function typesetFormula(formula: Formula, setting: Setting): TemplateResult {
  return html`<math displaystyle="true">${set(formula, strength.either, setting)}</math>`;
}

/** A name as books print it: what follows the underscore stands low. */
export function symbolInMath(name: string): MathMLTemplateResult {
  const [head = '', ...low] = name.split('_');
  const letter = greek[head] ?? head;
  return low.length === 0 ? mathml`<mi>${letter}</mi>` : mathml`<msub><mi>${letter}</mi><mi mathvariant="normal">${low.join(' ')}</mi></msub>`;
}

function set(formula: Formula, place: number, setting: Setting): MathMLTemplateResult {
  const [inner, own] = plain(formula, setting);
  return own < place ? mathml`<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>` : inner;
}

function plain(formula: Formula, setting: Setting): readonly [MathMLTemplateResult, number] {
  switch (formula.kind) {
    case 'number':
      return [mathml`<mn>${setting.decimalMark === ',' ? formula.text.replace('.', ',') : formula.text}</mn>`, strength.whole];
    case 'name':
      return [symbolInMath(formula.name), strength.whole];
    case 'minus':
      return [mathml`<mrow><mo>−</mo>${set(formula.of, strength.product, setting)}</mrow>`, strength.sum];
    case 'call':
      return [call(formula.name, formula.parts, setting), strength.whole];
    case 'either':
      return [mathml`<mrow>${set(formula.then, strength.compare, setting)}<mspace width="0.6em"></mspace><mtext>${setting.if}</mtext><mspace width="0.6em"></mspace>${set(formula.condition, strength.compare, setting)}<mo>,</mo><mspace width="0.6em"></mspace>${set(formula.otherwise, strength.compare, setting)}</mrow>`, strength.either];
    case 'operation':
      return operation(formula, setting);
  }
}

function operation({ operator, left, right }: Extract<Formula, { kind: 'operation' }>, setting: Setting): readonly [MathMLTemplateResult, number] {
  switch (operator) {
    case '/':
      // A bar brackets by itself.
      return [mathml`<mfrac><mrow>${set(left, strength.either, setting)}</mrow><mrow>${set(right, strength.either, setting)}</mrow></mfrac>`, strength.product];
    case '^':
      return [mathml`<msup><mrow>${set(left, strength.whole, setting)}</mrow><mrow>${set(right, strength.either, setting)}</mrow></msup>`, strength.power];
    case '*':
      return [mathml`<mrow>${set(left, strength.product, setting)}<mo>⋅</mo>${set(right, strength.product, setting)}</mrow>`, strength.product];
    case '+':
    case '-':
      return [mathml`<mrow>${set(left, strength.sum, setting)}<mo>${operator === '-' ? '−' : '+'}</mo>${set(right, strength.product, setting)}</mrow>`, strength.sum];
    default:
      return [mathml`<mrow>${set(left, strength.sum, setting)}<mo>${{ '<': '<', '<=': '≤', '>': '>', '>=': '≥' }[operator]}</mo>${set(right, strength.sum, setting)}</mrow>`, strength.compare];
  }
}

function call(name: string, parts: readonly Formula[], setting: Setting): MathMLTemplateResult {
  const [first] = parts;
  if (name === 'sqrt' && first !== undefined) return mathml`<msqrt>${set(first, strength.either, setting)}</msqrt>`;
  if (name === 'abs' && first !== undefined) return mathml`<mrow><mo>|</mo>${set(first, strength.either, setting)}<mo>|</mo></mrow>`;
  if (name === 'exp' && first !== undefined) return mathml`<msup><mi>e</mi><mrow>${set(first, strength.either, setting)}</mrow></msup>`;
  return mathml`<mrow><mi mathvariant="normal">${name}</mi><mo>(</mo>${parts.map((part, i) => mathml`${i === 0 ? '' : mathml`<mo>;</mo>`}${set(part, strength.either, setting)}`)}<mo>)</mo></mrow>`;
}
