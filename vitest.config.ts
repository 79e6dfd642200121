import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/support/seeded-properties.ts"],
    server: { deps: { inline: [/@univerjs\//] } },
    // Forks, since some tests change the time zone, which a thread can't.
    pool: "forks",
    isolate: false,
    maxWorkers: 2,
    // Some tests open a browser or another office program; on a busy machine that takes its time.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
