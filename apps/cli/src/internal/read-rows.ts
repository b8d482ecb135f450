import { createReadStream, statSync } from 'node:fs';
import { Readable } from 'node:stream';
import { parse, type Options } from 'csv-parse';

/** A row of a list with the line it begins on. */
export interface ListRow {
  readonly cells: readonly string[];
  readonly line: number;
}

interface RawRecord {
  readonly raw: string;
  readonly record: readonly string[];
}

/** A record longer than this is no row of a list: a quote was left open. */
const longestRecord = 64 * 1024;
const delimiters = [';', '\t', ','] as const;

/**
 * Rows of a list as a stream: UTF-8 with or without a byte order mark, cells parted by semicolon, tab or comma (the header tells which),
 * quotes doubled inside quotes, any line ends. What cannot be read as a row is handed to `onBad` and left out.
 */
export async function* readRows(file: string, onBad: (line: number, why: string) => void): AsyncGenerator<ListRow> {
  const input = file === '-' ? process.stdin : openFile(file);
  const chunks = input[Symbol.asyncIterator]() as AsyncIterator<Buffer>;
  const first = await headOf(chunks);
  if (first.includes(0)) throw new Error(`${file}: not a text file in UTF-8`);
  let nextLine = 1;
  /** The line that a record begins on; the next begins behind its own line ends. */
  const beginsOn = (raw: string): number => {
    const line = nextLine;
    nextLine += 1 + (raw.replace(/[\r\n]+$/u, '').match(/\r\n|\n|\r/gu)?.length ?? 0);
    return line;
  };
  const options: Options<ListRow, RawRecord> = {
    bom: true, delimiter: delimiterOf(first.toString('utf8')), raw: true, relax_column_count: true, relax_quotes: true, skip_records_with_error: true, max_record_size: longestRecord,
    on_record: ({ raw, record }) => ({ cells: record, line: beginsOn(raw) }),
    on_skip: (_, raw) => {
      onBad(beginsOn(raw ?? ''), 'a quote is left open, or the row is longer than 64 kB');
      return undefined;
    },
  };
  const parser = parse(options as unknown as Options);
  Readable.from(withHead(first, chunks)).on('error', (error) => parser.destroy(error)).pipe(parser);
  yield* parser as AsyncIterable<ListRow>;
}

function openFile(file: string) {
  try {
    if (statSync(file).isDirectory()) throw new Error(`${file}: is a folder`);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    throw new Error(`${file}: ${code === 'ENOENT' ? 'no such file' : code === 'EACCES' ? 'may not be read' : code}`, { cause: error });
  }
  return createReadStream(file);
}

/** The beginning of a stream: as much as holds the header, or all of it. */
async function headOf(chunks: AsyncIterator<Buffer>): Promise<Buffer> {
  const parts: Buffer[] = [];
  for (let next = await chunks.next(); next.done !== true; next = await chunks.next()) {
    parts.push(Buffer.from(next.value));
    if (next.value.includes(0x0a) || parts.length > 16) break;
  }
  return Buffer.concat(parts);
}

async function* withHead(first: Buffer, chunks: AsyncIterator<Buffer>): AsyncGenerator<Buffer> {
  yield first;
  for (let next = await chunks.next(); next.done !== true; next = await chunks.next()) yield next.value;
}

/** The sign that parts the header most often, quoted text left out; a semicolon or a tab before a comma, which may be a decimal mark. */
function delimiterOf(text: string): string {
  const header = (/^[^\r\n]*/u.exec(text.replace('\uFEFF', ''))?.[0] ?? '').replaceAll(/"(?:[^"]|"")*"/gu, '');
  return delimiters.find((sign) => header.includes(sign)) ?? ',';
}
