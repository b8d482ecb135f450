import type { SameWords } from '../catalogue.js';
import type { fitsWords } from '../english/fits.js';

/** German sentences of the room's findings, assumptions and gaps, by code. */
export const germanFitsWords: SameWords<typeof fitsWords> = {
  notChecked: {
    'parts-press-on-each-other': 'Was die Teile einander antun: Ihr Wachsen ist als ungehindert angenommen.',
  },
  assumed: {
    'expansion-of-hole': 'Ausdehnungskoeffizient des Teils mit der Bohrung',
  },
};
