import { CalculationError } from '@seatwright/core/result';

/** What a calculation says against its input; whatever else is thrown goes on. */
export function refused(run: () => unknown): CalculationError {
  try {
    run();
  } catch (error) {
    if (error instanceof CalculationError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}
