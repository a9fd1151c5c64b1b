import type { Mm } from "../plane/types.ts";
import type { Axis, PieceSpec, Project } from "../project/types.ts";
import type { Point3 } from "../solids/types.ts";

/** A board or sheet part where it stands in the finished thing. */
export interface PlacedPart {
  readonly piece: string;
  readonly min: Point3;
  readonly max: Point3;
}

/**
 * Every part whose place the author gave, copies too. Its length runs along `along`, its thickness
 * along `thin`, its width along what is left; a part without the two is left out.
 */
export function placedParts({ pieces, stock }: Project): PlacedPart[] {
  return pieces.flatMap((piece) => {
    const own = stock.find(({ id }) => id === piece.stock);
    if (own?.kind !== "sheet" && own?.kind !== "board") return [];
    const thickness = own.kind === "sheet" ? own.thickness : Math.min(...own.section);
    const size = boxOf(piece, thickness);
    if (size === null || piece.at === null) return [];
    return [piece.at, ...(piece.others ?? [])].map((min) => ({
      piece: piece.id,
      min,
      max: [min[0] + size[0], min[1] + size[1], min[2] + size[2]] as const,
    }));
  });
}

function boxOf({ size, along, thin }: PieceSpec, thickness: Mm): Point3 | null {
  if (along === null || thin === null || along === thin) return null;
  const sizeAlong = (axis: Axis) =>
    axis === along ? size[0] : axis === thin ? thickness : size[1];
  return [sizeAlong("x"), sizeAlong("y"), sizeAlong("z")];
}
