/** Runs something once the page has nothing better to do. */
export function whenIdle(run: () => void): void {
  const soon = globalThis.requestIdleCallback ?? ((callback: () => void) => setTimeout(callback, 200));
  soon(run);
}
