import { describe, expect, test } from "vitest";
import { openSite } from "../../lib/eleventy/open-site.ts";
import { starterFile, starterKinds } from "../../lib/eleventy/starter-file.ts";
import { makeTempSite } from "../fixtures/temp-site.ts";

const units = ["in", "cm", "mm"] as const;
const starters = starterKinds.flatMap((kind) => units.map((unit) => [kind, unit] as const));

describe("a starter project", () => {
  test.each(starters)("%s in %s builds as it stands", (kind, unit) => {
    const temp = makeTempSite({
      "first.md": starterFile({ title: 'A "first" one: mine', units: unit, kind }),
    });
    const site = openSite(temp.content);
    temp.remove();
    expect(site.faults).toEqual([]);
    expect(site.booklets[0]!.booklet.title).toBe('A "first" one: mine');
    expect(site.booklets[0]!.plan.steps.length).toBeGreaterThan(3);
  });
});
