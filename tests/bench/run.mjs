// npm run bench: the benchmarks are TypeScript, which Node 20 does not read, so Vite loads them.
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
process.chdir(root);
const loader = await createServer({
  configFile: false,
  root,
  logLevel: 'error',
  appType: 'custom',
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
  optimizeDeps: { noDiscovery: true },
  // The browser tests' driver asks vitest where the app is; here there is no vitest.
  resolve: { alias: { vitest: fileURLToPath(new URL('app-address.ts', import.meta.url)) } },
});
try {
  const { benchAll } = await loader.ssrLoadModule('/tests/bench/bench-all.ts');
  await benchAll();
} finally {
  await loader.close();
}
