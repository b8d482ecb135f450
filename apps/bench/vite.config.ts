import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

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

export default defineConfig({
  base: './',
  plugins: [
    strictPage,
    VitePWA({
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
        globIgnores: ['assets/german*.js', 'samples/*.csv', 'samples/bearing-{ramp-idler,gearbox-roller,bilge-pump-worn,wash-pump-unmeasured}.json'],
        runtimeCaching: [{ urlPattern: /\/assets\/german[\w-]*\.js$/u, handler: 'CacheFirst', options: { cacheName: 'languages' } }],
        navigateFallback: 'index.html',
        cleanupOutdatedCaches: true,
        sourcemap: false,
      },
    }),
  ],
  resolve: {
    alias: [
      { find: /^\.\/(leaks|measures)\.js$/, replacement: at('./src/words/not-on-a-sheet.ts') },
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
});
