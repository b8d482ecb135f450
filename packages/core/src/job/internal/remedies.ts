import { commonPractice, supporting, type Finding } from '../../result/index.js';
import { boreRepair, lipMaterialsFor, wearTrackRemedies, type SealCheckOutput, type Situation } from '../../seal/index.js';
import { attempt, type Attempted } from './attempt.js';

/** How many remedies of one kind a sheet names: the best ones. */
const namedCount = 2;

interface Remedy {
  readonly kind: string;
  readonly verdict: string;
  readonly findings: readonly Finding[];
}

/** What would help where something is wrong: another rubber, a repair of the bore, a way off the worn track. Notes beside the verdict. */
export function remediesOf(situation: Situation, check: SealCheckOutput): readonly Finding[] {
  const bad = new Set(check.findings.filter(({ severity }) => severity === 'bad').map(({ code }) => code));
  const isLimited = check.findings.some(({ code }) => code === 'fluid-limited');
  return [
    ...(['fluid-attacks-rubber', 'temperature-over-working-limit', 'lip-speed-over', 'lip-runs-dry'].some((code) => bad.has(code)) ? otherRubbers(situation, ['suits', 'suits with care']) : isLimited ? otherRubbers(situation, ['suits']) : []),
    ...(bad.has('outside-may-be-loose') || bad.has('outside-is-loose') || bad.has('case-loose-hot') ? best(attempt(() => boreRepair.compute(situation).options)) : []),
    ...(situation.wearTrack?.catchesNail === true ? best(attempt(() => wearTrackRemedies.compute(situation).options)) : []),
  ];
}

function best(tried: Attempted<readonly Remedy[]>): readonly Finding[] {
  if ('error' in tried) return [];
  return tried.value
    .filter(({ verdict }) => verdict === 'suits' || verdict === 'suits with care')
    .slice(0, namedCount)
    .flatMap(({ findings }) => findings.slice(0, 1).map(({ code, parameters, source }) => supporting(code, 'note', parameters, source)));
}

/** Where the one given serves for a time, only those that serve for good are worth a word. */
function otherRubbers(situation: Situation, verdicts: readonly string[]): readonly Finding[] {
  const tried = attempt(() => lipMaterialsFor.compute(situation).rubbers.filter(({ verdict, isTheOneGiven }) => !isTheOneGiven && verdicts.includes(verdict)));
  if ('error' in tried) return [];
  const by = tried.value[0]?.findings[0]?.source ?? commonPractice;
  if (tried.value.length === 0 && !verdicts.includes('suits with care')) return [];
  return [tried.value.length === 0 ? supporting('no-rubber-would-do', 'note', {}, by) : supporting('rubbers-that-would-do', 'note', { rubbers: tried.value.slice(0, 3).map(({ lipMaterial }) => lipMaterial).join(', ') }, by)];
}
