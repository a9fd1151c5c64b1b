import type { Point } from "../plane/types.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { nearestWord } from "../units/nearest-word.ts";
import { inWords } from "./describe.ts";
import type { Ledger } from "./ledger.ts";
import { isDropped, report } from "./ledger.ts";
import { sidesOf } from "./sides-of.ts";
import { suggest } from "./suggest.ts";
import type { BlockSpec } from "./types.ts";

/** The solid a face belongs to. */
export interface FaceSetting {
  readonly solid: string;
  readonly blocks: readonly BlockSpec[];
}

/** Words authors use for a side, and the side that is meant. */
const otherWords: ReadonlyMap<string, string> = new Map([
  ["bottom", "underside"],
  ["base", "underside"],
  ["rear", "back"],
  ["side", "around"],
  ["round", "around"],
]);

/**
 * Read the name of a face and give it back as `<block>/<side>`.
 *
 * The name of the solid serves for its block where it has only one; front, back, left, right, top and
 * underside serve for the side of a prism that squarely faces that way. A name that fits nothing is a
 * fault that lists what would, and comes back unchanged.
 */
export function readFace(
  ledger: Ledger,
  field: string,
  { name, solid, blocks }: FaceSetting & { readonly name: string },
): string {
  const [first = "", side, ...more] = name.split("/");
  const ids = blocks.map(({ id }) => id);
  const example = `${ids[0] ?? "pad"}/top`;
  if (side === undefined || side === "" || more.length > 0) {
    const fix = `Write block/side, such as ${example}`;
    report(ledger, field, `expected a face such as ${example}, got "${name}"`, fix);
    return name;
  }
  if (isDropped(ledger, `solids.${solid}.blocks.${first}`)) return name;
  const only = first === solid && blocks.length === 1 ? blocks[0] : undefined;
  const block = blocks.find(({ id }) => id === first) ?? only;
  if (block === undefined) {
    const fix = suggest(first, ids, "Name a block of this solid");
    report(ledger, field, `names the block ${first}, which this solid does not have`, fix);
    return name;
  }
  const sides = sidesOf(block);
  const meant = sides.includes(side) ? side : sideFacing(block, side);
  if (meant !== null) return `${block.id}/${meant}`;
  const near = otherWords.get(side) ?? nearestWord(side, sides);
  const list = `ts sides are ${inWords(sides)}`;
  const fix =
    near !== null && sides.includes(near)
      ? `Write ${block.id}/${near} if that was meant; i${list}`
      : `I${list}`;
  report(ledger, field, `names ${name}, but a ${block.kind} has no side ${side}`, fix);
  return name;
}

/** Directions of the two axes an outline lies in, by the axis the prism runs along: [right, up]. */
const facing: Readonly<Record<"x" | "y" | "z", Readonly<Record<string, Point>>>> = {
  x: { front: [-1, 0], back: [1, 0], underside: [0, -1], top: [0, 1] },
  y: { left: [-1, 0], right: [1, 0], underside: [0, -1], top: [0, 1] },
  z: { left: [-1, 0], right: [1, 0], front: [0, -1], back: [0, 1] },
};

/** The one side of a prism that squarely faces a direction, or null when none or several do. */
function sideFacing(block: BlockSpec, side: string): string | null {
  if (block.kind !== "prism" || !Object.hasOwn(facing[block.along], side)) return null;
  const [x, y] = facing[block.along][side] ?? [0, 0];
  const { outline } = block;
  // Corners counted clockwise have their outside on the other hand.
  const hand = Math.sign(polygonArea(outline));
  const found = outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from;
    const [along, up] = [to[0] - from[0], to[1] - from[1]];
    const isSquare = Math.hypot(along, up) - hand * (up * x - along * y) < 1e-6;
    return isSquare ? [`side-${index + 1}`] : [];
  });
  return found.length === 1 ? (found[0] ?? null) : null;
}
