/**
 * Stands in for the sentences of calculations that the page does not make: the test that a housing holds air, the rod that draws
 * a part in, the search for a leak, whether a measured part keeps to its limits, listed sizes, the heat of a lip, and how a press joint comes apart.
 * `tests/package/page-size.test.ts` proves that nothing in the page says any of them.
 */
const none = {};

export {
  none as germanHoldAndDrawWords, none as germanLeakWords, none as germanMeasuresWords, none as germanSizesAndHeatWords, none as germanTakingApartWords,
  none as holdAndDrawWords, none as leakWords, none as measuresWords, none as sizesAndHeatWords, none as takingApartWords,
};
