/** Survivors that were looked at and may stay. `file` is how the file begins, under `packages/core/src/`; `from` a part of what was changed. */
export const argued = [];
