import type { Mm, Point } from "../plane/types.ts";
import type { Closing, Cover } from "../seams/types.ts";
import { tiePairs } from "../seams/plan-closing.ts";
import { opensRound } from "../seams/place-underlap.ts";
import { formatLength } from "../units/index.ts";
import { ringInk } from "./dot-ink.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath, rectanglePoints } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { stockHatch } from "./hatch-styles.ts";
import { pathOf } from "./paper-path.ts";
import { placeLabels } from "./place-labels.ts";
import { abovePlaces } from "./round-places.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture } from "./types.ts";

/** Length of the open run on the paper, of the seam beyond each end, and of the cloth on either side. */
const [RUN, PAST, CLOTH]: readonly [Mm, Mm, Mm] = [50, 8, 11];

/** The open run laid straight with what closes it; null where nothing is sewn in. */
export function drawClosing(
  input: DrawingInput,
  cover: Cover,
  limits: FigureLimits,
): Figure | null {
  const { closing } = cover;
  if (closing === null || closing.kind === "hand-sewn") return null;
  const picture = closingPicture(input, cover, closing);
  const write = (length: Mm) => formatLength(length, input.project);
  const names = openSeams(cover).map(({ id }) => `seam ${id}`);
  return finishFigure(
    {
      id: `closing/${cover.solid}`,
      title: `${titles[closing.kind]}${opensRound(cover) ? "; the curve is laid straight" : ""}`,
      alt: `The open run of ${write(closing.run)} laid straight, ${names.join(", ")}; the seams go on beyond both ends. ${describe(closing, write)}`,
      scale: "Not to scale",
    },
    picture,
    limits,
  );
}

const titles = {
  zip: "The zip in the open run, wrong side facing you",
  "hook-and-loop": "The tapes along the open run",
  ties: "The ties along the open run",
} as const;

const openSeams = ({ seams }: Cover) => seams.filter(({ state }) => state !== "sewn");

/** The zip that is used: the one on hand, or else the length to buy. */
const zipLength = ({ have, buy, run }: Closing): Mm => Math.max(have, buy) || run;

function describe(closing: Closing, write: (length: Mm) => string): string {
  switch (closing.kind) {
    case "zip":
      return `The zip, ${write(zipLength(closing))}, lies face down with its teeth on the seam line, sewn down both sides and three times across each end.`;
    case "hook-and-loop":
      return `Two tapes, ${write(closing.run)} each, face one another along the two folded edges.`;
    case "ties":
      return `${tiePairs(closing.run)} pairs of ties, ${write(tieStep(closing))} apart, face one another along the two folded edges.`;
    case "hand-sewn":
      return "";
  }
}

/** Between ties, which stand evenly. */
const tieStep = ({ run }: Closing): Mm => run / tiePairs(run);

function closingPicture(input: DrawingInput, cover: Cover, closing: Closing): Picture {
  const write = (length: Mm) => formatLength(length, input.project);
  const { inks: own, labels } = closingInks(closing, write);
  const cloth = [-1, 1].map((side) =>
    drawPath("line ghost", [
      [-PAST, side * CLOTH],
      [RUN + PAST, side * CLOTH],
    ]),
  );
  const beyond: Ink = {
    kind: "path",
    className: "line seam",
    paths: [
      pathOf([
        [-PAST, 0],
        [0, 0],
      ]),
      pathOf([
        [RUN, 0],
        [RUN + PAST, 0],
      ]),
    ],
    isObstacle: true,
  };
  const base = [...cloth, beyond, ...own];
  const size = drawDimension({
    from: [0, CLOTH],
    to: [RUN, CLOTH],
    offset: [0, 5],
    text: `${write(closing.run)} open`,
  });
  const inks = [...base, ...size];
  const placed = placeLabels([...letters(cover), ...labels], inks);
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}

/** The letter of each open seam on the cloth, by its share of the run. */
function letters(cover: Cover): Label[] {
  const open = openSeams(cover);
  const whole = open.reduce((sum, { length }) => sum + length[0], 0) || 1;
  let done = 0;
  return open.map(({ id, length }): Label => {
    const middle = ((done + length[0] / 2) / whole) * RUN;
    done += length[0];
    const candidates = [0, 3, -3, 6, -6, 9, -9].flatMap((shift) =>
      [-7.4, -8, -CLOTH - 4, -CLOTH - 9].map((y) => ({
        at: [middle + shift, y] as Point,
        anchor: "middle" as const,
        leader: null,
      })),
    );
    return { lines: [id], style: "letter", candidates };
  });
}

/** Words on the cloth under what is sewn to it; under the cloth where they find no room. */
function onCloth(text: string): Label {
  const candidates = [7.4, 8, CLOTH + 12].map((y) => ({
    at: [RUN / 2, y] as Point,
    anchor: "middle" as const,
    leader: null,
  }));
  return { lines: [text], style: "label", candidates };
}

interface ClosingInks {
  readonly inks: readonly Ink[];
  readonly labels: readonly Label[];
}

function closingInks(closing: Closing, write: (length: Mm) => string): ClosingInks {
  switch (closing.kind) {
    case "zip":
      return zipInks(closing, write);
    case "hook-and-loop":
      return tapeInks();
    case "ties":
      return tieInks(closing, write);
    case "hand-sewn":
      return { inks: [], labels: [] };
  }
}

function zipInks(closing: Closing, write: (length: Mm) => string): ClosingInks {
  const tape = rectanglePoints([-3, -4], [RUN + 6, 8]);
  const teeth = Array.from({ length: 27 }, (_, i) => {
    const x = (RUN * i) / 26;
    return pathOf([
      [x, -0.9],
      [x, 0.9],
    ]);
  });
  const inks: Ink[] = [
    drawHatch([tape], stockHatch, [{ left: -3, right: RUN + 3, top: -1.5, bottom: 1.5 }]),
    drawPath("line edge", tape, { isClosed: true }),
    { kind: "path", className: "line stock", paths: teeth, isObstacle: true },
    ...[-2.6, 2.6].map((y) =>
      drawPath("line seam heavy", [
        [0, y],
        [RUN, y],
      ]),
    ),
    ...[0, RUN].map((x) =>
      drawPath("line cut", [
        [x, -4],
        [x, 4],
      ]),
    ),
  ];
  const length = zipLength(closing);
  const isLonger = length > closing.run + 0.5;
  return {
    inks,
    labels: [
      {
        lines: [`zip ${write(length)}${isLonger ? ", cut to fit" : ""}`],
        style: "label",
        candidates: [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => abovePlaces([RUN * share, -3])),
      },
      onCloth("sew both sides, ends 3 times"),
    ],
  };
}

function tapeInks(): ClosingInks {
  const tapes = [-5.5, 2].map((top) => rectanglePoints([0, top], [RUN, 3.5]));
  const inks = tapes.flatMap((tape, i): Ink[] => [
    drawHatch([tape], { angles: i === 0 ? [45] : [45, 135], pitch: 1.6, dash: "plain" }),
    drawPath("line cut", tape, { isClosed: true }),
  ]);
  return {
    inks: [
      ...inks,
      ...[-1, 1].map((y) =>
        drawPath("line fold", [
          [0, y],
          [RUN, y],
        ]),
      ),
    ],
    labels: [
      {
        lines: ["loops, inside one edge"],
        style: "label",
        candidates: [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => abovePlaces([RUN * share, -5])),
      },
      onCloth("hooks, on the other edge"),
    ],
  };
}

function tieInks(closing: Closing, write: (length: Mm) => string): ClosingInks {
  const pairs = tiePairs(closing.run);
  const xs = Array.from({ length: pairs }, (_, i) => (RUN * (i + 0.5)) / pairs);
  const tie = (x: Mm, side: number): Ink =>
    drawPath("line cut", [
      [x, side * 1],
      [x, side * 6],
    ]);
  const [first = 0, second = first] = xs;
  return {
    inks: [
      ...[-1, 1].map((y) =>
        drawPath("line fold", [
          [0, y],
          [RUN, y],
        ]),
      ),
      ...xs.flatMap((x) => [tie(x, -1), tie(x, 1)]),
      ...xs.flatMap((x) => [-1, 1].map((side) => ringInk([x, side * 1.6], 0.8, "line pivot"))),
    ],
    labels: [
      {
        lines: [`${pairs} pairs, every ${write(tieStep(closing))}`],
        style: "label",
        candidates: [second, first, ...xs].flatMap((x) => abovePlaces([x, -5])),
      },
    ],
  };
}
