import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';

export interface BuiltApp {
  folder: string;
  /** Where it is served, ending in a slash. */
  url: string;
  close(): Promise<void>;
}

/** Builds the app into a folder of its own and serves it as npm start does, on a free port. */
export async function builtApp(): Promise<BuiltApp> {
  const folder = await mkdtemp(join(tmpdir(), 'underlid-bench-'));
  const removed = () => rm(folder, { recursive: true, force: true });
  try {
    await build({ logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
    const server = await preview({
      logLevel: 'error',
      build: { outDir: folder },
      preview: { port: 0, host: '127.0.0.1' },
    });
    const address = server.httpServer.address();
    if (address === null || typeof address === 'string') throw new Error('builtApp: no port');
    return {
      folder,
      url: `http://127.0.0.1:${address.port}/`,
      close: () => server.close().finally(removed),
    };
  } catch (error) {
    await removed();
    throw error;
  }
}
