import { closeSync, fstatSync, openSync, readFileSync } from 'node:fs';
import { text } from 'node:stream/consumers';

const largestBytes = 32 * 1024 * 1024;

/** Text of a file or of standard input (`-`). Refuses folders, files over 32 MiB and binary files, each with one clear message. */
export async function readInput(file: string): Promise<string> {
  const content = file === '-' ? await text(process.stdin) : readFileText(file);
  if (content.length > largestBytes) throw new Error(`${file}: larger than 32 MiB`);
  if (content.includes('\0') || content.includes('�')) throw new Error(`${file}: not a text file in UTF-8`);
  return content;
}

function readFileText(file: string): string {
  let handle: number;
  try {
    handle = openSync(file, 'r');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    throw new Error(`${file}: ${code === 'ENOENT' ? 'no such file' : code === 'EACCES' ? 'may not be read' : String(code)}`, { cause: error });
  }
  try {
    const stat = fstatSync(handle);
    if (stat.isDirectory()) throw new Error(`${file}: is a folder`);
    if (stat.size > largestBytes) throw new Error(`${file}: ${Math.round(stat.size / 1024 / 1024)} MiB; at most 32 MiB are read`);
    return readFileSync(handle, 'utf8');
  } finally {
    closeSync(handle);
  }
}
