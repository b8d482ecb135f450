/**
 * The rooms whose code is changed on purpose, and the tests that must notice: those beside the sources of the room,
 * and these from `tests/`, of which the slowest are left out (a survivor has to stand them all). Tables are data, proven by laws of their own, and are left alone; so are words.
 */
export const rooms = {
  tolerance: ['laws/iso-286-fits', 'laws/iso-286-and-inch-fits', 'laws/choose-fit-laws', 'laws/fit-at-temperature-laws', 'recomputed/iso-286-formulas', 'recomputed/heat'],
  quantity: ['laws/quantity-laws', 'recomputed/units'],
  measure: ['laws/measured-size-laws', 'laws/conformity-laws', 'laws/fit-distribution-laws', 'published/grubbs-1969', 'published/iso-14253-1', 'published/jcgm-*', 'published/abramowitz-*'],
  seal: ['laws/lip-laws', 'laws/seal-*', 'laws/shelf-laws', 'laws/situation-laws', 'published/common-practice-seal', 'published/seal-friction', 'recomputed/lip'],
  joint: ['laws/joint-laws', 'laws/joining-laws', 'published/press-fits'],
  bearing: ['laws/bearing-*', 'published/bearing-handbooks', 'published/iso-281', 'recomputed/bearing-life'],
  handwork: ['laws/handwork-laws', 'laws/leak-laws', 'laws/bearing-driver-laws'],
};

/** Single tests that take a second or more: a survivor would have to stand them all. */
export const tooSlow = ['seeded picks lie within 4 standard errors', 'mean and variance of a convolution add', 'normal draws follow the normal distribution', 'a larger bore never has more repairs', 'meets a full solution by mathjs', 'by halving an interval of warmer and warmer fits', 'inch fits, every class and range', 'the guarantee of a load holds', 'a load, a press and a hub', 'a wider window never loses', 'every fit listed keeps'];
