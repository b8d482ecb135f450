import type { JsonObject } from '../document/raw-document.js';
import { inTasks, nextTask } from '../next-task.js';
import type { SheetResult } from './compute-sheet.js';

/** The file in hand; null before one is opened. */
type FileInHand = () => JsonObject | null;

/** Computes the sheet of the file in hand: in tasks of its own while somebody types, at once where the result is wanted now. */
export class SheetComputer {
  private readonly file: FileInHand;
  private readonly steps: (file: JsonObject) => Generator<undefined, SheetResult>;
  private readonly take: (result: SheetResult, file: JsonObject) => void;
  private working: Promise<void> | null = null;
  /** Counts what was computed at once, which what is computed in tasks gives way to. */
  private run = 0;
  /** The file that the last result is of. */
  private computed: JsonObject | null = null;

  constructor(file: FileInHand, steps: (file: JsonObject) => Generator<undefined, SheetResult>, take: (result: SheetResult, file: JsonObject) => void) {
    this.file = file;
    this.steps = steps;
    this.take = take;
  }

  /** What is under way in tasks; null where nothing is. It never rejects. */
  get underWay(): Promise<void> | null {
    return this.working;
  }

  /** Computes in tasks: the next key does not wait, and keys that came meanwhile are computed together. */
  soon(): void {
    this.working ??= this.computeInTasks();
  }

  /** Computes at once. */
  now(): void {
    const file = this.file();
    if (file === null) return;
    this.run += 1;
    const steps = this.steps(file);
    let step = steps.next();
    while (step.done !== true) step = steps.next();
    this.give(step.value, file);
  }

  private async computeInTasks(): Promise<void> {
    await nextTask();
    const file = this.file();
    const { run } = this;
    try {
      if (file === null) return;
      const result = await inTasks(this.steps(file));
      // What was computed at once meanwhile is newer.
      if (run === this.run) this.give(result, file);
    } catch (error) {
      reportError(error);
      this.computed = file;
    } finally {
      this.working = null;
      if (this.computed !== this.file()) this.soon();
    }
  }

  private give(result: SheetResult, file: JsonObject): void {
    this.computed = file;
    this.take(result, file);
  }
}
