import type { BookletPage, Use } from "./pages.ts";
import { cutAnchor, pieceAnchor } from "./anchors.ts";
import { stockLabel } from "./open-hyphens.ts";
import type { Plan } from "./types.ts";

/** Finds the page that shows a thing a step names, if the booklet has one. */
export type LinkUse = (words: string) => Use;

/** Links from the names steps use, "panel P1" or "slab 1 of seat foam", to the pages that show them. */
export function linkUses(plan: Plan, pages: readonly BookletPage[]): LinkUse {
  const targets = new Map(
    [...panelTargets(plan), ...looseTargets(plan), ...cutTargets(plan)].filter(([, target]) =>
      hasTarget(pages, target),
    ),
  );
  return (words) => ({ words, target: targets.get(words) ?? null });
}

type Target = readonly [words: string, target: string];

/** "panel P1", and "panel P1 of pad" for where several covers have one. */
const panelTargets = ({ covers }: Plan): readonly Target[] =>
  covers.flatMap((cover) =>
    cover.pieces.flatMap((piece): readonly Target[] => {
      if (piece.panel === null) return [];
      const target = pieceAnchor(piece, cover);
      const ofCover: Target = [`panel ${piece.panel} of ${cover.solid}`, target];
      const isShared = covers.some(
        (other) => other !== cover && other.panels.some(({ id }) => id === piece.panel),
      );
      return isShared ? [ofCover] : [ofCover, [`panel ${piece.panel}`, target]];
    }),
  );

const looseTargets = ({ pieces }: Plan): readonly Target[] =>
  pieces.map((piece) => [piece.label, pieceAnchor(piece, null)]);

/** "slab 1 of seat foam". */
const cutTargets = ({ slabs, sheets, boards, project }: Plan): readonly Target[] =>
  [...slabs, ...sheets, ...boards].flatMap(({ kind, stock, used }) =>
    used.map((_, i): Target => {
      const label = stockLabel(project.stock, stock);
      return [`${kind} ${i + 1} of ${label}`, cutAnchor(kind, stock, i + 1)];
    }),
  );

const hasTarget = (pages: readonly BookletPage[], target: string): boolean =>
  pages.some(
    (page) =>
      page.id === target ||
      ((page.kind === "foam" || page.kind === "cuts") && page.cuts.some(({ id }) => id === target)),
  );
