import type { Mm, Point, Ratio, Shape } from "../plane/types.ts";
import type { BlockSpec } from "../project/types.ts";
import { formatLength } from "../units/index.ts";
import { alongPath } from "./along-path.ts";
import { type BlockOutline, blockOutline } from "./block-outline.ts";
import { boxOfInks, boxOfPoints } from "./boxes.ts";
import { drawHatch } from "./draw-hatch.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { wasteHatch } from "./hatch-styles.ts";
import { markPolygon, markShape } from "./mark-outline.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { pieceSizes } from "./piece-sizes.ts";
import { placeLabels } from "./place-labels.ts";
import type {
  Candidate,
  DrawingInput,
  Figure,
  FigureLimits,
  Ink,
  Label,
  Picture,
} from "./types.ts";

/** The outline of a shaped block on its blank, with the sizes to mark it by. */
export function drawBlock(
  input: DrawingInput,
  spec: BlockSpec,
  { id, limits }: { readonly id: string; readonly limits: FigureLimits },
): Figure | null {
  const outline = blockOutline(spec);
  if (!outline) return null;
  const box = boxOfPoints(
    flattenPath(
      pathOfLoop(outline.loop, (point) => point),
      0.001,
    ),
  );
  const size: [Mm, Mm] = [box.right - box.left, box.bottom - box.top];
  const fitted = fitScale((scale) => blockPicture(input, outline, { scale, size }), size, limits);
  const write = (length: Mm) => formatLength(length, input.project);
  const corners = outline.loop.map(
    ({ from: [x, y] }) => `${write(x - box.left)} along and ${write(y - box.top)} up`,
  );
  return finishFigure(
    {
      id,
      title: `Shape of the ${spec.id}`,
      alt: `The ${spec.id} ${outline.from}, ${write(size[0])} by ${write(size[1])}, and ${write(outline.depth)} deep. Corners, from the lower left of the blank: ${corners.join("; ")}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function blockPicture(
  { project }: DrawingInput,
  { loop, from, depth }: BlockOutline,
  { scale, size }: { readonly scale: Ratio; readonly size: readonly [Mm, Mm] },
): Picture {
  const toPaper = flatView(scale);
  const shape: Shape = { outer: loop, holes: [] };
  const ring = flattenPath(pathOfLoop(loop, toPaper), 0.05);
  const box = boxOfPoints(
    flattenPath(
      pathOfLoop(loop, (point) => point),
      0.001,
    ),
  );
  const blank: Point[] = [
    [box.left, box.top],
    [box.right, box.top],
    [box.right, box.bottom],
    [box.left, box.bottom],
  ];
  // What is cut away: the blank less the outline, the ring counted the other way round.
  const waste = drawHatch(
    [blank.map(toPaper).reverse(), ...opposite(ring, blank.map(toPaper))],
    wasteHatch,
  );
  const inks: Ink[] = [
    waste,
    ...markPolygon(blank, "ghost")(toPaper),
    ...markShape(shape, "cut")(toPaper),
    ...pieceSizes({ finished: shape, outline: shape, cutSize: size }, toPaper, project),
  ];
  const around = boxOfInks(inks);
  const words: Label = {
    lines: [from, `${formatLength(depth, project)} deep`],
    style: "label",
    candidates: [
      { at: [(around.left + around.right) / 2, around.top - 7], anchor: "middle", leader: null },
    ],
  };
  const placed = placeLabels(
    [words, ...radiusLabels(loop, scale, (r) => formatLength(r, project))],
    inks,
  );
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}

/** The ring, turned so that it cuts a hole in the blank under the non-zero rule. */
function opposite(ring: readonly Point[], blank: readonly Point[]): Point[][] {
  const turn = (points: readonly Point[]) =>
    points.reduce((sum, [x, y], index) => {
      const [nx, ny] = points[(index + 1) % points.length] ?? [x, y];
      return sum + x * ny - nx * y;
    }, 0);
  const isAlike = turn(ring) > 0 === turn([...blank].reverse()) > 0;
  return [isAlike ? [...ring].reverse() : [...ring]];
}

/** The radius of each rounded corner, told once for like ones. */
function radiusLabels(
  loop: BlockOutline["loop"],
  scale: Ratio,
  write: (radius: Mm) => string,
): Label[] {
  const toPaper = flatView(scale);
  const told = new Set<string>();
  return loop.flatMap((segment): Label[] => {
    if (segment.kind === "line") return [];
    const radius = Math.hypot(
      segment.from[0] - segment.centre[0],
      segment.from[1] - segment.centre[1],
    );
    const text = `radius ${write(radius)}`;
    if (told.has(text)) return [];
    told.add(text);
    const place = alongPath(flattenPath(pathOfLoop([segment], toPaper, false), 0.05), 0.5);
    if (!place) return [];
    const centre = toPaper(segment.centre);
    const [dx, dy] = [centre[0] - place.at[0], centre[1] - place.at[1]];
    const reach = Math.hypot(dx, dy) || 1;
    const candidates = [12, 16, 20, 26, 8, 34].map((by): Candidate => ({
      at: [place.at[0] + (dx / reach) * by, place.at[1] + (dy / reach) * by],
      anchor: "middle",
      leader: place.at,
    }));
    return [{ lines: [text], style: "label", candidates }];
  });
}
