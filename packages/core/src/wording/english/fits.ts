/** Sentences of the room's findings, assumptions and gaps, by code. */
export const fitsWords = {
  findings: {},
  notChecked: {},
  assumed: {},
  effects: {},
  readings: {},
};
