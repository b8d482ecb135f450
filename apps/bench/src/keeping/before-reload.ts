type Ready = () => Promise<boolean>;

let ready: Ready = () => Promise.resolve(true);

/** What has to be done before the page may be loaded anew; true where nothing is lost by it. */
export function beforeReload(run: Ready): void {
  ready = run;
}

export function readyToReload(): Promise<boolean> {
  return ready();
}
