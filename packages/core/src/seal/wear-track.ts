import * as z from 'zod/mini';
import { candourFields, deciding, defineCalculation, findingField, invalidInput, outputNumber, plainGeometry, source, verdictField, verdictOf, verdicts, type Finding, type WorkingStep } from '../result/index.js';
import { movedOptions, regrind, sleeveWall, thinSleeve, trackOptionField, trackRoughness, turnedSleeve, trackOption, type TrackOption, type TrackPlace } from './internal/track-options.js';
import { trackMoveSource, trackMoveWantedMm } from './internal/track-move.js';
import { situationField, type Situation } from './situation-field.js';
import { sizesOf } from './sizes-of.js';

const outputField = z.strictObject({
  verdict: verdictField,
  moveWantedMm: outputNumber('how far the lip must move to leave the track', 'mm'),
  findings: z.readonly(z.array(findingField)),
  options: z.readonly(z.array(trackOptionField)),
  refused: z.readonly(z.array(z.string().check(z.meta({ label: 'what is not a remedy', unit: '' })))),
  ...candourFields,
});

export type WearTrackOutput = z.infer<typeof outputField>;

const nail = source('seal-handbook-reprints', 'page', 'worn track');

/** What can be done about a lip track worn into the shaft: leave it, move the lip, sleeve it, or grind it down.
 * No depth of groove at which a lip fails is published: the fingernail decides. The old lip ran in the groove, so a new seal of the same
 * design moves its lip by as much as its face. Remedies are compared, cheapest first among those that suit.
 * @returns how far the lip must move [mm]; options with their numbers, drawing data and findings; what is refused
 * @throws CalculationError invalid-input (no wear track, or none of the shaft)
 * @source seal-handbook-reprints, seal-trade-pages, us-army-tm (held as: page); sleeves plain-mechanics; sizes iso-6194-1-2007 (held as: memory)
 * @example wearTrackRemedies.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, bore: { depthMm: 10, innerEnd: 'open' }, oldDepthMm: [0], clearBehindMm: 4, wearTrack: { catchesNail: true, widthMm: 0.6 } }).options[0].kind // 'lip further in'
 */
export const wearTrackRemedies = defineCalculation({
  name: 'wear-track',
  summary: 'What can be done about a lip track worn into the shaft: move the lip, sleeve it, or grind it down',
  input: situationField,
  output: outputField,
  compute(situation: Situation): WearTrackOutput {
    const place = placeOf(situation);
    const catches = situation.wearTrack?.catchesNail;
    const leave = trackOption('leave it', [trackFinding(catches)]);
    const remedies = [...movedOptions(place), thinSleeve(place), turnedSleeve(place), regrind(place)];
    const options = [leave, ...remedies].map((option, i) => ({ option, i })).toSorted((a, b) => verdicts.indexOf(a.option.verdict) - verdicts.indexOf(b.option.verdict) || a.i - b.i).map(({ option }) => option);
    return {
      verdict: verdictOf([trackFinding(catches)]),
      moveWantedMm: place.wantedMoveMm,
      findings: [trackFinding(catches)],
      options,
      refused: ['filed-or-emeried-shaft', 'sealant-in-the-track', 'new-lip-in-old-groove'],
      assumptions: assumptionsOf(options),
      notChecked: ['old-seal-same-design', 'shaft-can-be-ground-here'],
    };
  },
  explain(situation: Situation, { moveWantedMm, options }): readonly WorkingStep[] {
    const place = placeOf(situation);
    const roughness = trackRoughness();
    return [
      { kind: 'choice', symbol: 'm', meaning: 'how far the lip must move', value: moveWantedMm, unit: 'mm', why: 'the width of the groove, and no less than about a millimetre', source: trackMoveSource },
      ...options.flatMap(({ newDepthMm, moveMm }, i): readonly WorkingStep[] => (newDepthMm === null || moveMm === null || place.oldDepthMm === null ? [] : [{ kind: 'formula', symbol: `t_${i + 1}`, meaning: 'depth of the outer face of the new seal', formula: 't + m', scope: { t: place.oldDepthMm, m: moveMm }, value: newDepthMm, unit: 'mm', source: plainGeometry }])),
      ...(roughness.highUm === null ? [] : [{ kind: 'lookup', symbol: 'Ra', meaning: 'roughness of a new track, at most', table: 'surface-limits', row: 'din-3760 shaft-ra', column: 'upperUm', value: roughness.highUm, unit: 'µm', source: roughness.source } as const]),
    ];
  },
});

function placeOf(situation: Situation): TrackPlace {
  if (situation.wearTrack === undefined) throw invalidInput('wearTrack', undefined, 'what is known of the old lip track', 'missing');
  const { oldDepthMm, seal } = situation;
  return {
    situation,
    shaftMm: sizesOf(situation).shaft?.meanMm ?? seal.shaftMm,
    wantedMoveMm: trackMoveWantedMm(situation.wearTrack),
    oldDepthMm: oldDepthMm === undefined ? null : oldDepthMm.reduce((sum, depth) => sum + depth, 0) / oldDepthMm.length,
  };
}

function trackFinding(catchesNail: boolean | undefined): Finding {
  if (catchesNail === undefined) return deciding('track-not-felt', 'unknown', {}, nail, 'wearTrack.catchesNail');
  return catchesNail ? deciding('track-must-be-left', 'bad', {}, nail) : deciding('track-may-stay', 'good', {}, nail);
}

function assumptionsOf(options: readonly TrackOption[]): WearTrackOutput['assumptions'] {
  const thin = options.find(({ kind }) => kind === 'thin sleeve');
  if (thin?.newShaftLowerMm == null || thin.newShaftUpperMm === null) return [];
  return [{ name: 'thin-sleeve-wall', value: sleeveWall.low, upToValue: sleeveWall.high, unit: 'mm', source: sleeveWall.source, effect: 'lip-on-sleeve' }];
}
