/**
 * Stands in for the sentences of calculations that the page does not make: the search for a leak, and whether a measured part keeps to its limits.
 * `tests/package/page-size.test.ts` proves that nothing in the page says any of them.
 */
const none = { findings: {}, steps: {}, notChecked: {}, assumed: {}, effects: {}, readings: {}, values: {} };

export { none as germanLeakWords, none as germanMeasuresWords, none as leakWords, none as measuresWords };
