import { defineConfig } from "vitest/config";

export default defineConfig({
  // against what hangs: how long a sound test takes is the machine's matter
  test: { include: ["tests/**/*.test.{ts,tsx}"], testTimeout: 180_000, pool: "forks" },
});
