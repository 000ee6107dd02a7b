import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';
import { CONTENT_SECURITY_POLICY } from '../../../vite.config.ts';

/** Builds the bare photo page as the app is built, and serves it under the app's policy. */
export async function servePhotoPage(): Promise<{ url: string; close: () => Promise<void> }> {
  const outDir = await mkdtemp(join(tmpdir(), 'underlid-photo-page-'));
  const shared = { configFile: false, root: import.meta.dirname, logLevel: 'error' } as const;
  await build({
    ...shared,
    base: './',
    worker: { format: 'es' },
    build: {
      outDir,
      target: 'es2022',
      modulePreload: { polyfill: false },
      assetsInlineLimit: 0,
      rolldownOptions: { input: join(import.meta.dirname, 'photo-page.html') },
    },
  });
  const server = await preview({
    ...shared,
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1', headers: { 'Content-Security-Policy': CONTENT_SECURITY_POLICY } },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('servePhotoPage: no port');
  return {
    url: `http://127.0.0.1:${address.port}/photo-page.html`,
    close: async () => {
      await server.close();
      await rm(outDir, { recursive: true });
    },
  };
}
