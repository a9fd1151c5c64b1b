import { buildEdition } from "../booklet/build-edition.ts";
import type { EditionName } from "../booklet/editions.ts";
import type { Booklet } from "../booklet/pages.ts";
import { papers } from "../booklet/paper.ts";
import type { PaperName } from "../booklet/paper.ts";
import type { SiteBooklet } from "./open-site.ts";

const built = new WeakMap<SiteBooklet, Map<string, Booklet>>();

/** An edition of a booklet on a paper. The booklet itself is there; others are built when first asked for. */
export function editionOf(
  entry: SiteBooklet,
  edition: EditionName = "booklet",
  paper: PaperName = entry.booklet.paper.name,
): Booklet {
  if (edition === "booklet") {
    return paper === entry.booklet.paper.name ? entry.booklet : entry.otherBooklet;
  }
  const own = built.get(entry) ?? new Map<string, Booklet>();
  built.set(entry, own);
  const key = `${edition} ${paper}`;
  const found =
    own.get(key) ??
    buildEdition(entry.plan, entry.figures, edition, {
      paper: papers[paper],
      address: entry.address,
    });
  own.set(key, found);
  return found;
}
