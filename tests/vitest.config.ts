import { defineConfig } from 'vitest/config';

/** Unit, property, layer and checklist tests. Browser tests have a config of their own in tests/browser/. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    environment: 'node',
    testTimeout: 60_000,
  },
});
