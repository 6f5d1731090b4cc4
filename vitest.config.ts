import { availableParallelism } from 'node:os';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/** A busy machine takes several times as long as a quiet one; only what hangs should fail for its time, ms. */
const testTimeout = 30_000;
const hookTimeout = testTimeout;

export default defineConfig({
  test: {
    // All of the machine: by itself one core would be left idle, which of two is half.
    maxWorkers: availableParallelism(),
    projects: [
      {
        test: {
          name: 'pure',
          environment: 'node',
          testTimeout,
          hookTimeout,
          // What needs no page keeps nothing between tests: its files may share their modules, which spares most of the time.
          isolate: false,
          include: ['tests/**/*.test.ts'],
        },
      },
      {
        plugins: [react()],
        test: {
          name: 'face',
          environment: 'happy-dom',
          testTimeout,
          hookTimeout,
          // Each with a page and modules of its own: for tests that render something, or touch a page.
          include: ['tests/**/*.test.tsx'],
          setupFiles: ['tests/ui/setup.ts'],
        },
      },
    ],
  },
});
