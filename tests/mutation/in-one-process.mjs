import { readdirSync, statSync } from 'node:fs';
import { register } from 'node:module';
import { matchesGlob, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { PluginKind, declareClassPlugin, tokens } from '@stryker-mutator/api/plugin';
import { longestInAllMs, longestMs, readsSources, rooms, throughAll } from './rooms.mjs';

/**
 * Runs the tests of one room within the process that holds the changed sources: loaded once, a change is switched on by its number,
 * and the tests that come by it run until the first one fails, the quick ones first. A failing test must pass again once the change
 * is off; if it does not, the change has left something behind, and the process is thrown away.
 */
class InOneProcess {
  static inject = tokens();

  changes = (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {});
  tests = new Map();

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init() {
    const root = process.cwd();
    register(pathToFileURL(`${root}/tests/mutation/loader.mjs`).href);
    await import(pathToFileURL(`${root}/tests/drawn-the-same.ts`).href);
    const room = process.env.ROOM;
    const wanted = [`packages/core/src/${room}/**/*.test.ts`, `packages/core/src/${room}/*.test.ts`, ...[...rooms[room], ...throughAll].map((name) => `tests/${name}.test.ts`)];
    const list = (globalThis.seatwrightTests ??= []);
    for (const file of testsBelow(`${root}/packages/core/src/${room}`).concat(testsBelow(`${root}/tests`))) {
      const name = relative(root, file);
      if (!wanted.some((glob) => matchesGlob(name, glob))) continue;
      list.length = 0;
      await import(pathToFileURL(file).href);
      for (const [i, test] of list.entries()) if (!readsSources.some((name) => test.name.includes(name))) this.tests.set(`${name}#${i} ${test.name}`, { ...test, fileName: file, ms: 0 });
    }
    list.length = 0;
  }

  async dryRun() {
    const results = [];
    for (const [id, test] of this.tests) {
      this.changes.currentTestId = id;
      // Else the first test alone would be seen to come by what is remembered.
      forget();
      const start = performance.now();
      const failure = await failureOf(test);
      test.ms = performance.now() - start;
      if (failure === null && test.ms > longestMs) {
        this.tests.delete(id);
        delete this.changes.mutantCoverage?.perTest[id];
        continue;
      }
      const result = { id, name: id, fileName: test.fileName, timeSpentMs: test.ms };
      results.push(failure === null ? { ...result, status: 0 } : { ...result, status: 1, failureMessage: failure });
    }
    this.changes.currentTestId = undefined;
    // What ran on loading as well (a test that prepares itself) would ask for a fresh process; the tests that come by it later tell as much.
    const { static: onLoading, perTest } = this.changes.mutantCoverage ?? { static: {}, perTest: {} };
    for (const counts of Object.values(perTest)) for (const change of Object.keys(counts)) delete onLoading[change];
    return { status: 'complete', tests: results, mutantCoverage: this.changes.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const chosen = (testFilter ?? [...this.tests.keys()]).map((id) => [id, this.tests.get(id)]).sort(([, a], [, b]) => a.ms - b.ms);
    const mustForget = remembered.test(activeMutant.fileName);
    let run = 0;
    let takenMs = 0;
    for (const [id, test] of chosen) {
      takenMs += test.ms;
      if (takenMs > longestInAllMs) break;
      run += 1;
      if (mustForget) forget();
      Object.assign(this.changes, { activeMutant: activeMutant.id, hitCount: 0, hitLimit });
      const failure = await failureOf(test);
      const endless = hitLimit !== undefined && this.changes.hitCount > hitLimit;
      Object.assign(this.changes, { activeMutant: undefined, hitCount: undefined, hitLimit: undefined });
      if (mustForget) forget();
      if (failure === null) continue;
      if ((await failureOf(test)) !== null) throw new Error(`${id} fails even after change ${activeMutant.id} is off`);
      if (endless) return { status: 'timeout', reason: 'endless' };
      return { status: 'killed', killedBy: [id], failureMessage: failure, nrOfTests: run };
    }
    return { status: 'survived', nrOfTests: run };
  }
}

/** Sources that what core remembers was worked out by. */
const remembered = /tolerance\/internal\/(class-limits|class-names|deviation-rule|settled|size-steps)\.ts$|handwork\/internal\//;

function forget() {
  for (const one of globalThis.seatwrightForget ?? []) one();
}

async function failureOf({ run }) {
  try {
    await run();
    return null;
  } catch (error) {
    return error instanceof Error ? (error.message.split('\n')[0] ?? 'failed').slice(0, 200) : String(error);
  }
}

function testsBelow(folder) {
  return readdirSync(folder)
    .filter((name) => name !== 'node_modules')
    .flatMap((name) => (statSync(`${folder}/${name}`).isDirectory() ? testsBelow(`${folder}/${name}`) : name.endsWith('.test.ts') ? [`${folder}/${name}`] : []));
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'in-one-process', InOneProcess)];
