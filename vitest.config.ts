import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit-alone',
          include: [
            'tests/{main,support}/**/*.test.ts',
            'tests/renderer/state/**/*.test.ts',
            'tests/core/structure.test.ts',
          ],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'unit',
          include: ['tests/core/*/**/*.test.ts', 'tests/renderer/*/**/*.test.ts'],
          exclude: ['tests/renderer/state/**'],
          // the core and the rows of the views keep no state of their own, so their tests may share what they have loaded
          isolate: false,
          testTimeout: 60_000,
        },
      },
      { test: { name: 'reference', include: ['tests/reference/**/*.test.ts'], testTimeout: 300_000 } },
      { test: { name: 'fuzz', include: ['tests/fuzz/**/*.test.ts'], testTimeout: 7_200_000 } },
    ],
  },
});
