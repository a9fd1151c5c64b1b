import { nearestWord } from "../units/nearest-word.ts";
import { describe } from "./describe.ts";
import type { Ledger } from "./ledger.ts";
import { report } from "./ledger.ts";
import { readLength } from "./read-length.ts";
import type { RawProject } from "./schema.ts";
import type { AsBuilt } from "./types.ts";

/** Resolve the record of the finished thing: a real date, measures of known dimensions, a safe file name. */
export function resolveMade(ledger: Ledger, { made, dimensions }: RawProject): AsBuilt | null {
  if (made === undefined) return null;
  const { date = null, notes = null, photo = null } = made;
  if (date !== null && !isDate(date)) {
    const fault = `expected a date such as 2026-03-14, got ${describe(date)}`;
    report(ledger, "made.date", fault, "Write year-month-day");
  }
  if (
    photo !== null &&
    !/^[\w-][\w. -]*(\/[\w-][\w. -]*)*\.(jpe?g|png|webp|avif|svg)$/i.test(photo)
  ) {
    const fault = `expected the name of a picture, got ${describe(photo)}`;
    report(ledger, "made.photo", fault, "Put the photo beside the project file and write its name");
  }
  const known = Object.keys(dimensions ?? {});
  const measured = Object.entries(made.measured ?? {}).map(([name, size]) => {
    const field = `made.measured.${name}`;
    if (!known.includes(name)) {
      const nearest = nearestWord(name, known);
      const fix =
        nearest === null ? "Use a name listed in dimensions" : `Write ${nearest} if that was meant`;
      report(ledger, field, "is not a name listed in dimensions", fix);
    }
    return [name, readLength(ledger, field, size)] as const;
  });
  return { date, notes, measured: Object.fromEntries(measured), photo };
}

/** Whether a text is a day that exists, as year-month-day. */
function isDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)?.map(Number) ?? [];
  if (year === undefined || month === undefined || day === undefined) return false;
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1];
  return days !== undefined && day >= 1 && day <= days;
}
