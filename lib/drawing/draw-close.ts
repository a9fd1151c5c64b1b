import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Closing, Cover } from "../seams/types.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";
import { formatLength } from "../units/index.ts";
import { boxOfInks } from "./boxes.ts";
import { drawBody } from "./draw-body.ts";
import { drawEdges } from "./draw-edges.ts";
import { drawPath } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flowPictures } from "./flow-pictures.ts";
import { hideLines } from "./hide-lines.ts";
import { drawArrow } from "./mark-arrow.ts";
import { makeScene, type Scene } from "./mesh-scene.ts";
import { bestView, edgeLines, pushAxis } from "./open-view.ts";
import { pathOf } from "./paper-path.ts";
import { pictureSize } from "./picture-size.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { seamLetters } from "./seam-letters.ts";
import { spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** The filled cover, pale, with the run that is closed heavy and the way it is closed. */
export function drawClose(
  input: DrawingInput,
  cover: Cover,
  { solid, limits }: { readonly solid: Solid; readonly limits: FigureLimits },
): Figure | null {
  const { closing } = cover;
  if (closing === null) return null;
  const seams = cover.seams.filter(({ state }) => state !== "sewn");
  const ids = new Set([...seams.flatMap(({ edges }) => edges), ...(cover.opening?.edges ?? [])]);
  const edges = solid.edges.filter(({ id }) => ids.has(id));
  const angles = bestView(edges, pushAxis(solid, edges), solid);
  const letters = seams.map(({ id }) => id);
  const fitted = fitScale(
    (scale) =>
      closePicture(solid, cover, {
        edges,
        letters,
        kind: closing.kind,
        scale,
        angles,
        width: limits.width,
      }),
    pictureSize([{ mesh: solid.mesh }], angles),
    limits,
  );
  const run = formatLength(closing.run, input.project);
  return finishFigure(
    {
      id: `close/${cover.solid}`,
      title: titles[closing.kind],
      alt: `The filled cover, pale. The run of ${run} that is closed, seam ${letters.join(", ")}, is drawn heavy. ${words[closing.kind]}.${closing.kind === "hand-sewn" ? " Beside it, ladder stitch: straight across from fold to fold, then along inside the fold." : ""}`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

const titles: Readonly<Record<Closing["kind"], string>> = {
  zip: "Close the zip",
  "hook-and-loop": "Press the tapes together",
  ties: "Tie the ties",
  "hand-sewn": "Sew the opening shut",
};

const words: Readonly<Record<Closing["kind"], string>> = {
  zip: "pull the slider this way",
  "hook-and-loop": "press together this way",
  ties: "tie from the middle outwards",
  "hand-sewn": "sew this way",
};

interface CloseLook {
  readonly edges: readonly SolidEdge[];
  readonly letters: readonly string[];
  readonly kind: Closing["kind"];
  readonly scale: Ratio;
  readonly angles: readonly [number, number];
  readonly width: Mm;
}

function closePicture(solid: Solid, cover: Cover, look: CloseLook): Picture {
  const { edges, letters, kind, scale, angles, width } = look;
  const scene = makeScene([{ mesh: solid.mesh }], spaceView(angles[0], angles[1], scale));
  const body: Ink = { ...drawBody(scene), className: "line ghost" };
  const open = drawEdges(edges, scene, "line open");
  const arrow = alongRun(edges, scene, kind === "ties");
  const inks = [body, open, ...arrow.inks];
  const placed = placeLabels(
    [
      { lines: [words[kind]], style: "label", candidates: roundPlaces(arrow.middle, false) },
      ...seamLetters(cover, letters, { solid, scene }),
    ],
    inks,
  );
  const main: Picture = { inks: [...inks, ...placed.inks], collisions: placed.collisions };
  if (kind !== "hand-sewn") return main;
  const pictures = [main, ladderPicture()];
  return flowPictures(pictures, width, 6);
}

/** An arrow beside the longest stretch of the run that shows, or two from its middle. */
function alongRun(
  edges: readonly SolidEdge[],
  scene: Scene,
  isFromMiddle: boolean,
): { inks: Ink[]; middle: Point } {
  const seen = hideLines(edges.flatMap(edgeLines), scene);
  const length = ({ from, to }: (typeof seen)[number]) =>
    Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [best] = seen.toSorted(
    (a, b) => Number(b.isVisible) - Number(a.isVisible) || length(b) - length(a),
  );
  if (best === undefined || length(best) < 0.01) return { inks: [], middle: [0, 0] };
  const [from, to] = best.from[0] <= best.to[0] ? [best.from, best.to] : [best.to, best.from];
  const box = boxOfInks([drawBody(scene)]);
  const centre: Point = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const reach = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const way: Point = [(to[0] - from[0]) / reach, (to[1] - from[1]) / reach];
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  // Outward, away from the middle of the body.
  const left: Point = [way[1], -way[0]];
  const isOut = left[0] * (middle[0] - centre[0]) + left[1] * (middle[1] - centre[1]) >= 0;
  const out: Point = isOut ? left : [-left[0], -left[1]];
  const half = Math.max(5, Math.min(reach * 0.3, 14));
  const at = (by: Mm): Point => [
    middle[0] + way[0] * by + out[0] * 4,
    middle[1] + way[1] * by + out[1] * 4,
  ];
  const inks = isFromMiddle
    ? [...drawArrow(at(1), at(half), "motion"), ...drawArrow(at(-1), at(-half), "motion")]
    : drawArrow(at(-half), at(half), "motion");
  return { inks, middle: at(0) };
}

/** Ladder stitch: rungs straight across from fold to fold, the thread hidden inside between them. */
function ladderPicture(): Picture {
  const [long, apart]: [Mm, Mm] = [30, 6];
  const xs = [4, 9, 14, 19, 24];
  const inks: Ink[] = [
    ...[0, apart].map((y) =>
      drawPath("line edge", [
        [0, y],
        [long, y],
      ]),
    ),
    {
      kind: "path",
      className: "line cut",
      paths: xs.map((x) =>
        pathOf([
          [x, 0],
          [x, apart],
        ]),
      ),
      isObstacle: true,
    },
    ...xs.slice(1).map((x, i): Ink => {
      const y = i % 2 === 0 ? apart + 1 : -1;
      return drawPath("line seam", [
        [(xs[i] ?? x) + 0.3, y],
        [x - 0.3, y],
      ]);
    }),
    ...drawArrow([xs[4] ?? 24, apart + 1], [long + 3, apart + 1], "stock"),
  ];
  const placed = placeLabels(
    [
      {
        lines: ["ladder stitch"],
        style: "label",
        candidates: [12, 13, 14].map((y) => ({
          at: [long / 2, y],
          anchor: "middle",
          leader: null,
        })),
      },
      { lines: ["fold"], style: "label", candidates: roundPlaces([long - 3, 0]) },
    ],
    inks,
  );
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}
