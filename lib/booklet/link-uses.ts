import { groupAlike } from "../packing/group-alike.ts";
import type { UsedStock } from "../packing/types.ts";
import type { BookletPage, Use } from "./pages.ts";
import { cutAnchor, pieceAnchor } from "./anchors.ts";
import { slugOf } from "./make-notice.ts";
import { stockLabel } from "./open-hyphens.ts";
import type { Plan } from "./types.ts";

/** Finds the page that shows a thing a step names, if the booklet has one. */
export type LinkUse = (words: string) => Use;

/** Links from the names steps use, "panel P1" or "slab 1 of seat foam", to the pages that show them. */
export function linkUses(plan: Plan, pages: readonly BookletPage[]): LinkUse {
  const targets = new Map(
    [...panelTargets(plan), ...looseTargets(plan), ...cutTargets(plan), ...layTargets(plan)].filter(
      ([, target]) => hasTarget(pages, target),
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

/** "slab 1 of seat foam"; what is cut alike is shown once. */
const cutTargets = ({ slabs, sheets, boards, project }: Plan): readonly Target[] =>
  [...slabs, ...sheets, ...boards].flatMap((plan) => {
    const label = stockLabel(project.stock, plan.stock);
    const family = plan.kind === "length" ? "board" : plan.kind;
    const numberOf = (used: UsedStock): number => plan.used.indexOf(used) + 1;
    return groupAlike(plan).flatMap((alike) => {
      const target = cutAnchor(plan.kind, plan.stock, numberOf(alike[0]));
      return alike.flatMap((used): readonly Target[] => [
        [`${plan.kind} ${numberOf(used)} of ${label}`, target],
        [`${family}/${plan.stock}/${numberOf(used)}`, target],
      ]);
    });
  });

/** The ids of figures that have a page of their own. */
const layTargets = ({ lays, boards }: Plan): readonly Target[] => [
  ...lays.map(({ stock }): Target => [`lay/${stock}`, `lay-${slugOf(stock)}`]),
  ...boards.map(({ stock }): Target => [`board/${stock}`, `cuts-${slugOf(stock)}`]),
];

const hasTarget = (pages: readonly BookletPage[], target: string): boolean =>
  pages.some(
    (page) =>
      page.id === target ||
      ((page.kind === "foam" || page.kind === "cuts") && page.cuts.some(({ id }) => id === target)),
  );
