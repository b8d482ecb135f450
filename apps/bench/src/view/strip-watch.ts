/** Shows the strip while the drawing itself is out of view. */
export class StripWatch {
  private drawing: Element | null = null;
  private observer: IntersectionObserver | null = null;

  /** Looks at what is on the page now. */
  look(root: ParentNode): void {
    const drawing = root.querySelector('.drawing');
    const strip = root.querySelector('.strip-place');
    if (drawing === this.drawing) return;
    this.observer?.disconnect();
    this.drawing = drawing;
    if (drawing === null || strip === null) return;
    this.observer = new IntersectionObserver(([entry]) => { strip.classList.toggle('shown', entry !== undefined && !entry.isIntersecting && entry.boundingClientRect.top < 0); }, { rootMargin: '-118px 0px 0px 0px' });
    this.observer.observe(drawing);
  }
}
