import { defineConfig } from "vitest/config";

// The process itself: started, stopped, and killed at each step of sending. One file at a time: each run starts processes of its own.
const server = process.env["TAPPET_TEST_POSTGRES"];
const common = {
  include: ["test/process/**/*.test.ts", "test/crash/**/*.test.ts"],
  pool: "forks" as const,
  testTimeout: 60_000,
  hookTimeout: 60_000,
  globalSetup: ["test/crash/build.ts"],
};

export default defineConfig({
  test: {
    fileParallelism: false,
    projects: [
      { test: { ...common, name: "sqlite", exclude: ["**/*.postgres.test.ts"] } },
      ...(server === undefined
        ? []
        : [{ test: { ...common, name: "postgres", exclude: ["test/process/**", "test/crash/file.test.ts"], env: { TAPPET_TEST_ON: "postgres" } } }]),
    ],
  },
});
