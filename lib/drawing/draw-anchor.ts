import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { CoverSpec } from "../project/types.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";
import { anchoredEdges } from "../solids/anchored-edges.ts";
import { formatLength } from "../units/index.ts";
import { drawBody } from "./draw-body.ts";
import { drawEdges } from "./draw-edges.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flowPictures } from "./flow-pictures.ts";
import { stockHatch } from "./hatch-styles.ts";
import { hideLines } from "./hide-lines.ts";
import { drawArrow } from "./mark-arrow.ts";
import { makeScene } from "./mesh-scene.ts";
import { bestView, edgeLines } from "./open-view.ts";
import { pictureSize } from "./picture-size.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture } from "./types.ts";

type Anchor = NonNullable<CoverSpec["anchor"]>;

/** The inward corners, heavy, and one of them cut through with what holds the cloth down; null without. */
export function drawAnchor(
  { project }: DrawingInput,
  { solid, limits }: { readonly solid: Solid; readonly limits: FigureLimits },
): Figure | null {
  const edges = anchoredEdges(solid);
  if (edges.length === 0) return null;
  const anchor = project.solids.find(({ id }) => id === solid.id)?.cover?.anchor ?? "pad";
  const angles = bestView(edges, [0, -1, 0], solid);
  const write = (length: Mm) => formatLength(length, project);
  const fitted = fitScale(
    (scale) =>
      flowPictures(
        [cornersPicture(solid, edges, { scale, angles, write }), cutPicture(anchor)],
        limits.width,
        6,
      ),
    pictureSize([{ mesh: solid.mesh }], angles),
    limits,
  );
  return finishFigure(
    {
      id: `anchor/${solid.id}`,
      title: "The inward corner, and cut through",
      alt: `The inward edges are drawn heavy: ${edges.map(({ length }) => write(length)).join(", ")}. Cut through the corner, not to scale: ${words[anchor]}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

const words: Readonly<Record<Anchor, string>> = {
  pad: "a loose pad of foam pushed into the corner, on top of the cloth",
  tacks: "small tacks through the cloth into the foam",
  seam: "long stitches through the seam into the foam",
};

function cornersPicture(
  solid: Solid,
  edges: readonly SolidEdge[],
  how: {
    readonly scale: Ratio;
    readonly angles: readonly [number, number];
    readonly write: (length: Mm) => string;
  },
): Picture {
  const { scale, angles, write } = how;
  const scene = makeScene([{ mesh: solid.mesh }], spaceView(angles[0], angles[1], scale));
  const inks: Ink[] = [
    { ...drawBody(scene), className: "line ghost" },
    drawEdges(edges, scene, "line open"),
  ];
  const labels = edges.flatMap((edge): Label[] => {
    const seen = hideLines(edgeLines(edge), scene).filter(({ isVisible }) => isVisible);
    const middles = seen.map(({ from, to }): Point => [
      (from[0] + to[0]) / 2,
      (from[1] + to[1]) / 2,
    ]);
    return middles.length === 0
      ? []
      : [
          {
            lines: [write(edge.length)],
            style: "label",
            candidates: middles.flatMap((at) => roundPlaces(at)),
          },
        ];
  });
  const placed = placeLabels(labels, inks);
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}

/** The corner of seat and back cut through, the cloth heavy. */
function cutPicture(anchor: Anchor): Picture {
  const foam: Point[] = [
    [0, 16],
    [17, 16],
    [17, 0],
    [26, 0],
    [26, 26],
    [0, 26],
  ];
  const corner: Point = [17, 16];
  const cloth: Point[] = [
    [-2, 14.6],
    [15.6, 14.6],
    [15.6, -2],
  ];
  const base: Ink[] = [
    drawHatch([foam], stockHatch),
    drawPath("line ghost", foam, { isClosed: true }),
    drawPath("line cut", cloth),
  ];
  const { inks, label } = remedies[anchor](corner);
  const all = [...base, ...inks];
  const placed = placeLabels(
    [label, { lines: ["cloth"], style: "label", candidates: roundPlaces([3, 14.6]) }],
    all,
  );
  return { inks: [...all, ...placed.inks], collisions: placed.collisions };
}

type Remedy = (corner: Point) => { readonly inks: readonly Ink[]; readonly label: Label };

const remedies: Readonly<Record<Anchor, Remedy>> = {
  pad: () => {
    const pad: Point[] = [
      [7.5, 14],
      [15, 14],
      [15, 6.5],
    ];
    return {
      inks: [
        drawHatch([pad], { angles: [45, 135], pitch: 1.8, dash: "plain" }),
        drawPath("line cut", pad, { isClosed: true }),
        ...drawArrow([2, 1], [9.5, 8.5], "motion"),
      ],
      label: { lines: ["loose pad"], style: "label", candidates: roundPlaces([2, 1], false) },
    };
  },
  tacks: ([x, y]) => {
    const loop: Point[] = [
      [x - 3.6, y - 1.4],
      [x - 3.2, y + 5],
      [x - 0.8, y + 5],
      [x - 0.4, y - 1.4],
    ];
    return {
      inks: [drawPath("line heavy", loop)],
      label: {
        lines: ["tack into", "the foam"],
        style: "label",
        candidates: roundPlaces([x - 2.2, y + 4.5]),
      },
    };
  },
  seam: ([x, y]) => ({
    inks: [
      drawPath("line cut", [
        [x - 1.4, y - 1.4],
        [x + 3.5, y + 3.5],
      ]),
      drawPath("line seam heavy", [
        [x - 1.4, y - 1.4],
        [x + 6, y + 7.5],
      ]),
    ],
    label: {
      lines: ["stitches through the", "seam into the foam"],
      style: "label",
      candidates: roundPlaces([x + 4, y + 5]),
    },
  }),
};
