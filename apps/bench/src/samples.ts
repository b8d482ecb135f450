import type { BenchWords } from './words/index.js';

/** A sample workshop file that comes with the page; its title stands among the words. */
export type Sample = keyof BenchWords['samples'];

export const samples: readonly Sample[] = ['bilge-pump', 'outboard-two-stroke', 'winch-gearbox', 'old-inch-pump', 'missing-readings', 'bearing-outboard-crank', 'bearing-winch-drum', 'does-not-suit'];

/** Where the sample lies, beside the page. */
export function sampleAddress(sample: Sample): string {
  return `./samples/${sample}.json`;
}
