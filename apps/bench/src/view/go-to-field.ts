/** Opens everything that folds around a field and puts the cursor into it. */
export function goToField(within: ParentNode, key: string): void {
  const field = fieldOf(within, key);
  if (field === null) return;
  for (let around = field.closest('details'); around !== null; around = around.parentElement?.closest('details') ?? null) around.open = true;
  field.scrollIntoView({ block: 'center', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
  const target = field.matches('.text-field') ? field.querySelector('input') : field;
  target?.focus({ preventScroll: true });
}

/** The field of a key, or the nearest one that holds it. */
function fieldOf(within: ParentNode, key: string): HTMLElement | null {
  for (let wanted = key; wanted !== ''; wanted = wanted.replace(/(?:^|[.[])[^.[]*$/u, '')) {
    const found = within.querySelector<HTMLElement>(`[data-key="${CSS.escape(wanted)}"]`);
    if (found !== null) return found;
  }
  return null;
}
