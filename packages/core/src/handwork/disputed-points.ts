import * as z from 'zod/mini';
import { candourFields, choiceField, commonPractice, defineCalculation, findingField, supporting } from '../result/index.js';
import { disputedPoints as all, pointNames, weights } from './internal/disputed-points.js';

const pointField = choiceField(pointNames as [string, ...string[]], { label: 'what is argued about' });

const outputField = z.strictObject({
  points: z.readonly(
    z.array(
      z.strictObject({
        point: pointField,
        answer: findingField,
        evidence: z.readonly(z.array(z.strictObject({ weight: choiceField(weights, { label: 'what kind of evidence' }), finding: findingField }))),
      }),
    ),
  ),
  ...candourFields,
});

export type DisputedPointsOutput = z.infer<typeof outputField>;

/** What the trade argues about, answered with the evidence for it, the weightiest first, and without more certainty than there is.
 * @returns each point with its answer and the evidence behind it, each piece with its source and how it is held
 * @source each piece of evidence names its own
 * @example disputedPoints.run({ point: 'sealant' }).points[0].evidence[0].weight // 'handbook'
 */
export const disputedPoints = defineCalculation({
  name: 'disputed-points',
  summary: 'What the trade argues about, answered with the evidence, the weightiest first',
  input: z.strictObject({ point: z.optional(pointField) }),
  output: outputField,
  compute({ point: wanted }): DisputedPointsOutput {
    return {
      points: all
        .filter(({ point }) => wanted === undefined || point === wanted)
        .map(({ point, evidence }) => ({ point, answer: supporting(`${point}-answer`, 'note', {}, evidence[0]?.source ?? commonPractice), evidence: evidence.map(({ code, weight, source }) => ({ weight, finding: supporting(code, 'note', {}, source) })) })),
      assumptions: [],
      notChecked: ['makers-drawing-first'],
    };
  },
  explain: () => [],
});
