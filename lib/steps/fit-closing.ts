import { listWords } from "../units/list-words.ts";
import type { Work } from "../estimate/types.ts";
import type { Cover, SewingPass } from "../seams/types.ts";
import { makeStep } from "./make-step.ts";
import { panelName, seamName } from "./name-parts.ts";
import { sewZip } from "./sew-zip.ts";
import type { Step } from "./types.ts";

/** The step that sews a zip, tape or ties to the open edges of one pass. Hand sewing has none. */
export function fitClosing(
  cover: Cover,
  pass: SewingPass,
  { group, work }: { readonly group: string; readonly work: Work },
): Step[] {
  const { closing } = cover;
  if (closing === null) return [];
  const open = cover.seams.filter(({ id }) => pass.seams.includes(id));
  // The first closing has the plain name; a second one is told apart by its seam.
  const isFirst = cover.passes.find(({ state }) => state === "closing") === pass;
  const name = isFirst ? cover.solid : `${cover.solid}-${pass.seams.join("-")}`;
  const names = open.map(({ id }) => seamName(cover, id, work));
  const panels = [...new Set(open.flatMap((seam) => seam.panels))].map((panel) =>
    panelName(cover, panel, work),
  );
  const common = {
    group,
    check: `The open run should be ${work.format.length(pass.length)}.`,
    figure: `closing/${cover.solid}`,
  };
  const underlap = underlapOf(cover, pass);
  const edges = names.length === 0 ? "the open edges" : `the edges of ${listWords(names)}`;
  const zip = sewZip(pass, open, { cover, work, edges });
  switch (closing.kind) {
    case "zip":
      return [
        makeStep({
          ...common,
          id: `zip-${name}`,
          title: "Sew in the zip",
          actions: zip.actions,
          uses: [...zip.uses, "thread"],
          makes: names,
          remedy: "Unpick one side of the zip if the edges do not meet level.",
        }),
      ];
    case "hook-and-loop":
      return [
        makeStep({
          ...common,
          id: `tape-${name}`,
          title: "Sew on the hook-and-loop tape",
          actions: [
            ...makeUnderlap(underlap),
            `Turn in the allowance along ${edges}.`,
            "Press the folds with the iron.",
            ...pinUnderlap(underlap),
            "Pin the hook side to one edge, on the strip where there is one.",
            "Pin the loop side inside the other fold, level with the hooks.",
            "Sew round both tapes with the sewing machine.",
          ],
          uses: [
            ...panels,
            ...(underlap === null ? [] : [underlap]),
            "hook-and-loop tape",
            "iron",
            "pins",
            "sewing machine",
            "thread",
          ],
          makes: names,
          remedy: "Unpick one tape if the edges do not meet level.",
        }),
      ];
    case "ties":
      return [
        makeStep({
          ...common,
          id: `ties-${name}`,
          title: "Sew on the ties",
          actions: [
            ...makeUnderlap(underlap),
            `Turn in the allowance along ${edges}.`,
            "Press the folds with the iron.",
            ...pinUnderlap(underlap),
            "Mark the places of the ties evenly on both edges with tailor's chalk.",
            "Pin a tie at each mark, its end under the fold.",
            "Sew along both folds with the sewing machine.",
            "Sew each tie down once more with a cross.",
          ],
          uses: [
            ...panels,
            ...(underlap === null ? [] : [underlap]),
            "ties",
            "tailor's chalk",
            "iron",
            "pins",
            "sewing machine",
            "thread",
          ],
          makes: names,
          remedy: "Unpick a tie that does not face its partner.",
        }),
      ];
    case "hand-sewn":
      return [];
  }
}

/** What the strip behind this run of the opening is called. */
function underlapOf(cover: Cover, pass: SewingPass): string | null {
  const strips = cover.pieces.filter(({ panel, label }) => panel === null && isUnderlap(label));
  const place = cover.passes.filter(({ state }) => state === "closing").indexOf(pass);
  return strips[place]?.label ?? null;
}

const isUnderlap = (label: string): boolean => label.startsWith("underlap strip");

function makeUnderlap(underlap: string | null): string[] {
  if (underlap === null) return [];
  return [
    `Turn in both ends of the ${underlap} by the allowance.`,
    "Fold the strip in half along its length, right side out.",
    "Press it with the iron.",
  ];
}

const pinUnderlap = (underlap: string | null): string[] =>
  underlap === null ? [] : [`Pin the raw edges of the ${underlap} under one fold.`];
