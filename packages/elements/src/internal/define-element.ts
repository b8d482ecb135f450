/** Registers a tag. The same class twice is left alone; another class under the same tag is an error that says so. */
export function defineElement(tag: string, element: CustomElementConstructor): void {
  const known = customElements.get(tag);
  if (known === undefined) customElements.define(tag, element);
  else if (known !== element) throw new Error(`<${tag}> is already defined by another class; is a second copy of @seatwright/elements on this page?`);
}
