import { closeSync, fchmodSync, fsyncSync, openSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { writingFault } from './writing-fault.js';

const tries = 40;
const betweenTriesMs = 50;

/**
 * Puts a new whole text in the place of a file: it is old or new, never half of both. The text is made while nobody else replaces the same
 * file, so that two changes written at once both stay. A link keeps pointing where it did; the file keeps its permissions. What is no file, such as a pipe or a device, is refused, not replaced.
 */
export async function replaceWhole(file: string, textOf: () => Promise<string>): Promise<void> {
  const target = targetOf(file);
  const beside = join(dirname(target), `.${basename(target)}.new`);
  const there = saying(file, () => statSync(target, { throwIfNoEntry: false }));
  if (there !== undefined && !there.isFile()) throw new Error(`${file}: ${there.isDirectory() ? 'is a folder' : 'is not a file'}; nothing was changed`);
  const handle = await claim(file, beside);
  try {
    const text = await textOf();
    saying(file, () => {
      writeFileSync(handle, text);
      const mode = statSync(target, { throwIfNoEntry: false })?.mode;
      if (mode !== undefined) fchmodSync(handle, mode & 0o7777);
      fsyncSync(handle);
      renameSync(beside, target);
    });
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  } finally {
    closeSync(handle);
  }
}

function targetOf(file: string): string {
  try {
    return realpathSync(file);
  } catch {
    return file;
  }
}

/** The new file, which only one at a time can make: waits a little for another one to finish. */
async function claim(file: string, beside: string): Promise<number> {
  for (let i = 0; i < tries; i += 1) {
    try {
      return openSync(beside, 'wx');
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') saying(file, () => { throw error; });
      await pause(betweenTriesMs);
    }
  }
  throw new Error(`${file}: another change is being written to it; if none is, delete ${beside}; nothing was changed`);
}

function saying<T>(file: string, act: () => T): T {
  try {
    return act();
  } catch (error) {
    throw new Error(`${file}: ${writingFault(error)}; nothing was changed`, { cause: error });
  }
}
