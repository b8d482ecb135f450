/** Sentences of the room's findings, assumptions and gaps, by code. */
export const fitsWords = {
  notChecked: {
    'parts-press-on-each-other': 'What the parts do to each other: their growth is taken as free.',
  },
  assumed: {
    'expansion-of-hole': 'Expansion coefficient of the part with the hole',
  },
} as const;
