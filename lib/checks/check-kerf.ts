import type { Mm } from "../plane/types.ts";
import type { Check } from "./types.ts";

/**
 * Width of an ordinary saw cut.
 *
 * @source https://www.slashgear.com/1866963/kerf-cut-woodworking-meaning/, about 1/8 in
 */
export const ordinaryKerf: Mm = 3.175;
/** Share above the ordinary from which a kerf is called wide. Our choice: half as much again. */
const wide = 1.5;

/** Sheets and boards with no kerf given, or an unusually wide one. */
export const checkKerf: Check = ({ sheets, boards, project, format: { length } }) =>
  [...sheets, ...boards].flatMap((plan) => {
    const stock = project.stock.find((one) => one.id === plan.stock);
    if (stock === undefined || !("kerf" in stock)) return [];
    const cuts = plan.used.reduce((sum, used) => sum + used.cuts.length, 0);
    const source =
      "SlashGear, What kerf means in woodworking (about 1/8 in), https://www.slashgear.com/1866963/kerf-cut-woodworking-meaning/";
    const about = `stock/${stock.id}`;
    if (stock.kerf === 0 && cuts > 0) {
      return [
        {
          id: `kerf-missing/${stock.id}`,
          severity: "note" as const,
          about,
          message: `${stock.label} is cut ${cuts} times and no kerf was given. A saw takes about ${length(ordinaryKerf)} a cut.`,
          remedy: "Make a cut in a scrap, measure its width and enter it as `kerf`.",
          source,
        },
      ];
    }
    if (stock.kerf <= ordinaryKerf * wide) return [];
    return [
      {
        id: `kerf-wide/${stock.id}`,
        severity: "note" as const,
        about,
        message: `A kerf of ${length(stock.kerf)} loses ${length(stock.kerf * cuts)} in ${cuts} cuts of ${stock.label}.`,
        remedy: `Use a thinner blade if you have one, about ${length(ordinaryKerf)}, and check the figure on a scrap.`,
        source,
      },
    ];
  });
