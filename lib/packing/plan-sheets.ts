import type { Mm } from "../plane/types.ts";
import type { SheetStock } from "../project/types.ts";
import { type CutJob, content, holdsItem } from "./cut-job.ts";
import { listItems } from "./list-items.ts";
import { chooseNested } from "./choose-nested.ts";
import { type CutOptions, type SizeRules, cutWords, makePlans } from "./make-plans.ts";
import { nameShortage } from "./name-shortage.ts";
import { packCuts } from "./pack-cuts.ts";
import type { CutPlan, Part, Shortfall } from "./types.ts";

/** One size of a sheet. */
export type SheetSize = SheetStock & SizeRules;

/**
 * Cut sheet parts by cuts that go right across, kerf counted. A part with a free outline is first
 * cut out as its bounding rectangle; where the sheets may be cut freely, true outlines are nested
 * instead if that takes less. Parts may be turned by a quarter only where both the part and
 * the sheet allow it; otherwise their first size lies along the grain. Sheets on hand come first.
 * Parts too large for every sheet are left out and named in `short`.
 */
export function planSheets(
  parts: readonly Part[],
  sheets: readonly SheetSize[],
  options: CutOptions = {},
): readonly CutPlan[] {
  if (sheets.length === 0) return [];
  const words = cutWords(options);
  const { say } = words;
  const fitting = parts.filter((part) => fitsSome(part, sheets));
  const job = makeSheetJob(fitting, sheets);
  const packed = packCuts(job, options.tries);
  const shortage = nameShortage(
    sheets.map(({ label, have, isSold = true }) => ({ label, have, isSold })),
    packed,
    job,
    (trimmed) => makeSheetJob(trimmed, sheets),
    fitting,
    words,
  );
  const tooLarge = parts
    .filter((part) => !fitting.includes(part))
    .map((part) => nameTooLarge(part, sheets, say));
  const stocks = sheets.map(({ id, size, have, price, isSold = true }) => ({
    id,
    kind: "sheet" as const,
    size,
    have,
    price,
    isSold,
  }));
  const short = [...tooLarge, ...shortage];
  const across = makePlans(job, stocks, packed, short, fitting, options);
  const isFree = sheets.some(({ cutting }) => cutting === "free");
  return isFree ? chooseNested(across, fitting, { sheets, tooLarge, options }) : across;
}

function makeSheetJob(parts: readonly Part[], sheets: readonly SheetSize[]): CutJob {
  const kerf = Math.max(...sheets.map((sheet) => sheet.kerf));
  const hasPrices = sheets.every(({ price, isSold = true }) => !isSold || price !== null);
  return {
    kerf,
    items: listItems(parts, kerf, (part) => waysToLie(part, sheets)),
    stocks: sheets.map(({ size, have, price, isSold = true, isFirst = false }) => ({
      size: size.map((each) => each + kerf),
      have,
      cost: (hasPrices ? price : null) ?? content(size) / 1e4,
      isSold,
      isFirst,
    })),
  };
}

function waysToLie(part: Part, sheets: readonly SheetSize[]): readonly (readonly Mm[])[] {
  const [long, wide] = part.size as readonly [Mm, Mm];
  const along = [long, wide];
  const across = [wide, long];
  const [grain] = sheets.map((sheet) => sheet.grain).filter((each) => each !== "none");
  if (grain !== undefined) return [grain === "across" ? across : along];
  return part.canTurn && long !== wide ? [along, across] : [along];
}

function fitsSome(part: Part, sheets: readonly SheetSize[]): boolean {
  const job = makeSheetJob([part], sheets);
  return job.items.every((item) => job.stocks.some((stock) => holdsItem(stock, item)));
}

function nameTooLarge(
  part: Part,
  sheets: readonly SheetSize[],
  say: (length: Mm) => string,
): Shortfall {
  const [largest] = [...sheets].sort((a, b) => content(b.size) - content(a.size));
  const size = largest!.size.map(say).join(" × ");
  return {
    part: part.id,
    reason: `is ${part.size.map(say).join(" × ")}, larger than the largest sheet of ${size}`,
    remedy: "Make it of two parts with a joint, or use a larger sheet",
  };
}
