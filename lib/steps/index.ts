export type { Caution, Step } from "./types.ts";
export { lintSteps } from "./lint-steps.ts";
export { listStepFaults } from "./list-step-faults.ts";
export { listComputedSteps, listSteps } from "./list-steps.ts";
export { listSupplied } from "./list-supplied.ts";
export { listTools } from "./list-tools.ts";
