import { defineConfig } from "vitest/config";

const common = {
  testTimeout: 60_000,
  pool: "threads",
  maxWorkers: 2,
  // a test that asks nothing can't fail
  expect: { requireAssertions: true },
  // whatever the machine speaks, the command line speaks English where no other is asked for
  env: { LC_ALL: "C" },
} as const;

export default defineConfig({
  test: {
    projects: [
      { test: { ...common, name: "core", include: ["tests/**/*.test.ts"], exclude: ["tests/web/**"] } },
      {
        test: {
          ...common,
          name: "page",
          include: ["tests/web/**/*.test.ts"],
          // one built page, one server and one browser for all of them
          globalSetup: ["tests/web/setup.ts"],
          // a browser on a busy machine: slow is not wrong
          testTimeout: 300_000,
          hookTimeout: 120_000,
          // after the core, so that Chromium does not share the machine with it
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
