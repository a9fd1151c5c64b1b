import type { Count, Mm } from "../plane/types.ts";
import { outlineSize } from "../project/rounded-corners.ts";
import type { Axis, BlockSpec, Place, RoundedBlock } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";

/**
 * Blocks stretched so that the form is larger by `ease` along x, y and z (smaller where negative).
 *
 * Everything keeps its share of the whole, so faces that were flush stay flush and every edge still
 * meets its partner at one length. Across a round side both ways shrink alike, so that circles stay
 * circles: by the share of the way in which the side spans the whole form, else by the mean.
 */
export function fitBlocks(
  blocks: readonly BlockSpec[],
  solid: Pick<Solid, "min" | "size">,
  ease: Place,
): readonly BlockSpec[] {
  if (ease.every((part) => part === 0)) return blocks;
  const share = solid.size.map((size, axis) => (size + ease[axis]!) / size) as unknown as Place;
  const move = (at: Place): Place => stretch(at, solid.min, share);
  return blocks.map((block) => fitBlock(block, solid, share, move));
}

const axisNumber: Record<Axis, 0 | 1 | 2> = { x: 0, y: 1, z: 2 };

const stretch = (at: Place, from: Place, share: Place): Place =>
  at.map((part, axis) => from[axis]! + (part - from[axis]!) * share[axis]!) as unknown as Place;

const times = (size: Place, share: Place): Place =>
  size.map((part, axis) => part * share[axis]!) as unknown as Place;

function fitBlock(
  block: BlockSpec,
  solid: Pick<Solid, "min" | "size">,
  share: Place,
  move: (at: Place) => Place,
): BlockSpec {
  switch (block.kind) {
    case "box":
    case "wedge":
      return { ...block, at: move(block.at), size: times(block.size, share) };
    case "rounded": {
      const size = times(block.size, share);
      return { ...block, at: move(block.at), size, radius: fitRadius(block, size, share) };
    }
    case "prism": {
      const along = axisNumber[block.along];
      const [first, second] = [0, 1, 2].filter((axis) => axis !== along) as [0 | 1 | 2, 0 | 1 | 2];
      return {
        ...block,
        at: move(block.at),
        height: block.height * share[along],
        outline: block.outline.map(([u, v]) => [u * share[first], v * share[second]] as const),
      };
    }
    case "cylinder": {
      const along = axisNumber[block.along];
      const across = [0, 1, 2].filter((axis) => axis !== along);
      const round = roundShare(block.diameter, across, solid, share);
      const at = moveRound(block.at, block.diameter, across, round, move);
      return {
        ...block,
        at,
        diameter: block.diameter * round,
        length: block.length * share[along],
      };
    }
    case "frustum": {
      const wide = Math.max(block.base, block.top);
      const round = roundShare(wide, [0, 1], solid, share);
      const at = moveRound(block.at, wide, [0, 1], round, move);
      return {
        ...block,
        at,
        base: block.base * round,
        top: block.top * round,
        height: block.height * share[2],
      };
    }
  }
}

function roundShare(
  diameter: Mm,
  across: readonly number[],
  solid: Pick<Solid, "size">,
  share: Place,
): number {
  const spanning = across.filter((axis) => Math.abs(solid.size[axis]! - diameter) < 1e-6);
  const used = spanning.length > 0 ? spanning : across;
  return used.reduce((sum, axis) => sum + share[axis]!, 0) / used.length;
}

/** The centre moves with the form; the corner of the box round it follows from the new diameter. */
function moveRound(
  at: Place,
  diameter: Mm,
  across: readonly number[],
  round: number,
  move: (at: Place) => Place,
): Place {
  const centre = at.map(
    (part, axis) => part + (across.includes(axis) ? diameter / 2 : 0),
  ) as unknown as Place;
  return move(centre).map(
    (part, axis) => part - (across.includes(axis) ? (diameter * round) / 2 : 0),
  ) as unknown as Place;
}

/** A side that is round from end to end stays so; any other radius takes the share between both axes. */
function fitRadius(block: RoundedBlock, size: Place, share: Place): Mm {
  const shares = outlineSize(share, block.along);
  const [most, fitted] = [block.size, size].map((each) => {
    const runs = outlineSize(each, block.along);
    return runs.map((run, axis) => run / Math.max(1, roundedOn(block, axis)));
  }) as [number[], number[]];
  const full = most.findIndex((limit) => Math.abs(limit - block.radius) < 1e-6);
  const mean = block.radius * ((shares[0] + shares[1]) / 2);
  return Math.min(full < 0 ? mean : fitted[full]!, ...fitted);
}

/** How many rounded corners share a side along one axis of the outline. */
function roundedOn({ corners }: RoundedBlock, axis: number): Count {
  const sides = axis === 0 ? ["front", "back"] : ["left", "right"];
  return Math.max(
    ...sides.map((side) => corners.filter((corner) => corner.split("-").includes(side)).length),
  );
}
