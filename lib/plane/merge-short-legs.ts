import { segmentLength } from "../plane/segments.ts";
import type { Loop, Mm, Segment } from "../plane/types.ts";

/**
 * An outline without the legs that nobody can lay off: each straight leg shorter than `least` is taken
 * into the leg after it, whose start moves by less than `least`. Never below three legs.
 */
export function mergeShortLegs(loop: Loop, least: Mm): Loop {
  let left = loop;
  for (;;) {
    const short = left.findIndex(
      (segment) => segment.kind === "line" && segmentLength(segment) < least,
    );
    if (short < 0 || left.length <= 3) return left;
    left = takeOut(left, short);
  }
}

function takeOut(loop: Loop, index: number): Loop {
  const { from, to } = loop[index]!;
  const after = (index + 1) % loop.length;
  const before = (index + loop.length - 1) % loop.length;
  // A curve keeps its ends: then the straight leg before it takes the short one in.
  const isAfterStraight = loop[after]!.kind === "line" || loop[before]!.kind === "arc";
  return loop.flatMap((segment, i): readonly Segment[] => {
    if (i === index) return [];
    if (isAfterStraight && i === after) return [{ ...segment, from }];
    if (!isAfterStraight && i === before) return [{ ...segment, to }];
    return [segment];
  });
}
