/** Hands a text to the browser as a file to be saved. */
export function saveFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => { URL.revokeObjectURL(address); }, 10_000);
}

/** A title as the name of a file. */
export function fileName(title: string): string {
  return title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/gu, '') || 'workshop';
}
