/** Sentences of the room's findings, assumptions and gaps, by code. */
export const jointWords = {
  findings: {},
  notChecked: {},
  assumed: {},
  effects: {},
  readings: {},
};
