import * as z from 'zod/mini';
import { materialField, partMaterial, partMaterialField, type Material } from '../material/index.js';
import { deviationField, lengthField, temperatureField } from '../quantity/index.js';
import { candourFields, choiceField, defineCalculation, findingField, deciding, invalidInput, outputNumber, plainMechanics, source, spanField, supporting, verdictField, verdictOf, type Assumption, type Finding, type SourceReference, type Span, type WorkingStep } from '../result/index.js';
import { chillCautions, dryIce, freezer, liquidNitrogen } from './internal/cooling.js';
import { heatingLimitOf } from './internal/heating-limit.js';
import { referenceC } from './internal/joint-state.js';

const inputField = z.strictObject({
  jointDiameterMm: lengthField({ label: 'diameter of the joint', unit: 'mm', over: 0, upTo: 10_000 }),
  interferenceUm: deviationField({ label: 'largest interference on the diameter, at 20 °C', unit: 'µm', from: -100_000, upTo: 100_000 }),
  joiningClearanceUm: z.optional(deviationField({ label: 'clearance wanted while joining', unit: 'µm', from: 0, upTo: 100_000, help: 'a thousandth of the diameter if left out' })),
  outerMaterial: partMaterialField,
  innerMaterial: partMaterialField,
  ambientC: temperatureField({ label: 'temperature of the workshop', unit: '°C', from: -50, upTo: 60, typical: '20' }),
  outerLimitC: z.optional(temperatureField({ label: 'the outer part may be made as hot as', unit: '°C', from: -50, upTo: 1000 })),
  innerLimitC: z.optional(temperatureField({ label: 'the inner part may be made as cold as', unit: '°C', from: -269, upTo: 60, help: 'left out: it stays at the temperature of the workshop' })),
  hasSealOrGrease: z.optional(z.boolean().check(z.meta({ label: 'a rubber seal or grease is in the outer part', unit: '' }))),
  materials: z.optional(z.array(materialField).check(z.maxLength(200))),
});

const alternatives = ['chill', 'both', 'press cold'] as const;

const outputField = z.strictObject({
  verdict: verdictField,
  feasible: z.boolean().check(z.meta({ label: 'it goes together with clearance within the limits', unit: '' })),
  outerPartC: outputNumber('temperature of the outer part', '°C'),
  innerPartC: outputNumber('temperature of the inner part', '°C'),
  outerPartSpanC: z.nullable(spanField('temperature of the outer part over the spread of the expansion coefficients', '°C')),
  innerPartSpanC: z.nullable(spanField('temperature of the inner part over the spread of the expansion coefficients', '°C')),
  outerLimitC: outputNumber('limit of the outer part', '°C'),
  innerLimitC: outputNumber('limit of the inner part', '°C'),
  neededGapUm: outputNumber('interference and joining clearance together', 'µm'),
  gapAtLimitUm: outputNumber('clearance with both parts at their limits, at the least', 'µm'),
  gapAtLimitSpanUm: spanField('clearance with both parts at their limits, over the spread of the expansion coefficients', 'µm'),
  alternative: z.nullable(choiceField(alternatives, { label: 'what to do instead' })),
  alternativeInnerC: z.nullable(outputNumber('temperature of the inner part for that', '°C')),
  findings: z.readonly(z.array(findingField)),
  cautions: z.readonly(z.array(z.string().check(z.meta({ label: 'caution', unit: '' })))),
  ...candourFields,
});

export type JoiningTemperatureInput = z.infer<typeof inputField>;
export type JoiningTemperatureOutput = z.infer<typeof outputField>;

const clearanceShare = 0.001;
const clearanceSource = source('din-7190-2001', 'memory', 'joining clearance 0.001 d');

/** How hot the outer part, and how cold the inner, so that they go together with clearance.  αo·d·(To − 20) ≥ U + S + αi·d·(Ti − 20)
 * The outer part is counted with the low end of its expansion coefficient, the inner with the end that leaves less room; the spans
 * tell what the other ends would give. A part is never sent beyond a limit that was given, nor a seal or grease beyond its own.
 * @returns temperatures [°C], clearance at the limits [µm]; what to do instead where that is not enough; cautions
 * @throws CalculationError invalid-input
 * @source din-7190-2001 (held as: memory)
 * @example joiningTemperature.run({ jointDiameterMm: 50, interferenceUm: 144, joiningClearanceUm: 50, outerMaterial: { youngsModulusGpa: 200, poissonRatio: 0.29, expansionPerK: 1.17e-5 }, innerMaterial: 'steel-c45', ambientC: 20, outerLimitC: 400 }).outerPartC.toFixed(1) // '351.6'
 */
export const joiningTemperature = defineCalculation({
  name: 'joining-temperature',
  summary: 'How hot the outer and how cold the inner part must be to go together without force',
  input: inputField,
  output: outputField,
  compute(input): JoiningTemperatureOutput {
    const plan = planOf(input);
    const { heat, spans, atLimitUm, atLimitSpanUm, outerLimitC, innerLimitC, neededUm } = plan;
    const feasible = heat !== null;
    const instead = feasible ? null : insteadOf(plan);
    const findings = findingsOf(plan, input, instead);
    return {
      verdict: verdictOf(findings),
      feasible,
      outerPartC: heat?.outerC ?? outerLimitC,
      innerPartC: heat?.innerC ?? innerLimitC,
      outerPartSpanC: spans?.outerC ?? null,
      innerPartSpanC: spans?.innerC ?? null,
      outerLimitC,
      innerLimitC,
      neededGapUm: neededUm,
      gapAtLimitUm: atLimitUm,
      gapAtLimitSpanUm: atLimitSpanUm,
      alternative: instead?.what ?? null,
      alternativeInnerC: instead?.innerC ?? null,
      findings,
      cautions: cautionsOf(input, heat?.outerC ?? outerLimitC, heat?.innerC ?? instead?.innerC ?? innerLimitC, instead),
      assumptions: plan.assumptions,
      notChecked: ['heat-lost-on-the-way', 'expansion-in-deep-cold', 'hardness-after-heating'],
    };
  },
  explain: (input, output) => working(planOf(input), input, output),
});

interface Temperatures {
  readonly outerC: number;
  readonly innerC: number;
}

interface Plan {
  readonly outer: Material;
  readonly inner: Material;
  readonly clearanceUm: number;
  readonly neededUm: number;
  readonly outerLimitC: number;
  readonly innerLimitC: number;
  /** Whether somebody said how cold the inner part may be made. */
  readonly isInnerLimitGiven: boolean;
  readonly ambientC: number;
  /** Room [µm] that the two temperatures make, at the least. */
  readonly roomUm: (outerC: number, innerC: number) => number;
  readonly heat: Temperatures | null;
  /** From the ends of the expansion coefficients that help to those that do not; null where it does not go together. */
  readonly spans: { readonly outerC: Span; readonly innerC: Span } | null;
  /** Clearance left at the limits; below zero: they still overlap. */
  readonly atLimitUm: number;
  readonly atLimitSpanUm: Span;
  readonly limitSource: SourceReference;
  readonly assumptions: readonly Assumption[];
}

function planOf(input: JoiningTemperatureInput): Plan {
  const { jointDiameterMm: d, ambientC } = input;
  const outer = partMaterial(input.outerMaterial, input.materials, 'outerMaterial');
  const inner = partMaterial(input.innerMaterial, input.materials, 'innerMaterial');
  const clearanceUm = input.joiningClearanceUm ?? clearanceShare * d * 1000;
  const neededUm = input.interferenceUm + clearanceUm;
  const limit = outerLimitOf(input, outer);
  const outerLimitC = Math.max(limit.c, ambientC);
  const innerLimitC = Math.min(input.innerLimitC ?? ambientC, ambientC);
  const roomUm = (outerC: number, innerC: number) => d * 1000 * (leastGrowth(outer, outerC) - mostGrowth(inner, innerC));
  const bestRoomUm = (outerC: number, innerC: number) => d * 1000 * (mostGrowth(outer, outerC) - leastGrowth(inner, innerC));
  const heat = reach(neededUm, ambientC, outerLimitC, innerLimitC, roomUm);
  const best = reach(neededUm, ambientC, outerLimitC, innerLimitC, bestRoomUm);
  const atLimitUm = roomUm(outerLimitC, innerLimitC) - input.interferenceUm;
  const assumptions: Assumption[] = [];
  if (input.joiningClearanceUm === undefined) assumptions.push({ name: 'joining-clearance', value: clearanceUm, unit: 'µm', source: clearanceSource, effect: 'how-hot' });
  if (limit.c !== input.outerLimitC) assumptions.push({ name: 'heating-limit', value: limit.c, unit: '°C', source: limit.source, effect: 'whether-heat-is-enough' });
  for (const [name, { expansionPerK, source: by }] of [['expansion-of-outer', outer], ['expansion-of-inner', inner]] as const) {
    if (expansionPerK.low < expansionPerK.high) assumptions.push({ name, value: expansionPerK.low, upToValue: expansionPerK.high, unit: '1/K', source: by, effect: 'how-hot' });
  }
  return {
    outer, inner, clearanceUm, neededUm, ambientC, roomUm, innerLimitC, assumptions,
    outerLimitC,
    isInnerLimitGiven: input.innerLimitC !== undefined,
    limitSource: limit.source,
    heat,
    spans: heat === null || best === null ? null : { outerC: spanOf(best.outerC, heat.outerC), innerC: spanOf(heat.innerC, best.innerC) },
    atLimitUm,
    atLimitSpanUm: spanOf(atLimitUm, bestRoomUm(outerLimitC, innerLimitC) - input.interferenceUm),
  };
}

function leastGrowth({ expansionPerK: { low, high } }: Material, c: number): number {
  return Math.min(low * (c - referenceC), high * (c - referenceC));
}

function mostGrowth({ expansionPerK: { low, high } }: Material, c: number): number {
  return Math.max(low * (c - referenceC), high * (c - referenceC));
}

/** Two values in order: where heat and cold are found by halving they may differ by its last step. */
function spanOf(one: number, other: number): Span {
  return { low: Math.min(one, other), high: Math.max(one, other) };
}

/** Heats first, to the limit; only then chills. null where both limits are not enough. */
function reach(neededUm: number, ambientC: number, outerLimitC: number, innerLimitC: number, roomUm: Plan['roomUm']): Plan['heat'] {
  if (roomUm(ambientC, ambientC) >= neededUm) return { outerC: ambientC, innerC: ambientC };
  if (outerLimitC > ambientC && roomUm(outerLimitC, ambientC) >= neededUm) return { outerC: between(ambientC, outerLimitC, (c) => roomUm(c, ambientC) - neededUm), innerC: ambientC };
  const hottestC = Math.max(outerLimitC, ambientC);
  if (roomUm(hottestC, innerLimitC) < neededUm) return null;
  return { outerC: hottestC, innerC: between(ambientC, innerLimitC, (c) => roomUm(hottestC, c) - neededUm) };
}

/** Where a value that grows from `from` to `to` becomes zero; it bends at 20 °C, so it is found by halving. */
function between(from: number, to: number, value: (c: number) => number): number {
  let [short, enough] = [from, to];
  for (let i = 0; i < 100 && Math.abs(enough - short) > 1e-10; i += 1) {
    const middle = (short + enough) / 2;
    if (value(middle) >= 0) enough = middle;
    else short = middle;
  }
  return enough;
}

function outerLimitOf(input: JoiningTemperatureInput, outer: Material): { readonly c: number; readonly source: SourceReference } {
  const own = heatingLimitOf(outer);
  const sealed = input.hasSealOrGrease === true ? heatingLimitOf({ id: 'sealed', family: 'sealed' }) : null;
  if (input.outerLimitC !== undefined) return sealed !== null && sealed.lowC < input.outerLimitC ? { c: sealed.lowC, source: sealed.source } : { c: input.outerLimitC, source: plainMechanics };
  const limits = [own, sealed].filter((limit) => limit !== null);
  const lowest = limits.reduce<(typeof limits)[number] | null>((least, limit) => (least === null || limit.lowC < least.lowC ? limit : least), null);
  if (lowest === null || own === null) throw invalidInput('outerLimitC', undefined, 'how hot the outer part may be made', `missing; no heating limit of ${outer.name} is at hand`);
  return { c: lowest.lowC, source: lowest.source };
}

interface Instead {
  readonly what: (typeof alternatives)[number];
  readonly innerC: number | null;
}

/** Chilling alone by dry ice, then heat with dry ice, then with liquid nitrogen; else a cold press. Never colder than a limit that was given. */
function insteadOf({ neededUm, ambientC, outerLimitC, isInnerLimitGiven, roomUm }: Plan): Instead {
  if (isInnerLimitGiven) return { what: 'press cold', innerC: null };
  if (roomUm(ambientC, dryIce.low) >= neededUm) return { what: 'chill', innerC: between(ambientC, dryIce.low, (c) => roomUm(ambientC, c) - neededUm) };
  const hottestC = Math.max(outerLimitC, ambientC);
  if (roomUm(hottestC, liquidNitrogen.low) >= neededUm) return { what: 'both', innerC: between(ambientC, liquidNitrogen.low, (c) => roomUm(hottestC, c) - neededUm) };
  return { what: 'press cold', innerC: null };
}

function findingsOf({ heat, atLimitUm, outerLimitC, innerLimitC, isInnerLimitGiven, ambientC, limitSource, neededUm }: Plan, input: JoiningTemperatureInput, instead: Instead | null): readonly Finding[] {
  if (heat !== null && heat.outerC === ambientC && heat.innerC === ambientC) return [deciding('joins-without-heat', 'good', { ambientC }, plainMechanics)];
  if (heat !== null && heat.innerC === ambientC) return [deciding('joins-by-heat', 'good', { outerC: heat.outerC, outerLimitC, neededUm }, limitSource)];
  if (heat !== null) return [deciding('joins-by-heat-and-cold', 'good', { outerC: heat.outerC, innerC: heat.innerC, neededUm }, limitSource)];
  const numbers = { outerLimitC, innerLimitC, gapUm: Math.abs(atLimitUm), clearanceUm: neededUm - input.interferenceUm };
  const short = deciding(atLimitUm > 0 ? 'joins-with-less-clearance' : 'heat-is-not-enough', atLimitUm > 0 ? 'care' : 'bad', numbers, limitSource);
  if (instead === null) return [short];
  if (isInnerLimitGiven) return [short, supporting('limits-leave-no-room', 'note', { outerLimitC, innerLimitC }, plainMechanics)];
  if (instead.what === 'press cold') return [short, supporting('instead-press-cold', 'note', {}, plainMechanics)];
  const innerC = instead.innerC ?? innerLimitC;
  if (instead.what === 'both') return [short, supporting('instead-heat-and-chill', 'note', { innerC, outerLimitC }, liquidNitrogen.source)];
  const [code, agent] = innerC >= freezer.low ? ['instead-chill-in-freezer', freezer] as const : ['instead-chill', dryIce] as const;
  return [short, supporting(code, 'note', { innerC, outerLimitC }, agent.source)];
}

function cautionsOf(input: JoiningTemperatureInput, outerC: number, innerC: number, instead: Instead | null): readonly string[] {
  const list = ['makers-manual-first'];
  if (outerC > input.ambientC || instead?.what === 'both') list.push('hot-parts-gloves', 'no-flame-for-heating', 'no-food-oven', 'solvents-washed-off', 'seals-out-before-heat', 'burnt-fluoro-rubber');
  list.push(...chillCautions(Math.min(innerC, instead?.innerC ?? innerC)));
  if (instead?.what === 'press cold') list.push('eye-protection', 'press-straight');
  else list.push('join-in-one-go');
  return list;
}

function working(plan: Plan, input: JoiningTemperatureInput, output: JoiningTemperatureOutput): readonly WorkingStep[] {
  const by = source('din-7190-2001', 'memory', 'joining temperature');
  const { jointDiameterMm: d, interferenceUm: U } = input;
  const outerAlpha = output.outerPartC >= referenceC ? plan.outer.expansionPerK.low : plan.outer.expansionPerK.high;
  const innerAlpha = output.innerPartC >= referenceC ? plan.inner.expansionPerK.high : plan.inner.expansionPerK.low;
  const scope = { d, alpha_o: outerAlpha, alpha_i: innerAlpha, t_o: output.outerPartC, t_i: output.innerPartC, t_0: referenceC };
  const limitOuterAlpha = plan.outerLimitC >= referenceC ? plan.outer.expansionPerK.low : plan.outer.expansionPerK.high;
  const limitInnerAlpha = plan.innerLimitC >= referenceC ? plan.inner.expansionPerK.high : plan.inner.expansionPerK.low;
  return [
    { kind: 'formula', symbol: 'g', meaning: 'interference and joining clearance together', formula: 'U + S', scope: { U, S: plan.clearanceUm }, value: plan.neededUm, unit: 'µm', source: by },
    { kind: 'formula', symbol: 'r', meaning: 'room that the two temperatures make, at the least', formula: '1000 * d * (alpha_o * (t_o - t_0) - alpha_i * (t_i - t_0))', scope, value: plan.roomUm(output.outerPartC, output.innerPartC), unit: 'µm', source: by },
    {
      kind: 'formula',
      symbol: 'c',
      meaning: 'clearance with both parts at their limits',
      formula: '1000 * d * (alpha_o * (t_o - t_0) - alpha_i * (t_i - t_0)) - U',
      scope: { d, alpha_o: limitOuterAlpha, alpha_i: limitInnerAlpha, t_o: plan.outerLimitC, t_i: plan.innerLimitC, t_0: referenceC, U },
      value: plan.atLimitUm,
      unit: 'µm',
      source: by,
    },
  ];
}
