import { listWords } from "../units/list-words.ts";
import type { Work } from "../estimate/types.ts";
import { placeUnderlap, type UnderlapPlace } from "../seams/place-underlap.ts";
import type { Cover, SewingPass } from "../seams/types.ts";
import { clipSpacing } from "./clip-spacing.ts";
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
  const place = placeUnderlap(pass, cover);
  const named = (panel: string) => panelName(cover, panel, work);
  const edges = names.length === 0 ? "the open edges" : `the edges of ${listWords(names)}`;
  const zip = sewZip(pass, open, { cover, work, edges });
  const folds = [
    ...(place.isRound
      ? [`Snip round edges to just short of the seam line, every ${clipSpacing(work)}.`]
      : []),
    `Turn in the allowance along ${edges}.`,
    "Press the folds with the iron.",
    ...pinUnderlap(underlap, place, { named, work }),
  ];
  const { isRound } = place;
  const behind = place.behind === null ? "the other fold" : `the fold of ${named(place.behind)}`;
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
            ...makeUnderlap(underlap, place, work),
            ...folds,
            ...(place.shape === "straight"
              ? []
              : ["Cut both tapes into short lengths, which follow the curve."]),
            underlap === null
              ? "Pin the hook side to one edge."
              : "Pin the hook side to the strip, beside the fold.",
            `Pin the loop side inside ${behind}, level with the hooks.`,
            "Sew round both tapes with the sewing machine.",
          ],
          uses: [
            ...panels,
            ...(underlap === null ? [] : [underlap]),
            "hook-and-loop tape",
            ...(isRound ? ["cloth scissors"] : []),
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
            ...makeUnderlap(underlap, place, work),
            ...folds,
            "Mark the places of the ties evenly on both edges with tailor's chalk.",
            "Pin a tie at each mark, its end under the fold.",
            "Sew along both folds with the sewing machine.",
            "Sew each tie down once more with a cross.",
          ],
          uses: [
            ...panels,
            ...(underlap === null ? [] : [underlap]),
            "ties",
            ...(isRound ? ["cloth scissors"] : []),
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

/** A strip is folded; a ring cannot be, and is two layers sewn together and turned. */
function makeUnderlap(
  underlap: string | null,
  { shape, freeEdge }: UnderlapPlace,
  work: Work,
): string[] {
  if (underlap === null) return [];
  if (shape === "ring")
    return [
      `Lay the two layers of the ${underlap} together, right sides facing.`,
      `Sew them along both ends and the ${freeEdge} round edge.`,
      `Snip the allowance of that edge every ${clipSpacing(work)}.`,
      "Turn the strip right side out.",
      "Press it with the iron.",
    ];
  return [
    `Turn in both ends of the ${underlap} by the allowance.`,
    "Fold the strip in half along its length, right side out.",
    "Press it with the iron.",
  ];
}

function pinUnderlap(
  underlap: string | null,
  { on, shape, isRound }: UnderlapPlace,
  { named, work }: { readonly named: (panel: string) => string; readonly work: Work },
): string[] {
  if (underlap === null) return [];
  const fold = on === null ? "one fold" : `the fold of ${named(on)}`;
  return [
    ...(isRound
      ? [
          `Snip the raw edges of the ${underlap} every ${clipSpacing(work)}, half the allowance deep.`,
        ]
      : []),
    `Pin them under ${fold}.`,
    ...(shape === "pleated" ? ["Lay small pleats where the strip does not follow the curve."] : []),
  ];
}
