import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { minify } from 'terser';
import { build, defineConfig, type Plugin, type Rolldown, type UserConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { notOnASheet, wordsInTwo } from './words-in-two.ts';

const at = (path: string): string => new URL(path, import.meta.url).pathname;

/** Nothing but what this page brings with it: no inline script, no other origin. Not while developing, since live reload needs more. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const strictPage: Plugin = {
  name: 'strict-page',
  apply: 'build',
  transformIndexHtml: () => [{ tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy }, injectTo: 'head-prepend' }],
};

/** Styles without line breaks and remarks, markup without the indents between its tags: the bundler leaves what stands in a template as it is. */
const shortTemplates: Plugin = {
  name: 'short-templates',
  apply: 'build',
  enforce: 'pre',
  transform: (code, id) => (id.endsWith('.ts') && /\b(?:css|html|svg)`/u.test(code) ? { code: withShortMarkup(withShortStyles(code)), map: null } : null),
};

function withShortStyles(code: string): string {
  return code.replace(/(?<=\bcss`)[^`]*(?=`)/gu, (styles) => styles.replace(/\/\*[^]*?\*\//gu, '').replace(/\s*\n\s*/gu, ' ').replace(/ ?([{};]) /gu, '$1'));
}

/** Between two tags, or a tag and a value, a line break is as good as a space. */
function withShortMarkup(code: string): string {
  return code.replace(/(?<=[>}])\s*\n\s*(?=<|\$\{)/gu, ' ');
}

/** What the bundler has made short, once more: the two together leave a hundredth less to carry than either alone. No function of the page is called with `new` that is not a class. */
const shortOnceMore: Plugin = {
  name: 'short-once-more',
  apply: 'build',
  async generateBundle(_options, bundle) {
    for (const chunk of Object.values(bundle)) {
      if (chunk.type === 'chunk') chunk.code = (await minify(chunk.code, { module: true, ecma: 2020, compress: { passes: 3, keep_fargs: false, unsafe_arrows: true }, format: { comments: false } })).code ?? chunk.code;
    }
  },
};

/** Sample files as they are kept for offline: without the spaces that are there for reading. */
const shortSamples: Plugin = {
  name: 'short-samples',
  apply: 'build',
  writeBundle: ({ dir = '' }) => {
    const samples = join(dir, 'samples');
    for (const name of readdirSync(samples).filter((file) => file.endsWith('.json'))) {
      const file = join(samples, name);
      writeFileSync(file, JSON.stringify(JSON.parse(readFileSync(file, 'utf8'))));
    }
  },
};

const keptOffline = VitePWA({
  registerType: 'prompt',
  injectRegister: null,
  manifest: {
    name: 'Seatwright',
    short_name: 'Seatwright',
    description: 'Does this seal suit this shaft and bore, how does the old one come out, how does the new one go in, when next?',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#f8f5ed',
    theme_color: '#f8f5ed',
    icons: [{ src: './icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
  },
  workbox: {
    globPatterns: ['**/*.{js,css,html,svg,json,csv,webmanifest}'],
    // Of the languages that are fetched the page itself keeps the one in use (`words/language.ts`), so that nobody pays for the others.
    // Samples that only the command line and the tests open stay out too.
    globIgnores: ['assets/german*.js', 'samples/*.csv', 'samples/{outboard-leg,bearing-ramp-idler,bearing-gearbox-roller,bearing-bilge-pump-worn,bearing-wash-pump-unmeasured}.json'],
    runtimeCaching: [{ urlPattern: /\/assets\/german[\w-]*\.js$/u, handler: 'CacheFirst', options: { cacheName: 'languages' } }],
    navigateFallback: 'index.html',
    cleanupOutdatedCaches: true,
    sourcemap: false,
  },
});

/**
 * Parts of the page that are always fetched together, each with the sources that begin it: one chunk each, in place of a dozen, since a text
 * packs better the longer it is (5 % less to carry by gzip, 9 % by brotli).
 */
const together: Readonly<Record<string, readonly string[]>> = {
  'seal-job': ['src/bench-sheet.ts', 'src/sheet/open-workshop.ts'],
};

/** Which part a source belongs to, as a first build finds it: only there is known what of each source is in use, and by whom. */
async function partsOfPage(plugins: readonly Plugin[]): Promise<ReadonlyMap<string, string>> {
  const { output } = (await build({ ...page, plugins: [...plugins], configFile: false, root: at('.'), logLevel: 'silent', build: { ...page.build, write: false, rolldownOptions: { external: ['virtual:pwa-register'] } } })) as Rolldown.RolldownOutput;
  const chunks = new Map(output.filter((file) => file.type === 'chunk').map((chunk) => [chunk.fileName, chunk]));
  const below = (name: string, seen = new Set<string>()): ReadonlySet<string> => {
    if (!seen.has(name)) {
      seen.add(name);
      for (const imported of chunks.get(name)?.imports ?? []) below(imported, seen);
    }
    return seen;
  };
  const entry = [...chunks.values()].find((chunk) => chunk.isEntry)?.fileName ?? '';
  const placed = new Set(below(entry));
  const parts = new Map<string, string>();
  for (const [part, sources] of Object.entries(together)) {
    for (const source of sources) {
      const start = [...chunks.values()].find((chunk) => chunk.moduleIds.includes(at(source)))?.fileName;
      if (start === undefined) throw new Error(`${source} is in no chunk`);
      for (const name of below(start)) {
        if (placed.has(name)) continue;
        placed.add(name);
        for (const id of chunks.get(name)?.moduleIds ?? []) parts.set(id, part);
      }
    }
  }
  return parts;
}

const page: UserConfig = {
  base: './',
  resolve: {
    alias: [
      { find: new RegExp(`^\\./(?:${notOnASheet.join('|')})\\.js$`, 'u'), replacement: at('./src/words/not-on-a-sheet.ts') },
      { find: 'd3-interpolate', replacement: at('./src/charts/interpolate-numbers.ts') },
      { find: /^@seatwright\/core$/, replacement: at('../../packages/core/src/index.ts') },
      { find: /^@seatwright\/core\/registry$/, replacement: at('../../packages/core/src/registry.ts') },
      { find: /^@seatwright\/core\/([a-z]+)$/, replacement: `${at('../../packages/core/src/')}$1/index.ts` },
      { find: /^@seatwright\/elements\/all\.js$/, replacement: at('../../packages/elements/src/all.ts') },
      { find: /^@seatwright\/elements\/words\.js$/, replacement: at('../../packages/elements/src/words/index.ts') },
      { find: /^@seatwright\/elements\/seat-([a-z-]+)\.define\.js$/, replacement: `${at('../../packages/elements/src/')}$1/$1.define.ts` },
      { find: /^@seatwright\/elements\/seat-([a-z-]+)\.js$/, replacement: `${at('../../packages/elements/src/')}$1/$1.ts` },
    ],
  },
  build: {
    target: 'es2022',
    modulePreload: { polyfill: false },
    sourcemap: false,
    assetsInlineLimit: 0,
  },
};

export default defineConfig(async ({ command }) => {
  const plugins = [strictPage, shortTemplates, shortOnceMore, shortSamples, keptOffline];
  if (command !== 'build') return { ...page, plugins };
  const words = await wordsInTwo();
  const parts = await partsOfPage([words]);
  const groups = Object.keys(together).map((name) => ({ name, test: (id: string) => parts.get(id) === name }));
  return { ...page, plugins: [words, ...plugins], build: { ...page.build, rolldownOptions: { output: { codeSplitting: { includeDependenciesRecursively: false, groups } } } } };
});
