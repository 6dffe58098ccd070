import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: [
      "core/src/**/*.test.ts",
      "server/src/**/*.test.ts",
      "web/src/**/*.test.{ts,tsx}",
      "scripts/**/*.test.ts",
      "bench/**/*.test.ts",
      "examples/**/*.test.ts",
    ],
    pool: "threads",
    isolate: false,
    testTimeout: 60_000,
    // A page waits for a server that plans anew; a busy machine takes its time.
    expect: { poll: { timeout: 20_000 } },
  },
});
