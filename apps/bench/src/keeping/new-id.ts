/** An id that no other device makes. */
export function newId(): string {
  const random = crypto.getRandomValues(new Uint32Array(4));
  return [...random].map((part) => part.toString(36)).join('-');
}
