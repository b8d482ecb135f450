import * as z from 'zod/mini';
import { candourFields, choiceField, commonPractice, contradiction, defineCalculation, findingField, invalidInput, planStep, planStepField, supporting, textField } from '../result/index.js';
import { leakCheckNames, outcomesOf, suspects, type LeakCheckName, type Suspect } from './internal/leak-checks.js';

const inputField = z.strictObject({
  answers: z.optional(
    z.array(z.strictObject({ check: choiceField(leakCheckNames as [LeakCheckName, ...LeakCheckName[]], { label: 'check that was made' }), outcome: textField({ label: 'what was found', longest: 60 }) })).check(z.maxLength(50)),
  ),
  isTwoStrokeCrankcase: z.optional(z.boolean().check(z.meta({ label: 'a two-stroke crankcase, without an oil level', unit: '' }))),
});

const suspectField = choiceField(suspects, { label: 'what may be behind it' });

/** What one outcome would say of those still suspected. */
const outcomeField = z.strictObject({
  outcome: z.string().check(z.meta({ label: 'what may be found', unit: '' })),
  finds: z.readonly(z.array(suspectField)),
  clears: z.readonly(z.array(suspectField)),
});

const outputField = z.strictObject({
  found: z.readonly(z.array(findingField)),
  suspects: z.readonly(z.array(findingField)),
  nextChecks: z.readonly(z.array(z.strictObject({ check: choiceField(leakCheckNames as [LeakCheckName, ...LeakCheckName[]], { label: 'check to make' }), step: planStepField, outcomes: z.readonly(z.array(outcomeField)) }))),
  ...candourFields,
});

export type LeakSearchInput = z.infer<typeof inputField>;
export type LeakSearchOutput = z.infer<typeof outputField>;

/** A leak after fitting: which check to make next, and who is still suspected, from what was found so far.
 * Checks come in the order of the work: what costs nothing first, what takes the seal out last. One that can no longer tell anything is
 * left out. Being found out does not clear the others: a leak may have two causes.
 * @returns who is found out, who is still suspected, and the next checks with what may be found
 * @throws CalculationError invalid-input (no such outcome) | contradiction (one check with two outcomes, or everybody cleared)
 * @source common-practice
 * @example leakSearch.run({ answers: [{ check: 'clean-dust-and-run', outcome: 'at the rim' }] }).suspects[0].code // 'suspect-rim-loose'
 */
export const leakSearch = defineCalculation({
  name: 'leak-search',
  summary: 'A leak after fitting: which check to make next, and what is still suspected',
  input: inputField,
  output: outputField,
  compute({ answers = [], isTwoStrokeCrankcase = false }): LeakSearchOutput {
    const cleared = new Set<Suspect>(isTwoStrokeCrankcase ? ['level-too-high', 'breather-blocked'] : []);
    const convicted = new Set<Suspect>();
    const made = new Map<LeakCheckName, string>();
    answers.forEach(({ check, outcome }, i) => {
      const outcomes = outcomesOf(check);
      const told = Object.hasOwn(outcomes, outcome) ? outcomes[outcome] : undefined;
      if (told === undefined) throw invalidInput(`answers[${i}].outcome`, outcome, `one of ${Object.keys(outcomes).join('; ')}`);
      if (made.has(check) && made.get(check) !== outcome) throw contradiction([`answers[${i}]`], `${check} was answered twice, and differently`);
      made.set(check, outcome);
      told.clears.forEach((suspect) => cleared.add(suspect));
      told.convicts.forEach((suspect) => convicted.add(suspect));
    });
    const open = suspects.filter((suspect) => !cleared.has(suspect) && !convicted.has(suspect));
    if (open.length === 0 && convicted.size === 0) throw contradiction(['answers'], 'these outcomes clear everything that makes a seal leak; look again where the fluid comes from');
    const nextChecks = leakCheckNames.filter((check) => !made.has(check) && Object.values(outcomesOf(check)).some(({ clears, convicts }) => [...clears, ...convicts].some((suspect) => open.includes(suspect))));
    return {
      found: suspects.filter((suspect) => convicted.has(suspect)).map((suspect) => supporting(`suspect-${suspect}`, 'care', {}, commonPractice)),
      suspects: open.map((suspect) => supporting(`suspect-${suspect}`, 'note', {}, commonPractice)),
      nextChecks: nextChecks.map((check) => ({ check, step: planStep(`leak-${check}`, {}, commonPractice, cautions[check] ?? []), outcomes: meaningsOf(check, open) })),
      assumptions: [],
      notChecked: ['leak-with-two-causes', 'sweat-or-leak'],
    };
  },
  explain: () => [],
});

function meaningsOf(check: LeakCheckName, open: readonly Suspect[]): z.infer<typeof outcomeField>[] {
  return Object.entries(outcomesOf(check)).map(([outcome, { clears, convicts }]) => ({ outcome, finds: convicts.filter((suspect) => open.includes(suspect)), clears: clears.filter((suspect) => open.includes(suspect)) }));
}

const cautions: Readonly<Partial<Record<LeakCheckName, readonly string[]>>> = {
  'clean-dust-and-run': ['spinning-parts', 'hot-parts'],
  'thread-on-turning-shaft': ['spinning-parts'],
  'soap-under-pressure': ['test-pressure-low', 'blanks-fly'],
  'seal-out-look-at-rim': ['never-lever-on-shaft-or-bore', 'never-refit-old-seal'],
};
