import { expect, test } from 'vitest';
import { refused } from '../../../../tests/laws/internal/refused.js';
import { leakSearch } from './leak-search.js';

const run = (answers: readonly (readonly [check: string, outcome: string])[] = [], more: object = {}) => leakSearch.run({ answers: answers.map(([check, outcome]) => ({ check, outcome })), ...more });
const found = (output: ReturnType<typeof run>) => output.found.map(({ code, severity }) => `${code} ${severity}`);
const suspected = (output: ReturnType<typeof run>) => output.suspects.map(({ code }) => code.replace('suspect-', ''));
const next = (output: ReturnType<typeof run>) => output.nextChecks.map(({ check }) => check);

test('at first everybody is suspected, and every check may tell something; a crankcase has no level and no breather', () => {
  expect(suspected(run())).toHaveLength(16);
  expect(found(run())).toEqual([]);
  expect(next(run())).toHaveLength(14);
  expect(run().suspects.every(({ severity }) => severity === 'note')).toBe(true);
  const twoStroke = run([], { isTwoStrokeCrankcase: true });
  expect(suspected(run()).filter((one) => !suspected(twoStroke).includes(one))).toEqual(['level-too-high', 'breather-blocked']);
  expect(next(run()).filter((one) => !next(twoStroke).includes(one))).toEqual(['oil-level', 'breather-open']);
  expect(leakSearch.run({})).toEqual(run());
  expect(run([], { isTwoStrokeCrankcase: false })).toEqual(run());
  expect(run().notChecked).toEqual(['leak-with-two-causes', 'sweat-or-leak']);
});

test('who is cleared is out, who is found is told, and a check that can tell no more is left out', () => {
  const atRim = run([['clean-dust-and-run', 'at the rim']]);
  expect(suspected(atRim)).toEqual(['rim-loose', 'rim-scored', 'level-too-high', 'breather-blocked']);
  expect(next(atRim)).toEqual(['oil-level', 'breather-open', 'standing-or-running', 'soap-under-pressure', 'seal-out-look-at-rim']);
  const scored = run([['clean-dust-and-run', 'at the rim'], ['seal-out-look-at-rim', 'scored along']]);
  expect(found(scored)).toEqual(['suspect-rim-scored care']);
  expect(suspected(scored)).toEqual(['level-too-high', 'breather-blocked']);
});

test('what each outcome would say is said of those still suspected alone', () => {
  const of = (check: string, output: ReturnType<typeof run>) => output.nextChecks.find((one) => one.check === check)?.outcomes;
  const rim = run([['clean-dust-and-run', 'at the rim'], ['oil-level', 'right'], ['breather-open', 'open']]);
  expect(of('seal-out-look-at-rim', rim)).toEqual([
    { outcome: 'scored along', finds: ['rim-scored'], clears: ['rim-loose'] },
    { outcome: 'shiny, never tight', finds: ['rim-loose'], clears: ['rim-scored'] },
    { outcome: 'even all round', finds: [], clears: ['rim-loose', 'rim-scored'] },
  ]);
  expect(of('soap-under-pressure', rim)).toEqual([
    { outcome: 'bubbles at the shaft', finds: [], clears: ['rim-loose', 'rim-scored'] },
    { outcome: 'bubbles at the rim', finds: [], clears: [] },
    { outcome: 'bubbles at a joint', finds: [], clears: ['rim-loose', 'rim-scored'] },
    { outcome: 'no bubbles', finds: [], clears: [] },
  ]);
});

test('the step of a check has its cautions', () => {
  const cautions = Object.fromEntries(run().nextChecks.map(({ check, step }) => [check, [step.code, ...step.cautions]]));
  expect(cautions).toMatchObject({
    'oil-level': ['leak-oil-level'],
    'clean-dust-and-run': ['leak-clean-dust-and-run', 'spinning-parts', 'hot-parts'],
    'thread-on-turning-shaft': ['leak-thread-on-turning-shaft', 'spinning-parts'],
    'soap-under-pressure': ['leak-soap-under-pressure', 'test-pressure-low', 'blanks-fly'],
    'seal-out-look-at-rim': ['leak-seal-out-look-at-rim', 'never-lever-on-shaft-or-bore', 'never-refit-old-seal'],
  });
});

test('the same answer twice is one; two that differ, one that is none, and answers that clear everybody are refused', () => {
  expect(run([['oil-level', 'right'], ['oil-level', 'right']])).toEqual(run([['oil-level', 'right']]));
  expect(refused(() => run([['oil-level', 'right'], ['oil-level', 'too high']]))).toMatchObject({ code: 'contradiction', path: 'answers[1]', message: expect.stringContaining('oil-level was answered twice') as string });
  expect(refused(() => run([['oil-level', 'low']]))).toMatchObject({ code: 'invalid-input', path: 'answers[0].outcome', received: 'low', allowed: 'one of right; too high' });
  expect(refused(() => run([['oil-level', 'right'], ['breather-open', 'constructor']]))).toMatchObject({ code: 'invalid-input', path: 'answers[1].outcome' });
  const everybody = [['oil-level', 'right'], ['breather-open', 'open'], ['clean-dust-and-run', 'at the rim'], ['seal-out-look-at-rim', 'even all round']] as const;
  expect(refused(() => run(everybody))).toMatchObject({ code: 'contradiction', path: 'answers' });
  // With one found out it is no contradiction: the others are cleared all the same.
  const one = run([['oil-level', 'too high'], ...everybody.slice(1)]);
  expect([found(one), suspected(one), next(one)]).toEqual([['suspect-level-too-high care'], [], []]);
});
