import { defineConfig } from "vitest/config";

// Two cores: forks share them; a test that needs longer than ten seconds belongs in test:long.
const common = { exclude: ["test/long/**", "test/process/**", "test/crash/**"], pool: "forks" as const, testTimeout: 10_000, hookTimeout: 20_000 };

const POSTGRES_ONLY = "test/**/*.postgres.test.ts";
/** What is done on both databases: all that goes through the store. */
const STORED = [
  "test/store/**/*.test.ts",
  "test/usecases/**/*.test.ts",
  "test/reminders/**/*.test.ts",
  "test/terminal/{story,corrections,torque,chart}.test.ts",
  "test/discord/{story,sending}.test.ts",
  POSTGRES_ONLY,
];

const server = process.env["TAPPET_TEST_POSTGRES"];
if (server === undefined) process.stderr.write("PostgreSQL is left out: TAPPET_TEST_POSTGRES names no server (see DEVELOPERS.md).\n");

export default defineConfig({
  test: {
    // Tests on the stand-in mostly wait; a third worker uses the time.
    maxWorkers: 3,
    projects: [
      // Nothing is kept in modules between tests, so a worker need not load the house anew for each file.
      {
        test: {
          ...common,
          ...{ name: "sqlite", isolate: false, include: ["test/**/*.test.ts"], exclude: [...common.exclude, POSTGRES_ONLY] },
          globalSetup: ["test/support/sqlite-setup.ts"],
        },
      },
      {
        test: {
          ...common,
          // Every test makes a database of its own on the server, which two cores take their time over.
          testTimeout: 60_000,
          ...{ name: "postgres", include: server === undefined ? [] : STORED, env: { TAPPET_TEST_ON: "postgres" } },
          globalSetup: ["test/support/postgres-setup.ts"],
        },
      },
    ],
  },
});
