import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const rule = rules["kerf-wide"];

/** Sheets and boards with no kerf given, or an unusually wide one. */
export const checkKerf: Check = ({ sheets, boards, project, format: { length } }) =>
  [...sheets, ...boards].flatMap((plan) => {
    const stock = project.stock.find((one) => one.id === plan.stock);
    if (stock === undefined || !("kerf" in stock)) return [];
    const cuts = plan.used.reduce((sum, used) => sum + used.cuts.length, 0);
    const { source } = rule;
    const about = `stock/${stock.id}`;
    if (stock.kerf === 0 && cuts > 0) {
      return [
        {
          id: `kerf-missing/${stock.id}`,
          severity: "note" as const,
          about,
          message: `${stock.label} is cut ${cuts} times and no kerf was given. A saw takes about ${length(rule.ordinary)} a cut.`,
          remedy: "Make a cut in a scrap, measure its width and enter it as `kerf`.",
          source,
        },
      ];
    }
    if (stock.kerf <= rule.ordinary * rule.share) return [];
    return [
      {
        id: `kerf-wide/${stock.id}`,
        severity: "note" as const,
        about,
        message: `A kerf of ${length(stock.kerf)} loses ${length(stock.kerf * cuts)} in ${cuts} cuts of ${stock.label}.`,
        remedy: `Use a thinner blade if you have one, about ${length(rule.ordinary)}, and check the figure on a scrap.`,
        source,
      },
    ];
  });
