import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/{core,main,renderer,support}/**/*.test.ts'],
          testTimeout: 60_000,
        },
      },
      { test: { name: 'reference', include: ['tests/reference/**/*.test.ts'], testTimeout: 300_000 } },
      { test: { name: 'fuzz', include: ['tests/fuzz/**/*.test.ts'], testTimeout: 7_200_000 } },
    ],
  },
});
