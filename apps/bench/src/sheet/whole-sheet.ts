// Bearings, joints, repairs and the working: a chunk of its own, fetched once a sheet stands.
export { jobSheet, jobSheetInSteps } from '@seatwright/core/job';
