/** Sentences of the room's findings, assumptions and gaps, by code. */
export const measuresWords = {
  findings: {},
  notChecked: {},
  assumed: {},
  effects: {},
  readings: {},
};
