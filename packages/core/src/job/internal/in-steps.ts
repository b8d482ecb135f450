/** Work that may rest between its steps; what it comes to at the end. */
export type InSteps<T> = Generator<undefined, T>;

/** Does all the steps at once. */
export function toEnd<T>(steps: InSteps<T>): T {
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}
