import { defineConfig } from "vitest/config";

// Two cores: forks share them; a test that needs longer than ten seconds belongs in test:long.
export default defineConfig({
  test: { include: ["test/**/*.test.ts"], exclude: ["test/long/**"], pool: "forks", testTimeout: 10_000, hookTimeout: 20_000 },
});
