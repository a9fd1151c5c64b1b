import type { Point } from "../plane/types.ts";
import type { FabricStock } from "../project/types.ts";
import type { boxOfInks } from "./boxes.ts";
import { drawArrow } from "./mark-arrow.ts";
import type { Ink } from "./types.ts";

/** The way the print runs, or that it does not matter. */
export function drawPrintArrow(
  cloth: FabricStock | null,
  { box, isLevel }: { box: ReturnType<typeof boxOfInks>; isLevel: boolean },
): Ink[] {
  if (!cloth || cloth.direction === "any") return [];
  const text = cloth.direction === "one-way" ? "print runs this way" : "print runs both ways";
  const [a, b]: [Point, Point] = isLevel
    ? [
        [box.left + 12, box.bottom + 6],
        [box.left + 32, box.bottom + 6],
      ]
    : [
        [box.right + 6, (box.top + box.bottom) / 2 + 10],
        [box.right + 6, (box.top + box.bottom) / 2 - 10],
      ];
  const both = cloth.direction === "two-way" ? drawArrow(b, a, "stock") : [];
  const label: Ink = isLevel
    ? {
        kind: "text",
        style: "label",
        text,
        at: [b[0] + 3, b[1]],
        anchor: "start",
        isUpright: false,
      }
    : {
        kind: "text",
        style: "label",
        text,
        at: [a[0] + 5, (a[1] + b[1]) / 2],
        anchor: "middle",
        isUpright: true,
      };
  return [...drawArrow(a, b, "stock"), ...both, label];
}
