/** What may be behind a leak after fitting, the most usual first. */
export const suspects = [
  'lip-hurt-on-the-way-in', 'lip-turned-over', 'spring-off', 'lip-wrong-way-round', 'lip-for-other-rotation', 'track-worn', 'track-scratched', 'track-with-lead', 'sleeve-not-tight',
  'rim-loose', 'rim-scored', 'seal-crooked', 'level-too-high', 'breather-blocked', 'joint-beside', 'wall-porous',
] as const;
export type Suspect = (typeof suspects)[number];

const ofLip: readonly Suspect[] = ['lip-hurt-on-the-way-in', 'lip-turned-over', 'spring-off', 'lip-wrong-way-round', 'lip-for-other-rotation', 'track-worn', 'track-scratched', 'track-with-lead', 'sleeve-not-tight', 'seal-crooked'];
const ofRim: readonly Suspect[] = ['rim-loose', 'rim-scored'];
const elsewhere: readonly Suspect[] = ['joint-beside', 'wall-porous'];
const runningOnly: readonly Suspect[] = ['lip-for-other-rotation', 'track-with-lead'];

/** What one outcome of a check says: who is out of it, and who is found out. */
interface Outcome {
  readonly clears: readonly Suspect[];
  readonly convicts: readonly Suspect[];
}

const says = (clears: readonly Suspect[], convicts: readonly Suspect[] = []): Outcome => ({ clears, convicts });

/** Checks in the order of the work: what costs nothing first, what spoils the seal last. */
const leakChecks = {
  'oil-level': { right: says(['level-too-high']), 'too high': says([], ['level-too-high']) },
  'breather-open': { open: says(['breather-blocked']), blocked: says([], ['breather-blocked']) },
  'clean-dust-and-run': {
    'at the shaft': says([...ofRim, ...elsewhere]),
    'at the rim': says([...ofLip, ...elsewhere]),
    'at a joint': says([...ofLip, ...ofRim, 'wall-porous'], ['joint-beside']),
    'out of the wall': says([...ofLip, ...ofRim, 'joint-beside'], ['wall-porous']),
  },
  'standing-or-running': { 'only running': says([]), 'standing too': says([...runningOnly, 'breather-blocked']) },
  'which-way-the-lip-faces': { 'toward the fluid': says(['lip-wrong-way-round']), 'away from it': says([], ['lip-wrong-way-round']) },
  'mark-of-rotation': { 'none, or right': says(['lip-for-other-rotation']), 'the other way': says([], ['lip-for-other-rotation']) },
  'depth-at-four-points': { even: says(['seal-crooked']), uneven: says([], ['seal-crooked']) },
  'repair-sleeve': { 'none on the shaft': says(['sleeve-not-tight']), 'sits still, dry at its edge': says(['sleeve-not-tight']), 'has turned, or wet from beneath': says([], ['sleeve-not-tight']) },
  'thread-on-turning-shaft': { 'stays where it is': says(['track-with-lead']), wanders: says([], ['track-with-lead']) },
  'soap-under-pressure': { 'bubbles at the shaft': says([...ofRim, ...elsewhere]), 'bubbles at the rim': says([...ofLip, ...elsewhere]), 'bubbles at a joint': says([...ofLip, ...ofRim], ['joint-beside']), 'no bubbles': says(elsewhere) },
  'seal-out-look-at-rim': { 'scored along': says(['rim-loose'], ['rim-scored']), 'shiny, never tight': says(['rim-scored'], ['rim-loose']), 'even all round': says(ofRim) },
  'seal-out-look-at-lip': { 'cut or nicked': says(['lip-turned-over'], ['lip-hurt-on-the-way-in']), 'turned over': says(['lip-hurt-on-the-way-in'], ['lip-turned-over']), 'spring off': says([], ['spring-off']), sound: says(['lip-hurt-on-the-way-in', 'lip-turned-over', 'spring-off']) },
  'nail-across-the-track': { catches: says([], ['track-worn']), smooth: says(['track-worn']) },
  'look-for-scratches': { 'along the shaft': says([], ['track-scratched']), 'round it only': says([]), none: says(['track-scratched']) },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Outcome>>>>;

export type LeakCheckName = keyof typeof leakChecks;
export const leakCheckNames = Object.keys(leakChecks) as LeakCheckName[];

/** Outcomes of one check by name, for lookups by text. */
export function outcomesOf(check: LeakCheckName): Readonly<Record<string, Outcome>> {
  return leakChecks[check];
}
