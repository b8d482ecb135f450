// Bearings, joints, repairs, the working, and the sentences that are seldom said: a chunk of its own, fetched once a sheet stands.
import '../words/later-words.js';

export { jobSheetInSteps, jobSheetWorking } from '@seatwright/core/job';
