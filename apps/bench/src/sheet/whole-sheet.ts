// Bearings, joints and repairs: a chunk of its own, fetched once a sheet stands.
export { jobSheet, jobSheetInSteps } from '@seatwright/core/job';
