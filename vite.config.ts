import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const manifest = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8')) as { version: string };
const leftOut = fileURLToPath(new URL('src/sheet/left-out.ts', import.meta.url));

/** The same policy stands in index.html, for hosts that send no headers of their own. */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  // WebAssembly: the reader of cell codes. Text is never run as script.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob:",
  // Voice notes, played from what lies on the phone.
  'media-src blob:',
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

export default defineConfig({
  base: './',
  // The root tsconfig is the pure layers' own and knows no JSX.
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  define: { __APP_VERSION__: JSON.stringify(manifest.version) },
  resolve: {
    // jsPDF offers HTML and SVG rendering through these; we use neither, and they would be precached.
    alias: { html2canvas: leftOut, canvg: leftOut, dompurify: leftOut },
  },
  build: { target: 'es2022', modulePreload: { polyfill: false }, assetsInlineLimit: 0 },
  worker: { format: 'es' },
  preview: {
    headers: {
      'Content-Security-Policy': `${CONTENT_SECURITY_POLICY}; frame-ancestors 'none'`,
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'Cross-Origin-Opener-Policy': 'same-origin',
    },
  },
  plugins: [
    {
      name: 'underlid-csp',
      apply: 'build',
      transformIndexHtml: (html) => html.replace('%CSP%', CONTENT_SECURITY_POLICY),
    },
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'src',
      filename: 'sw.ts',
      registerType: 'prompt',
      injectRegister: false,
      injectManifest: {
        globPatterns: ['**/*.{js,css,html,woff2,ttf,json,svg,png,wasm}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
      manifest: {
        id: './',
        name: 'Underlid',
        short_name: 'Underlid',
        description: 'From the unopened battery pack to a scored, illustrated build-quality sheet. Offline.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        shortcuts: [
          {
            name: 'The pack open last',
            short_name: 'Last pack',
            url: './#/last',
            icons: [{ src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' }],
          },
        ],
        // Answered by the service worker (src/sw.ts): nothing is sent anywhere.
        share_target: {
          action: './share-in',
          method: 'POST',
          enctype: 'multipart/form-data',
          params: { files: [{ name: 'files', accept: ['image/*', 'application/zip', '.zip'] }] },
        },
        file_handlers: [{ action: './', accept: { 'application/zip': ['.zip'] } }],
        background_color: '#16191C',
        theme_color: '#16191C',
        icons: [
          { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icons/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'icons/icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
    }),
  ],
});
