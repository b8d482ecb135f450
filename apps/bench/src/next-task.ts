/** Resolves in a task of its own: what happens after it does not lengthen the task under way. A timer would wait 4 ms each time. */
export function nextTask(): Promise<void> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });
}

/** Longest that work in steps goes on before it lets the page answer [ms]: a frame lasts 16. */
const longestMs = 8;

/** Does work in steps to its end: begins in the task under way, goes on in as many as it takes. */
export async function inTasks<T>(steps: Generator<undefined, T>): Promise<T> {
  let since = performance.now();
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done === true) return step.value;
    if (performance.now() - since < longestMs) continue;
    await nextTask();
    since = performance.now();
  }
}
