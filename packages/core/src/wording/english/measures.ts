/** Sentences of the room's findings, assumptions and gaps, by code. */
export const measuresWords = {
  findings: {},
  notChecked: {
    'parts-picked-independently': 'Whether holes and shafts are picked independently: parts sorted into pairs fit better than this.',
  },
  assumed: {
    'spread-of-hole': 'How holes spread between their limits',
    'spread-of-shaft': 'How shafts spread between their limits',
    'deviations-to-limit-of-hole': 'Standard deviations of holes from the peak to the nearer limit',
    'deviations-to-limit-of-shaft': 'Standard deviations of shafts from the peak to the nearer limit',
  },
  effects: {
    'spread-of-fit': 'how often the fit is loose or too tight',
  },
  readings: {},
};
