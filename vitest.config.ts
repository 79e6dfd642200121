import { defineConfig } from "vitest/config";
import { nonsenseModule } from "./src/local/nonsense.ts";
import { promptModule } from "./src/local/prompt-engine.ts";
import { DearFilesFirst } from "./tests/support/dear-files-first.ts";

export default defineConfig(({ mode }) => ({
  plugins: [
    {
      // In mode nonsense every message is its name and facts: a test that reads a sentence is red.
      name: "nonsense",
      load: (id) => (mode === "nonsense" ? nonsenseModule(id) : null),
    },
    { name: "prompt engine", load: promptModule },
  ],
  test: {
    // What the tests bundle and start says nonsense too.
    env: mode === "nonsense" ? { NONSENSE: "1" } : {},
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/support/seeded-properties.ts"],
    server: { deps: { inline: [/@univerjs\//] } },
    // Forks, since some tests change the time zone, which a thread can't.
    pool: "forks",
    isolate: false,
    // As many as a small machine has cores: a third one took 6 % longer, with its own imports and browser.
    maxWorkers: 2,
    sequence: { sequencer: DearFilesFirst },
    // Workbooks live for a moment: with room for them the collector runs less often.
    execArgv: ["--max-semi-space-size=128"],
    // No test is red because a machine is busy: these limits only end what hangs. Limits of speed are
    // CPU time and stand in the bench.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    expect: { poll: { timeout: 120_000, interval: 15 } },
  },
}));
