import { defineConfig } from 'vitest/config';

/** Tests in a real browser, one file at a time: `dist/` is served once for all of them. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/browser/**/*.browser.ts', 'tests/browser/photographs/*.test.ts'],
    globalSetup: ['tests/browser/driver/serve-app.ts'],
    environment: 'node',
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 60_000,
  },
});
