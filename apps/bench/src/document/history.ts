import type { Path } from './raw-document.js';

/** What a sheet was before, and what was taken back. Typing on in one field counts as one change. */
export class History<State> {
  private past: State[] = [];
  private future: State[] = [];
  private lastPath = '';

  get canUndo(): boolean {
    return this.past.length > 0;
  }

  get canRedo(): boolean {
    return this.future.length > 0;
  }

  /** Notes the state before a change at a path; an empty path is a change by itself. */
  note(before: State, path: Path): void {
    const key = path.join('/');
    if (key === '' || key !== this.lastPath || this.past.length === 0) this.past.push(before);
    if (this.past.length > mostSteps) this.past.shift();
    this.lastPath = key;
    this.future = [];
  }

  undo(now: State): State {
    const before = this.past.pop();
    if (before === undefined) return now;
    this.future.push(now);
    this.lastPath = '';
    return before;
  }

  redo(now: State): State {
    const after = this.future.pop();
    if (after === undefined) return now;
    this.past.push(now);
    this.lastPath = '';
    return after;
  }
}

/** States share what did not change, so many cost little. */
const mostSteps = 500;
