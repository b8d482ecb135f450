import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Where the built page lies. */
export const benchFolder = fileURLToPath(new URL('../../../apps/bench/dist/', import.meta.url));
const types: Readonly<Record<string, string>> = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json', '.webmanifest': 'application/manifest+json', '.csv': 'text/csv', '.svg': 'image/svg+xml' };

/** A built page on this machine alone, at a port of its own. */
export interface ServedPage {
  readonly address: string;
  /** Serves another folder from now on, as a server does after an update. */
  serveFrom(folder: string): void;
  close(): Promise<void>;
}

export async function servePage(folder = benchFolder): Promise<ServedPage> {
  let root = folder;
  if (!existsSync(join(root, 'index.html'))) throw new Error('The page is not built. Run "npm run build" first.');
  const server: Server = createServer((request, answer) => {
    const path = normalize(decodeURIComponent((request.url ?? '/').split('?')[0] ?? '/'));
    const file = join(root, path === '/' ? 'index.html' : path);
    if (!file.startsWith(root) || !existsSync(file)) {
      answer.writeHead(404).end();
      return;
    }
    answer.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' }).end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    serveFrom: (other) => { root = other; },
    close: () => new Promise<void>((done, failed) => { server.close((error) => { if (error === undefined) done(); else failed(error); }); }),
  };
}
