import type { Step } from "./types.ts";

/** Names an author may use without knowing how the cuts fall out, and the first step each stands for. */
const kinds: readonly (readonly [name: string, stands: (step: Step) => boolean])[] = [
  ["cut-foam", ({ figure }) => figure?.startsWith("slab/") ?? false],
  ["cut-sheets", ({ figure }) => figure?.startsWith("sheet/") ?? false],
  ["cut-boards", ({ figure }) => figure?.startsWith("board/") ?? false],
  ["cut-cloth", ({ id }) => id.startsWith("spread-")],
  ["sew", ({ id }) => id.startsWith("sew-")],
];

/**
 * The id of the step a name stands for: its own id, that of the step it was put together with, or the
 * first step of a kind. Null for none of these.
 */
export function findStep(name: string, steps: readonly Step[]): string | null {
  if (steps.some(({ id }) => id === name)) return name;
  const shared = steps.find(({ alsoNamed = [] }) => alsoNamed.includes(name));
  if (shared !== undefined) return shared.id;
  const stands = kinds.find(([kind]) => kind === name)?.[1];
  return (stands && steps.find(stands)?.id) ?? null;
}

/** Every name a project file may use: the kinds that occur, then the ids. */
export function stepNames(steps: readonly Step[]): string[] {
  return [
    ...kinds.filter(([, stands]) => steps.some(stands)).map(([name]) => name),
    ...steps.flatMap(({ id, alsoNamed = [] }) => [id, ...alsoNamed.filter((name) => name !== id)]),
  ];
}
