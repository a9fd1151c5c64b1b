import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/global-setup.ts"],
    reporters: ["default", "tests/count-reporter.ts"],
    // Only what hangs is stopped: how fast things go is measured by `npm run bench`.
    testTimeout: 300_000,
    hookTimeout: 600_000,
  },
});
