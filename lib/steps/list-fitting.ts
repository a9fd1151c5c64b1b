import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import { makeStep } from "./make-step.ts";
import { blockName, coverName, foamName, panelName } from "./name-parts.ts";
import { closeCover } from "./close-cover.ts";
import { anchorCorners } from "./anchor-corners.ts";
import type { Step } from "./types.ts";

/** From this mass on a lift is cautioned, in kilograms. As in `checks`, HSE INDG143 from memory. */
const heavy = 16;

/** Wrap, push in, close; once all covers are filled, anchor. */
export function listFitting(work: Work): Step[] {
  const pairs = work.covers.flatMap((cover) => {
    const solid = work.solids.find(({ id }) => id === cover.solid);
    return solid === undefined ? [] : [{ cover, solid }];
  });
  return [
    ...pairs.flatMap(({ cover, solid }) => [
      ...wrapFoam(solid, work),
      insertFoam(solid, cover, work),
      ...closeCover(cover, work),
    ]),
    ...pairs.flatMap(({ cover, solid }) => anchorCorners(solid, cover, work)),
  ];
}

/** What is pushed into the cover: one block, or the foam glued of several. */
export function wholeFoam(solid: Solid, work: Work): string {
  const [only] = solid.blocks;
  return solid.joints.length === 0 && solid.blocks.length === 1 && only !== undefined
    ? blockName(solid.id, only.id, work)
    : foamName(solid.id);
}

function wrapFoam(solid: Solid, work: Work): Step[] {
  const ease = work.project.solids.find(({ id }) => id === solid.id)?.cover?.ease ?? [0, 0, 0];
  if (!ease.some((one) => one > 0) || ease.some((one) => one < 0)) return [];
  const foam = wholeFoam(solid, work);
  return [
    makeStep({
      id: `wrap-${solid.id}`,
      group: "Fitting",
      title: "Wrap the foam in batting",
      actions: [
        `Lay the ${foam} in the middle of the batting blank.`,
        "Wrap the batting over the top, front and back.",
        "Sew the meeting edges with loose stitches, using the hand needle.",
        "Fold in the ends.",
        "Trim what stands out with the cloth scissors.",
      ],
      uses: [foam, "batting blank", "hand needle", "thread", "cloth scissors"],
      check: "The batting should lie smooth, with no double thickness on the top.",
      remedy: "Trim double layers away and butt the edges.",
      figure: `wrap/${solid.id}`,
    }),
  ];
}

/** Foam gives this much by itself when it is pushed. Our choice. */
const worthSaying = 0.03;

function insertFoam(solid: Solid, cover: Cover, work: Work): Step {
  const foam = wholeFoam(solid, work);
  const name = coverName(solid.id);
  const { opening } = cover;
  const give = opening?.give ?? 0;
  const blocks = work.project.solids.find(({ id }) => id === solid.id)?.blocks ?? [];
  const isRound =
    blocks.length > 0 && blocks.every(({ kind }) => kind === "cylinder" || kind === "frustum");
  const run = opening === null ? "" : ` It is ${work.format.length(opening.run)} long.`;
  const seams = new Set(opening?.seams ?? []);
  const beside = [
    ...new Set(cover.seams.filter(({ id }) => seams.has(id)).flatMap(({ panels }) => panels)),
  ];
  return makeStep({
    id: `insert-${solid.id}`,
    group: "Fitting",
    title: `Put the foam into the ${name}`,
    actions: [
      `Turn the ${name} right side out through the opening.`,
      isRound ? "Push out the seams with a finger." : "Push out each corner with a finger.",
      `Turn the ${foam} the way the up arrows of the panels show.`,
      ...(give > worthSaying
        ? [`Squeeze the ${foam} by about ${Math.round(give * 100)} % as it goes in.`]
        : []),
      `Feed the ${foam} in, far end first.`,
      isRound ? "Work the foam up to the seams all round." : "Work the foam into every corner.",
      "Smooth the allowances towards the sides, where they fill the edges.",
    ],
    uses: [name, foam, ...beside.map((panel) => panelName(cover, panel, work))],
    makes: [`filled ${name}`],
    processes: solid.mass !== null && solid.mass > heavy ? ["heavy-lift"] : [],
    check: `The seams should run along the edges of the foam.${run}`.replace(
      " It is",
      " The opening is",
    ),
    remedy: "Take the foam half out, and push the nearer corners home first.",
    figure: `opening/${solid.id}`,
  });
}
