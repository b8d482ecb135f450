// Bearings, joints, repairs and the working: a chunk of its own, fetched once a sheet stands.
export { jobSheetInSteps, jobSheetWorking } from '@seatwright/core/job';
