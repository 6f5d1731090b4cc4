import { availableParallelism } from 'node:os';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/** A busy machine takes several times as long as a quiet one; only what hangs should fail for its time, ms. */
const testTimeout = 30_000;

export default defineConfig({
  test: {
    // All of the machine: by itself one core would be left idle, which of two is half.
    maxWorkers: availableParallelism(),
    projects: [
      {
        test: {
          name: 'core',
          environment: 'node',
          testTimeout,
          // Core is pure: its files may share their modules, which spares most of the time. The face's share no page.
          isolate: false,
          include: ['tests/core/**/*.test.ts', 'tests/cli/**/*.test.ts', 'tests/architecture/**/*.test.ts'],
        },
      },
      {
        plugins: [react()],
        test: {
          name: 'face',
          environment: 'happy-dom',
          testTimeout,
          include: ['tests/ui/**/*.test.{ts,tsx}', 'tests/store/**/*.test.ts'],
          setupFiles: ['tests/ui/setup.ts'],
        },
      },
    ],
  },
});
