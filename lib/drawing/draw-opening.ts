import type { Mm, Point } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Point3, Solid, SolidEdge } from "../solids/types.ts";
import { formatLength } from "../units/index.ts";
import { boxOfInks } from "./boxes.ts";
import { drawBody } from "./draw-body.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { hideLines } from "./hide-lines.ts";
import { drawArrow } from "./mark-arrow.ts";
import { makeScene } from "./mesh-scene.ts";
import { bestView, edgeLines, pushAxis } from "./open-view.ts";
import { pathOf } from "./paper-path.ts";
import { pictureSize } from "./picture-size.ts";
import { placeLabels } from "./place-labels.ts";
import { seamLetters } from "./seam-letters.ts";
import { nearness, project, type SpaceView, spaceView } from "./space-view.ts";
import type {
  Candidate,
  DrawingInput,
  Figure,
  FigureLimits,
  Ink,
  Label,
  Picture,
} from "./types.ts";

/** The solid with the seams left open drawn heavy and an arrow the way the foam goes in. */
export function drawOpening(
  input: DrawingInput,
  cover: Cover,
  { solid, limits }: { readonly solid: Solid; readonly limits: FigureLimits },
): Figure {
  const edges = solid.edges.filter(({ id }) => cover.opening?.edges.includes(id));
  const away = pushAxis(solid, edges);
  const angles = bestView(edges, away, solid);
  const fitted = fitScale(
    (scale) =>
      openingPicture(solid, cover, { edges, away, view: spaceView(angles[0], angles[1], scale) }),
    pictureSize([{ mesh: solid.mesh }], angles),
    limits,
  );
  const run = formatLength(cover.opening?.run ?? 0, input.project);
  const names = edges.map(({ faces }) => faces.map((id) => faceLabel(solid, id)).join(" to "));
  const letters = (cover.opening?.seams ?? []).join(", ");
  return finishFigure(
    {
      id: `opening/${solid.id}`,
      title: "Where the cover stays open",
      alt: `${run} of seam is left open, drawn heavy: ${names.join(", ")}${letters ? ` (seam ${letters})` : ""}. The arrow shows the way the foam goes in.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function faceLabel(solid: Solid, id: string): string {
  return solid.faces.find((face) => face.id === id)?.label ?? id;
}

function openingPicture(
  solid: Solid,
  cover: Cover,
  how: { readonly edges: readonly SolidEdge[]; readonly away: Point3; readonly view: SpaceView },
): Picture {
  const { edges, away, view } = how;
  const scene = makeScene([{ mesh: solid.mesh }], view);
  const body = drawBody(scene);
  const seen = hideLines(edges.flatMap(edgeLines), scene);
  const paths = (isVisible: boolean) =>
    seen.filter((line) => line.isVisible === isVisible).map(({ from, to }) => pathOf([from, to]));
  const open: Ink[] = [
    { kind: "path", className: "line open hidden", paths: paths(false), isObstacle: false },
    { kind: "path", className: "line open", paths: paths(true), isObstacle: true },
  ];
  const arrow = pushArrow(edges, away, view);
  const inks = [body, ...open, ...arrow.inks];
  const box = boxOfInks(inks);
  const label: Label = {
    lines: ["push the foam in this way"],
    style: "label",
    candidates: roundTail(arrow.tail, box),
  };
  const letters = seamLetters(cover, cover.opening?.seams ?? [], { solid, scene });
  const placed = placeLabels([label, ...letters], inks);
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}

/** An arrow that ends short of the middle of the opening. */
function pushArrow(
  edges: readonly SolidEdge[],
  away: Point3,
  view: SpaceView,
): { inks: Ink[]; tail: Point } {
  const points = edges.flatMap(({ path }) => path);
  const sum = points.reduce((a, b): Point3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [
    0, 0, 0,
  ] as Point3);
  const count = Math.max(1, points.length);
  const middle = project(view, [sum[0] / count, sum[1] / count, sum[2] / count]);
  const direction = project({ ...view, scale: 1 }, away);
  const reach = Math.hypot(...direction);
  // Looking straight along the arrow: let it come from below.
  const out: Point =
    reach > 0.2
      ? [direction[0] / reach, direction[1] / reach]
      : [0, nearness(view, away) > 0 ? 1 : -1];
  const at = (by: Mm): Point => [middle[0] + out[0] * by, middle[1] + out[1] * by];
  return { inks: drawArrow(at(16), at(4), "stock"), tail: at(16) };
}

function roundTail(tail: Point, box: { left: Mm; right: Mm; top: Mm; bottom: Mm }): Candidate[] {
  const near = [5, 8, 12].flatMap((reach): Candidate[] => [
    { at: [tail[0], tail[1] + reach], anchor: "middle", leader: null },
    { at: [tail[0], tail[1] - reach], anchor: "middle", leader: null },
    { at: [tail[0] + reach, tail[1]], anchor: "start", leader: null },
    { at: [tail[0] - reach, tail[1]], anchor: "end", leader: null },
  ]);
  const below: Candidate = { at: [tail[0], box.bottom + 6], anchor: "middle", leader: null };
  return [...near, below];
}
