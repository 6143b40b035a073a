import { defineConfig } from "vitest/config";

// Proofs that take minutes: not part of check.
export default defineConfig({
  test: { include: ["test/long/**/*.test.ts"], pool: "forks", testTimeout: 600_000, hookTimeout: 60_000, globalSetup: ["test/crash/build.ts"] },
});
