import { commonPractice, source, type SourceReference } from '../../result/index.js';

/** How much a piece of evidence weighs, from most to least. */
export const weights = ['published standard', 'handbook', 'maker or army manual', 'trade article', 'common practice', 'memory'] as const;
type Weight = (typeof weights)[number];

interface Evidence {
  readonly code: string;
  readonly weight: Weight;
  readonly source: SourceReference;
}

export interface DisputedPoint {
  readonly point: string;
  readonly evidence: readonly Evidence[];
}

const manuals = source('workshop-manuals-1995', 'page', 'general fitting of oil seals');
const army = source('us-army-tm', 'page', 'bearing and seal fitting');
const din = (clause: string) => source('din-3760-1996', 'page', clause);
const rma = (clause: string) => source('rma-os-1', 'page', clause);
const trade = source('seal-trade-pages', 'page', 'trade pages');
const memory = source('general-memory', 'memory', 'trade knowledge');

const point = (name: string, ...evidence: readonly (readonly [string, Weight, SourceReference])[]): DisputedPoint => ({
  point: name,
  evidence: evidence.map(([code, weight, by]) => ({ code: `${name}-${code}`, weight, source: by })).toSorted((a, b) => weights.indexOf(a.weight) - weights.indexOf(b.weight)),
});

/** What the trade argues about, each with its evidence, the weightiest first. */
export const disputedPoints = [
  point('lip-faces', ['fluid-side', 'maker or army manual', manuals], ['old-mark', 'common practice', commonPractice], ['purged-hub', 'memory', memory], ['two-stroke', 'common practice', source('engine-service-practice', 'practice')]),
  point('several-seals', ['hole-between', 'common practice', commonPractice], ['grease-between', 'maker or army manual', manuals], ['back-to-back', 'common practice', commonPractice]),
  point('helix-ribs', ['seen-from-air', 'memory', memory], ['one-way-only', 'memory', memory]),
  point('polish', ['ra-window', 'published standard', din('shaft roughness 0.2 to 0.8 µm')], ['no-lead', 'handbook', rma('lead')], ['grit-is-no-ra', 'memory', memory], ['too-smooth', 'handbook', rma('shaft roughness not below 0.2 µm')]),
  point('scratch', ['along-leaks', 'common practice', commonPractice], ['round-seldom', 'common practice', commonPractice], ['nail', 'trade article', trade]),
  point('sealant', ['no-hold', 'common practice', commonPractice], ['rough-bore', 'handbook', rma('bore roughness')], ['none-on-rubber', 'memory', memory]),
  point('thinner-shaft', ['h11', 'published standard', din('shaft h11')], ['sleeve-instead', 'maker or army manual', army], ['refused', 'common practice', commonPractice]),
] as const satisfies readonly DisputedPoint[];

export const pointNames = disputedPoints.map(({ point: name }) => name);
