import type { Lay, LayPlace } from "../packing/types.ts";
import type { Mm, Point, Polygon } from "../plane/types.ts";
import { boxOfPoints, growBox } from "./boxes.ts";
import { clothPieces } from "./cloth-pieces.ts";
import { pieceName } from "./draw-panel.ts";
import { insidePoints } from "./inside-point.ts";
import { LINE_SPACING, measureText, textStyles } from "./measure-text.ts";
import type { Callout } from "./place-beside.ts";
import { isFree, takenBy, takenNear } from "./place-labels.ts";
import type { DrawingInput, Ink, Label, ToPaper } from "./types.ts";

/** Names beside the cloth: whole, by number in one line each, or by number once for like pieces. */
export type LayNaming = "whole" | "short" | "once";

/** Labels on the pieces where they fit; small pieces are named from the margin. */
export function labelLay(
  input: DrawingInput,
  lay: Lay,
  how: {
    readonly toPaper: ToPaper;
    readonly base: readonly Ink[];
    readonly naming: LayNaming;
  },
): { labels: Label[]; callouts: Callout[] } {
  const { toPaper, base, naming } = how;
  const pieces = clothPieces(input);
  const labels: Label[] = [];
  const callouts: Callout[] = [];
  const taken = takenBy(base);
  const once = new Map<string, readonly Point[]>();
  for (const place of lay.places) {
    const piece = pieces.find(({ piece: { id } }) => id === place.piece)?.piece;
    const full = piece ? pieceName(piece) : place.piece.replace(/\/(\d+)$/, " part $1");
    const copy = (piece?.cut ?? 1) * lay.copies > 1 ? ` (${place.copy})` : "";
    const marks = placeMarks(place);
    const region = place.outline.map(toPaper);
    const candidates = insidePoints([region], 60).map(
      (at) => ({ at, anchor: "middle", leader: null }) as const,
    );
    const words = /^[A-Z]+\d+ /.test(full) ? full.split(/ (.*)/s).slice(0, 2) : [full];
    const versions = [
      [...words, ...marks],
      [`${full}${copy}`],
      [`${words[0] ?? full}${copy}`, ...marks],
    ];
    if (copy) versions[0] = [`${words[0] ?? full}${copy}`, ...words.slice(1), ...marks];
    const near = takenNear(taken, growBox(boxOfPoints(region), reachOf(versions)));
    const fitting = versions.find((lines) => {
      if (marks.length > 0 && !marks.every((mark) => lines.includes(mark))) return false;
      return candidates.some((at) => isFree({ lines, style: "name", candidates }, at, near));
    });
    if (fitting) labels.push({ lines: fitting, style: "name", candidates });
    else {
      const to = candidates[0]?.at ?? boxCentre(region);
      const short = words[0] ?? full;
      if (naming === "once") once.set(short, [...(once.get(short) ?? []), to]);
      else {
        const lines =
          naming === "short"
            ? [[`${short}${copy}`, ...marks].join(", ")]
            : [`${full}${copy}`, ...marks];
        callouts.push({ lines, style: "label", to });
      }
    }
  }
  const alike = [...once].map(([name, spots]): Callout => {
    const times = spots.length === 1 ? "" : ` × ${spots.length}`;
    return { lines: [`${name}${times}`], style: "label", to: spots[0]! };
  });
  return { labels, callouts: [...callouts, ...alike] };
}

/** How far beyond a piece a label may reach that stands at a point in it, and a little more. */
function reachOf(versions: readonly (readonly string[])[]): Mm {
  const widths = versions.flat().map((text) => measureText(text, "name"));
  const heights = versions.map((lines) => lines.length * textStyles.name.size * LINE_SPACING);
  return Math.max(...widths, ...heights) + 2;
}

function boxCentre(region: Polygon): Point {
  const box = boxOfPoints(region);
  return [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
}

/** What was done to a piece to lay it, in words. */
export function placeMarks({ turn, flipped }: LayPlace): string[] {
  const whole = Math.round(((turn % 360) + 360) % 360);
  const turned = whole === 0 ? [] : whole === 180 ? ["upside down"] : [`turned ${whole}°`];
  return [...turned, ...(flipped ? ["face down"] : [])];
}
