import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line, "N passed, N failed", that people and scripts can read. */
export default class ClosingLineReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    let skipped = 0;
    for (const testModule of modules) {
      if (testModule.state() === 'failed' && testModule.errors().length > 0) failed += 1;
      for (const test of testModule.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed += 1;
        else if (state === 'failed') failed += 1;
        else skipped += 1;
      }
    }
    process.stdout.write(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`);
  }
}
