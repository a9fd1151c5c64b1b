import { balanceOf, type Tilt } from "../checks/balance-of.ts";
import { findSeat, type Seat } from "../checks/find-seat.ts";
import { agesFor } from "../checks/fits-ages.ts";
import { roughLength } from "../checks/rough-length.ts";
import { roughMass } from "../checks/rough-mass.ts";
import { seatDepth } from "../checks/seat-depth.ts";
import { seatFor } from "../checks/seat-for.ts";
import { seatUnderLoad } from "../checks/seat-under-load.ts";
import { sitterFor, type Sitter } from "../checks/sitter-for.ts";
import type { Mm } from "../plane/types.ts";
import type { Solid } from "../solids/types.ts";
import type { Format } from "../units/make-format.ts";
import { firstFigure, type FigureSource } from "./figure-source.ts";
import { titleOf } from "./open-hyphens.ts";
import type { Fact, ServePage, ServePart } from "./pages.ts";
import type { Plan } from "./types.ts";

/** Room for the figure of the balance, so that its facts share the page. */
const room = { width: 165, height: 80 };

/** Whether each seat suits its sitter and how it stands, in figures. Null where nothing is sat upon. */
export function buildServe(plan: Plan, figures: FigureSource, format: Format): ServePage | null {
  const seats = plan.solids.filter(({ id }) => figures.ids.includes(`tipping/${id}`));
  const parts = seats.flatMap((solid) => partFor(solid, plan, { figures, format }));
  if (parts.length === 0) return null;
  return { kind: "serve", id: "will-it-serve", title: "Size and balance", parts };
}

function partFor(
  solid: Solid,
  plan: Plan,
  { figures, format }: { readonly figures: FigureSource; readonly format: Format },
): ServePart[] {
  const seat = findSeat(solid);
  if (seat === null) return [];
  return [
    {
      title: plan.solids.length > 1 ? titleOf(solid.id) : null,
      facts: [
        ...sizeFacts(solid, seat, { plan, format }),
        ...balanceFacts(solid, plan, format),
        ...(solid.mass === null
          ? []
          : [{ label: "Foam alone weighs", value: format.mass(solid.mass) }]),
      ],
      figure: firstFigure(figures, [`tipping/${solid.id}`], room),
    },
  ];
}

interface Printed {
  readonly plan: Plan;
  readonly format: Format;
}

function sizeFacts(solid: Solid, seat: Seat, { plan, format }: Printed): Fact[] {
  const { project } = plan;
  const { audience } = project;
  const deep = { label: "Seat depth", value: format.length(seatDepth(seat, solid)) };
  const high = { label: "Seat height", value: format.length(seat.height) };
  if (audience === null) return [high, deep];
  const sitter = sitterFor(audience);
  const loaded = seatUnderLoad(seat, { solid, project, sitter });
  const rough = (length: number) => roughLength(length, { project, format });
  const suits = seatFor(audience);
  return [
    { label: "Worked out for", value: sitterWords(sitter, project, format) },
    high,
    ...(loaded === null
      ? []
      : [
          {
            label: "Height when sat upon",
            value: `${rough(loaded.height[1])} to ${rough(loaded.height[0])}: the foam sinks by ${rough(loaded.sinks[0])} to ${rough(loaded.sinks[1])}`,
          },
        ]),
    {
      label: "Height that suits",
      value: `${rough(suits.lowest)} to ${rough(suits.highest)}`,
    },
    ...agesFact(sitter, loaded?.height[1] ?? seat.height, seat.height),
    deep,
  ];
}

function sitterWords(
  { years, stature, mass }: Sitter,
  project: Plan["project"],
  format: Format,
): string {
  const who = years === null ? "an adult" : `a child of about ${years}`;
  return `${who}, ${roughLength(stature, { project, format })} tall, ${roughMass(mass, { project, format })}`;
}

function agesFact({ years }: Sitter, lowest: number, highest: number): Fact[] {
  const fits = years === null ? null : agesFor(lowest, highest);
  if (fits === null) return [];
  const marks =
    fits.marks.length > 1
      ? `marks ${fits.marks[0]} and ${fits.marks.at(-1)}`
      : `mark ${fits.marks[0]}`;
  return [
    {
      label: "Suits",
      value: `ages ${fits.from} to ${fits.to} (${marks} of EN 1729-1); outgrown at about ${fits.to + 1}`,
    },
  ];
}

function balanceFacts(solid: Solid, { project }: Plan, format: Format): Fact[] {
  const balance = balanceOf(solid, project.audience);
  if (balance === null) return [];
  const { alone, seated } = balance;
  const rough = (length: Mm) => roughLength(length, { project, format });
  return [
    { label: "Tips over, empty", value: tiltWords(alone, rough) },
    ...(seated === null ? [] : [{ label: "Tips over, sat upon", value: tiltWords(seated, rough) }]),
  ];
}

function tiltWords({ angle, side, height, toEdge }: Tilt, rough: (length: Mm) => string): string {
  const degrees = Math.round((angle * 180) / Math.PI);
  const over = side.name === "rim" ? "any side" : `the ${side.name}`;
  return `when tilted by ${degrees}° over ${over}: its centre is ${rough(height)} up, ${rough(toEdge)} from the edge`;
}
