/** Places that a row "over … up to and including …" is asked at: just inside its lower end and on its upper end. An open end is asked well inside. */
export function rangeEnds(over: string, upTo: string, step = 0.001): readonly number[] {
  const low = over === '' ? 0 : Number(over);
  const first = Number((low + step).toFixed(6));
  return [first, upTo === '' ? Number((low * 1.5 + 1).toFixed(6)) : Number(upTo)];
}

/** `over 3 up to 6`, as `3–6`. */
export function rangeText(over: string, upTo: string): string {
  if (upTo === '') return `over ${over}`;
  return `${over === '' ? '0' : over}–${upTo}`;
}

/** Reads the mark of a cell: `page2` is a page, seen twice. Cells that the sheet of facts computed itself are no printed values. */
export function howOf(mark: string | undefined): { readonly how: 'page' | 'page-mirror' | 'memory'; readonly pagesSeen?: number } | null {
  const [, seen] = /^page(\d+)$/u.exec(mark ?? '') ?? [];
  if (seen !== undefined) return { how: 'page', pagesSeen: Number(seen) };
  if (mark === 'page' || mark === 'page-mirror' || mark === 'memory') return { how: mark };
  if (mark === 'computed' || mark === '') return null;
  throw new Error(`"${String(mark)}" does not say how a value was obtained`);
}
