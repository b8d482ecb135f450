import type { Catalogue } from '@seatwright/core/wording';

/** What a field needs of a catalogue: words for values, units and errors; not its sentences. */
export type NameCatalogue = Pick<Catalogue, 'decimalMark' | 'units' | 'dayForm' | 'values' | 'names'>;

/** Everything as the tables and core say it: in English. */
export const plainNames: NameCatalogue = { decimalMark: '.', units: {}, dayForm: '{year}-{month}-{day}', values: {}, names: {} };
