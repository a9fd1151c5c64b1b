import type { Reporter, TestCase, TestModule } from "vitest/node";

/**
 * Ends the output with one plain line, "N passed, N failed". A file that cannot be loaded, and an
 * error outside any test, count as failed.
 */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const tests = modules.flatMap((each): TestCase[] => [...each.children.allTests()]);
    const inState = (state: string): number =>
      tests.filter((test) => test.result().state === state).length;
    const broken = modules.filter((each) => each.errors().length > 0).length;
    const failed = inState("failed") + broken + errors.length;
    // After the other reporters have had their say.
    process.once("exit", () => console.log(`${inState("passed")} passed, ${failed} failed`));
  }
}
