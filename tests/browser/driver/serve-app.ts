import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the built app is served, ending in a slash. */
    appUrl: string;
  }
}

/** Serves the built app under its own headers for the whole run. UNDERLID_DIST names another folder than dist/. */
export default async function serveApp(project: TestProject): Promise<() => Promise<void>> {
  const outDir = resolve(process.env.UNDERLID_DIST ?? 'dist');
  if (!existsSync(join(outDir, 'index.html'))) {
    throw new Error(`The browser tests look at the built app, and ${outDir} holds none: run "npm run build" first.`);
  }
  const server = await preview({
    logLevel: 'error',
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('serveApp: no port');
  project.provide('appUrl', `http://127.0.0.1:${address.port}/`);
  return () => server.close();
}
