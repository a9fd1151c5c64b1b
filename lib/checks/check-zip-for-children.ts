import { listWords } from "../units/list-words.ts";
import { theFace } from "../solids/the-face.ts";
import type { Solid } from "../solids/types.ts";
import { isYoungerThan } from "./is-younger-than.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";
import { zipPlace, type ZipPlace } from "./zip-place.ts";

const zip = rules["zip-child"];
/** More faces than that are counted, not named. Our choice. */
const mostNamed = 4;

/** Zips that a child could open to reach the foam. */
export const checkZipForChildren: Check = ({ project, covers, solids }) => {
  if (!isYoungerThan(zip.underYears, project.audience)) return [];
  return covers
    .filter(({ closing }) => closing?.kind === "zip")
    .map((cover) => {
      const solid = solids.find(({ id }) => id === cover.solid);
      const place = solid === undefined ? null : zipPlace(cover, solid);
      return {
        id: `zip-child/${cover.solid}`,
        severity: "warning",
        about: `solid/${cover.solid}`,
        message: `A child who opens the zip of the ${cover.solid} cover can crawl in, or bite off foam and choke on it.${placeWords(place)}`,
        remedy: `${moveWords(place, solid)}ake the puller off the slider and open it with a paper clip, or sew the cover shut by hand.`,
        source: zip.source,
      };
    });
};

function placeWords(place: ZipPlace | null): string {
  if (place === null) return "";
  const faces =
    place.along.length > mostNamed
      ? `${place.along.length} faces`
      : listWords(place.along.map(theFace));
  const where = ` The zip runs along ${faces}, `;
  return place.isInReach
    ? `${where}where a child can reach it.`
    : `${where}out of reach of a child on the seat.`;
}

function moveWords(place: ZipPlace | null, solid: Solid | undefined): string {
  if (place === null) return "Keep the zip at the back or underside, t";
  if (!place.isInReach) return "T";
  return solid !== undefined && hasHiddenSeam(solid)
    ? "Open the seam between back and underside instead where the foam still goes in. T"
    : "T";
}

/** Whether the form has a back that meets its underside. */
const hasHiddenSeam = ({ edges, faces }: Solid): boolean => {
  const named = (label: string) => faces.filter((face) => face.label === label).map(({ id }) => id);
  const [back, under] = [named("back"), named("underside")];
  return edges.some(
    ({ faces: [a, b] }) =>
      (back.includes(a) && under.includes(b)) || (back.includes(b) && under.includes(a)),
  );
};
