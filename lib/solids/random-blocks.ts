import type { Count, Mm, Point } from "../plane/types.ts";
import { seededRandom, type Random } from "../plane/random.ts";
import { allCorners, outlineSize } from "../project/rounded-corners.ts";
import type { BlockSpec, Place } from "../project/types.ts";

/** Most blocks in one random form. */
const most: Count = 8;

/**
 * One to eight blocks of every kind near one another, the same for the same seed. Half the forms
 * stand on a 10 mm grid, so that sides are often flush; in the others nothing is likely to meet.
 */
export function randomBlocks(seed: Count): readonly BlockSpec[] {
  const random = seededRandom(seed);
  const grid: Mm = random() < 0.5 ? 10 : 0.1;
  const count = 1 + Math.floor(random() * most);
  const blocks: BlockSpec[] = [];
  for (let i = 0; i < count; i++) blocks.push(randomBlock(`b${i + 1}`, random, grid));
  return blocks;
}

function randomBlock(id: string, random: Random, grid: Mm): BlockSpec {
  const length = (least: Mm, longest: Mm): Mm => {
    const steps = Math.round((least + random() * (longest - least)) / grid);
    // Division by a whole number keeps tenths as exact as they can be.
    return grid < 1 ? steps / 10 : steps * grid;
  };
  const size = (): Mm => length(40, 400);
  const at: Place = [length(0, 300), length(0, 300), length(0, 300)];
  const pick = <T>(choices: readonly T[]): T => choices[Math.floor(random() * choices.length)]!;
  const common = { id, at, foam: null };
  const kind = pick(["box", "box", "box", "prism", "wedge", "cylinder", "rounded", "frustum"]);
  switch (kind) {
    case "prism":
      return {
        ...common,
        kind: "prism",
        outline: randomOutline(size, random),
        height: size(),
        along: pick(["x", "y", "z"]),
      };
    case "wedge": {
      const rises = pick(["back", "front", "left", "right"] as const);
      return { ...common, kind: "wedge", size: [size(), size(), size()], rises };
    }
    case "cylinder": {
      const along = pick(["x", "y", "z"] as const);
      return { ...common, kind: "cylinder", diameter: size(), length: size(), along };
    }
    case "rounded": {
      const sizes: Place = [size(), size(), size()];
      const along = pick(["z", "z", "x", "y"] as const);
      const radius = Math.min(...outlineSize(sizes, along)) / pick([2, 3, 4]);
      const corners = allCorners.filter(() => random() < 0.6);
      return { ...common, kind: "rounded", size: sizes, radius, along, corners };
    }
    case "frustum": {
      const [base, top] = [size(), pick([0, size(), size()])];
      return { ...common, kind: "frustum", base, top, height: size() };
    }
    default:
      return { ...common, kind: "box", size: [size(), size(), size()] };
  }
}

/** A bay, an L or a triangle, walked either way round. */
function randomOutline(size: () => Mm, random: Random): readonly Point[] {
  const [a, b, c, d] = [size(), size(), size(), size()];
  const shapes: readonly (readonly Point[])[] = [
    [
      [0, 0],
      [a + b, 0],
      [a + b, c],
      [a, c + d],
      [0, c],
    ],
    [
      [0, 0],
      [a + b, 0],
      [a + b, c],
      [a, c],
      [a, c + d],
      [0, c + d],
    ],
    [
      [0, 0],
      [a, 0],
      [0, c],
    ],
  ];
  const outline = shapes[Math.floor(random() * shapes.length)]!;
  return random() < 0.5 ? outline : [...outline].reverse();
}
