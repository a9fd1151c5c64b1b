import { pointBounds } from "../plane/loop-bounds.ts";
import { growPolygon } from "../plane/grow-polygon.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { shrinkPolygon } from "../plane/shrink-polygon.ts";
import type { Count, Degrees, Mm, Point, Polygon } from "../plane/types.ts";
import { type GroundKind, fillGround } from "./fill-ground.ts";
import { placeForms } from "./place-forms.ts";
import { turnPoint } from "./turn-point.ts";
import { outlineOf } from "./part-outline.ts";
import type { Part } from "./types.ts";

/** One copy of a part to be placed, with what lies in its holes. */
export interface Waiting {
  readonly part: Part;
  readonly copy: Count;
  readonly guests: readonly Guest[];
}

/** A copy of a part that is cut from what falls out of a hole. */
export interface Guest extends Waiting {
  /** Takes the guest's own rings to where they lie in the part with the hole. */
  readonly lie: (ring: Polygon) => Polygon;
}

/**
 * Put parts into holes of other parts, a kerf from the edge and from one another: what falls out of a
 * hole is stock too. The smallest holes are filled first, so that a part may be in a hole and have
 * others in its own. What is left waits with its guests.
 *
 * @param turns the turns a part may have beside the part with the hole
 */
export function fillHoles(
  copies: readonly Waiting[],
  kerf: Mm,
  turns: (part: Part, host: Part) => readonly Degrees[],
): readonly Waiting[] {
  const hosts = copies.flatMap((host, index) =>
    (host.part.holes ?? [])
      .flatMap((hole) => shrinkPolygon(hole, kerf / 2))
      .map((room) => ({ host: index, room, area: polygonArea(room) })),
  );
  const guests = new Map<Count, Guest[]>();
  const placed = new Set<Count>();
  const withGuests = (index: Count): Waiting => ({
    ...copies[index]!,
    guests: guests.get(index) ?? [],
  });
  for (const { host, room } of hosts.toSorted((a, b) => a.area - b.area || a.host - b.host)) {
    const isFree = (index: Count): boolean => index !== host && !placed.has(index);
    const free = [...copies.keys()].filter(isFree);
    for (const { index, lie } of fillRoom(room, copies, { free, host, kerf, turns })) {
      placed.add(index);
      guests.set(host, [...(guests.get(host) ?? []), { ...withGuests(index), lie }]);
    }
  }
  return [...copies.keys()].filter((index) => !placed.has(index)).map(withGuests);
}

interface RoomRules {
  /** Copies that may go into the room. */
  readonly free: readonly Count[];
  readonly host: Count;
  readonly kerf: Mm;
  readonly turns: (part: Part, host: Part) => readonly Degrees[];
}

/** Which copies go into one room, and how they lie there. */
function fillRoom(
  room: Polygon,
  copies: readonly Waiting[],
  { free, host, kerf, turns }: RoomRules,
): readonly { readonly index: Count; readonly lie: Guest["lie"] }[] {
  const { min, max } = pointBounds(room);
  const [wide, high] = [max[0] - min[0], max[1] - min[1]];
  const parts = [...new Set(free.map((index) => copies[index]!.part))];
  const queues = parts.map((part) => free.filter((index) => copies[index]!.part === part));
  const kinds = parts.map((part, k): GroundKind => {
    const outline = growPolygon(outlineOf(part), kerf / 2);
    const forms = placeForms(outline, turns(part, copies[host]!.part), [false]);
    const fitting = forms.filter(
      ({ width, height }) => width <= wide + 1e-6 && height <= high + 1e-6,
    );
    return { outline, copies: fitting.length === 0 ? 0 : queues[k]!.length, forms: fitting };
  });
  if (kinds.every((kind) => kind.copies === 0)) return [];
  const ground = { outline: room.map(([x, y]): Point => [x - min[0], y - min[1]]), flaws: [] };
  return fillGround(ground, kinds).map(({ piece, form, x, y }) => {
    const [dx, dy] = [form.origin[0] + x + min[0], form.origin[1] + y + min[1]];
    const lie = (ring: Polygon): Polygon =>
      ring.map((point): Point => {
        const [px, py] = turnPoint(point, form.turn);
        return [px + dx, py + dy];
      });
    return { index: queues[piece]!.shift()!, lie };
  });
}
