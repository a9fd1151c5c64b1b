import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/global-setup.ts"],
    reporters: ["default", "tests/count-reporter.ts"],
    testTimeout: 60_000,
    hookTimeout: 180_000,
  },
});
