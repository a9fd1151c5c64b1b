import { randomBelow, seededRandom } from "../plane/random.ts";
import type { Random } from "../plane/random.ts";
import type { Count } from "../plane/types.ts";
import type { SourceFile } from "../project/types.ts";

/**
 * A project file of the kind people write, the same for the same seed: covered foam of one to four
 * blocks, loose pieces of cloth, or things of sheet and board, in any unit.
 */
export function randomProject(seed: Count): SourceFile {
  const random = seededRandom(seed);
  const kind = randomBelow(random, 10);
  const parts =
    kind < 7 ? coveredFoam(random) : kind < 9 ? sheetAndBoard(random) : looseCloth(random);
  const data = {
    title: `Generated project ${seed}`,
    units: pick(random, ["cm", "mm", "in"]),
    copies: pick(random, [1, 1, 1, 1, 1, 6]),
    ...parts,
  };
  // JSON is YAML too.
  return {
    file: `content/generated-${seed}.md`,
    text: `---\n${JSON.stringify(data)}\n---\nText.\n`,
  };
}

const pick = <T>(random: Random, choices: readonly T[]): T =>
  choices[randomBelow(random, choices.length)]!;

/** A length on a grid of half a centimetre, with its unit. */
const between = (random: Random, least: Count, most: Count): Count =>
  Math.round(2 * (least + random() * (most - least))) / 2;
const cm = (length: Count): string => `${length} cm`;

function coveredFoam(random: Random): object {
  const thick = pick(random, [5, 8, 10]);
  const blocks: Record<string, object> = {};
  // Blocks stand beside or on the first, flush with it more often than not.
  const [width, depth, height] = [
    between(random, 20, 110),
    between(random, 20, 60),
    between(random, 5, 40),
  ];
  blocks["base"] = firstBlock(random, [width, depth, height]);
  if (random() < 0.5) {
    const across = pick(random, [width, width, between(random, 10, width)]);
    const size = [across, between(random, 5, 20), between(random, 10, 40)].map(cm);
    blocks["back"] = { box: size, at: [0, depth, 0].map(cm) };
  }
  if (random() < 0.35) {
    const size = [between(random, 5, 25), depth, between(random, 5, height + 10)].map(cm);
    blocks["arm"] = { box: size, at: [width, 0, 0].map(cm) };
  }
  if (random() < 0.15) {
    const size = [between(random, 5, 25), depth, between(random, 5, height + 10)];
    blocks["left-arm"] = { box: size.map(cm), at: [-size[0]!, 0, 0].map(cm) };
  }
  const closing = pick(random, ["zip", "zip", "ties", "hook-and-loop", "hand-sewn"]);
  return {
    stock: {
      slab: { kind: "slab", size: [200, 100, thick].map(cm), have: pick(random, [0, 1, 3]) },
      print: cloth(random),
      chain: { kind: "zip", lengths: [20, 40, 60, 80].map(cm) },
    },
    solids: {
      form: {
        foam: "slab",
        blocks,
        cover: {
          fabric: "print",
          seamAllowance: pick(random, ["1 cm", "1.5 cm"]),
          fit: pick<object | string>(random, [{ smallerBy: "1 cm" }, "exact"]),
          panels: pick(random, ["auto", "fewest", "least-cloth", "upright", "plain"]),
          closing: closing === "zip" ? { kind: closing, stock: "chain" } : { kind: closing },
          // A wedge has no top to pipe round.
          ...(random() < 0.2 && !("wedge" in blocks["base"])
            ? { piping: { cord: "5 mm", along: ["base/top"] } }
            : {}),
        },
      },
    },
    ...(random() < 0.3 ? { pieces: { handle: clothPiece(random) } } : {}),
  };
}

/** Mostly a box; else a bay, a round, a slope or a block with round corners. */
function firstBlock(
  random: Random,
  [width, depth, height]: readonly [Count, Count, Count],
): object {
  const inset = between(random, 2, width / 3);
  switch (randomBelow(random, 8)) {
    case 0: {
      const outline = [
        [0, 0],
        [width, 0],
        [width - inset, depth],
        [inset, depth],
      ];
      return { prism: outline.map((corner) => corner.map(cm)), height: cm(height) };
    }
    case 1:
      return { cylinder: { diameter: cm(depth), length: cm(height) } };
    case 2:
      return { wedge: { size: [width, depth, height].map(cm), rises: "back" } };
    case 3: {
      const radius = cm(Math.max(2, Math.floor(Math.min(width, depth) / 4)));
      return {
        rounded: {
          size: [width, depth, height].map(cm),
          radius,
          corners: ["front-left", "front-right"],
        },
      };
    }
    default:
      return { box: [width, depth, height].map(cm) };
  }
}

const cloth = (random: Random): object => ({
  kind: "fabric",
  width: cm(pick(random, [110, 140, 150])),
  selvedge: "1 cm",
  direction: pick(random, ["any", "one-way", "two-way"]),
  ...(random() < 0.3 ? { repeat: { along: cm(32), across: cm(23) } } : {}),
});

const clothPiece = (random: Random): object => ({
  stock: "print",
  size: [between(random, 10, 90), between(random, 4, 60)].map(cm),
  cut: pick(random, [1, 2, 4]),
  seamAllowance: "1 cm",
});

const looseCloth = (random: Random): object => ({
  stock: { print: cloth(random) },
  pieces: Object.fromEntries(
    ["front", "pocket", "strap", "lining"]
      .slice(0, 1 + randomBelow(random, 4))
      .map((name) => [name, clothPiece(random)]),
  ),
});

function sheetAndBoard(random: Random): object {
  const [width, depth] = [between(random, 20, 55), between(random, 15, 50)];
  const names = ["bottom", "side", "end", "lid", "shelf"].slice(0, 1 + randomBelow(random, 5));
  return {
    stock: {
      ply: {
        kind: "sheet",
        size: [122, 61].map(cm),
        thickness: "12 mm",
        kerf: "3 mm",
        grain: "along",
      },
      batten: { kind: "board", section: ["34 mm", "19 mm"], length: "240 cm", kerf: "3 mm" },
    },
    pieces: {
      ...Object.fromEntries(
        names.map((name) => [
          name,
          {
            stock: "ply",
            size: [width, between(random, 8, depth)].map(cm),
            cut: pick(random, [1, 2]),
          },
        ]),
      ),
      rail: { stock: "batten", length: cm(between(random, 15, 120)), cut: pick(random, [2, 3, 6]) },
    },
  };
}
