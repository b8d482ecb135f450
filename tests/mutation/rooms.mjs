/**
 * The rooms whose code is changed on purpose, and the tests that must notice: those beside the sources of the room,
 * and these from `tests/`. Tables are data, proven by laws of their own, and are left alone; so are words.
 */
export const rooms = {
  tolerance: ['laws/iso-286-fits', 'laws/iso-286-and-inch-fits', 'laws/fit-at-temperature-laws', 'recomputed/iso-286-*', 'recomputed/inch-fits', 'recomputed/heat'],
  quantity: ['laws/quantity-laws', 'recomputed/units'],
  measure: ['laws/measured-size-laws', 'laws/conformity-laws', 'laws/fit-distribution-laws', 'published/grubbs-1969', 'published/iso-14253-1', 'published/jcgm-*', 'published/abramowitz-*', 'recomputed/measuring', 'recomputed/fit-distribution'],
  seal: ['laws/lip-laws', 'laws/seal-*', 'laws/shelf-laws', 'laws/situation-laws', 'published/common-practice-seal', 'published/seal-friction', 'recomputed/lip', 'recomputed/seal-*'],
  joint: ['laws/joint-laws', 'laws/joining-laws', 'laws/choose-fit-laws', 'published/press-fits', 'recomputed/two-rings', 'recomputed/rings', 'recomputed/heat'],
  bearing: ['laws/bearing-*', 'published/bearing-handbooks', 'published/iso-281', 'recomputed/bearing-*'],
  handwork: ['laws/handwork-laws', 'laws/leak-laws', 'laws/bearing-driver-laws', 'recomputed/handwork'],
};
