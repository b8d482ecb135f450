const faults: Readonly<Record<string, string>> = { EACCES: 'may not be written', EPERM: 'may not be written', EROFS: 'lies on a read-only disk', ENOSPC: 'the disk is full', EDQUOT: 'the share of the disk is used up', EFBIG: 'larger than a file may be here', EIO: 'the disk does not answer', ENOENT: 'no such folder', ENOTDIR: 'no such folder', EISDIR: 'is a folder' };

/** Why something could not be written, in words; what has none keeps its code. */
export function writingFault(error: unknown): string {
  const { code } = error as NodeJS.ErrnoException;
  return faults[code ?? ''] ?? String(code);
}
