import { isYoungerThan } from "./is-younger-than.ts";
import { inMillimetres } from "./in-millimetres.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const { cords: cord } = rules;

/** Ties and narrow strips within reach of a child under three. */
export const checkCords: Check = ({ project, covers, format: { length } }) => {
  if (!isYoungerThan(cord.underYears, project.audience)) return [];
  const ties = covers
    .filter(({ closing }) => closing?.kind === "ties")
    .map(({ solid }) => ({
      id: `cords/${solid}/ties`,
      about: `solid/${solid}`,
      what: `The ties of the ${solid} cover`,
    }));
  const strips = project.solids.flatMap(({ id, cover }) =>
    (cover?.attach ?? []).flatMap((attachment) => {
      const piece = project.pieces.find((one) => one.id === attachment.piece);
      if (piece === undefined) return [];
      const [narrow, long] = [Math.min(...piece.size), Math.max(...piece.size)];
      if (narrow >= cord.narrowest || long <= cord.longest) return [];
      return [
        {
          id: `cords/${id}/${attachment.id}`,
          about: `piece/${piece.id}`,
          what: `${piece.label}, ${length(long)} long,`,
        },
      ];
    }),
  );
  return [...ties, ...strips].map(({ id, about, what }) => ({
    id,
    severity: "warning",
    about,
    message: `${what} can wind round the neck of a child under ${cord.underYears}.`,
    remedy:
      `Keep every free end to ${inMillimetres(cord.longest)} or less, and every loop to ${inMillimetres(cord.noose)} round, ` +
      `and take no cord thinner than ${inMillimetres(cord.thinnest)}. ` +
      "A zip or hand sewing has no ends at all.",
    source: cord.source,
  }));
};
