/**
 * The rooms whose code is changed on purpose, and the tests that must notice: those beside the sources of the room, the laws that are
 * about it, and what goes through all rooms (`throughAll`). Tables are data, proven by laws of their own, and are left alone; so are words.
 */
export const rooms = {
  tolerance: ['laws/iso-286-*', 'laws/fit-at-temperature-laws'],
  quantity: ['laws/quantity-laws'],
  measure: ['laws/measured-size-laws', 'laws/conformity-laws', 'laws/fit-distribution-laws'],
  seal: ['laws/lip-laws', 'laws/seal-*', 'laws/shelf-laws', 'laws/situation-laws'],
  joint: ['laws/joint-laws', 'laws/joining-laws', 'laws/choose-fit-laws'],
  bearing: ['laws/bearing-*'],
  handwork: ['laws/handwork-laws', 'laws/leak-laws', 'laws/bearing-driver-laws'],
};

/** Published values, recomputation, examples, whole sheets as reviewed, and positions with their verdicts. */
export const throughAll = ['published/**/*', 'recomputed/*', 'laws/examples', 'laws/scale-laws', 'golden/*', 'positions/*'];

/** [ms] A survivor has to stand every test that comes by it: single tests that take longer than this are left out. */
export const longestMs = Number(process.env.LONGEST ?? 700);

/** [ms] What no test has noticed after so long counts as survived, though the slow tests that are left might: some changes are come by in a thousand tests. */
export const longestInAllMs = Number(process.env.IN_ALL ?? 8000);

/** Reads the sources themselves, which look otherwise here. */
export const readsSources = ['every public function and every calculation has an example'];
