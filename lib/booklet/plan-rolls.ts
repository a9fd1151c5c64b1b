import { cordLength } from "../estimate/cord-length.ts";
import type { Format } from "../units/make-format.ts";
import { planLengths } from "../packing/plan-lengths.ts";
import type { CutPlan, Part } from "../packing/types.ts";
import type { Mm } from "../plane/types.ts";
import type { LengthStock, Project, ZipStock } from "../project/types.ts";
import type { Cover } from "../seams/types.ts";

/**
 * Plan the cuts of webbing and cord, and of zip chain that is on hand or serves several covers. Zips
 * of fixed lengths are not cut up: a cover takes one.
 */
export function planRolls(
  project: Project,
  covers: readonly Cover[],
  { length: say }: Format,
): readonly CutPlan[] {
  return project.stock.flatMap((stock) => {
    if (stock.kind !== "length" && stock.kind !== "zip") return [];
    const parts =
      stock.kind === "zip" ? chainParts(stock, covers) : lengthParts(stock, project, covers);
    if (parts.length === 0) return [];
    const { copies } = project;
    const all = parts.map((part) => ({ ...part, copies: part.copies * copies }));
    const plan = planLengths(all, stock, { say });
    return plan === null ? [] : [plan];
  });
}

/** Runs of chain that covers close with, where there is something to plan. */
function chainParts(stock: ZipStock, covers: readonly Cover[]): readonly Part[] {
  if (stock.lengths.length > 0) return [];
  const own = covers.filter(({ closing }) => closing?.kind === "zip" && closing.stock === stock.id);
  if (own.length < 2 && stock.have.length === 0) return [];
  return own.map(({ solid, closing }) =>
    lengthPart(`zip/${solid}`, `zip of ${solid}`, Math.max(closing!.buy, closing!.run)),
  );
}

function lengthParts(
  stock: LengthStock,
  { pieces, solids }: Project,
  covers: readonly Cover[],
): readonly Part[] {
  const cords = solids.flatMap(({ id, cover }): readonly Part[] => {
    const built = covers.find(({ solid }) => solid === id);
    const run = built === undefined ? 0 : cordLength(built);
    if (cover?.piping?.stock !== stock.id || run <= 0) return [];
    return [lengthPart(`cord/${id}`, `cord of ${id}`, run)];
  });
  const own = pieces
    .filter((piece) => piece.stock === stock.id)
    .map((piece) => ({ ...lengthPart(piece.id, piece.label, piece.size[0]), copies: piece.cut }));
  return [...own, ...cords];
}

const lengthPart = (id: string, label: string, length: Mm): Part => ({
  id,
  label,
  copies: 1,
  size: [length],
  outline: null,
  canTurn: false,
});
