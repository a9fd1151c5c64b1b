import { describe, expect, test } from "vitest";
import type { Finding } from "../../lib/checks/types.ts";
import { citeFrom, listSources } from "../../lib/booklet/cite-sources.ts";
import { mergeFindings } from "../../lib/booklet/merge-findings.ts";

const finding = (about: string, message: string, source = "computed from the blocks"): Finding => ({
  id: `cloth-lifts/${about}`,
  severity: "note",
  about,
  message,
  remedy: "Sew it down.",
  source,
});

describe("findings of one kind", () => {
  test("become one with a list of what differs", () => {
    const merged = mergeFindings([
      finding("A", "Fold A turns inwards. The cloth lifts there."),
      finding("B", "Fold B turns inwards. The cloth lifts there."),
    ]);
    expect(merged).toHaveLength(1);
    expect(merged[0]).toMatchObject({
      message: "The cloth lifts there.",
      items: ["Fold A turns inwards.", "Fold B turns inwards."],
      remedy: "Sew it down.",
    });
  });

  test("stay apart where the remedy differs", () => {
    const other = { ...finding("B", "Fold B turns inwards."), remedy: "Stuff it." };
    expect(mergeFindings([finding("A", "Fold A turns inwards."), other])).toHaveLength(2);
  });

  test("a single one keeps its words", () => {
    expect(mergeFindings([finding("A", "Fold A turns inwards.")])[0]).toMatchObject({
      message: "Fold A turns inwards.",
      items: [],
    });
  });
});

describe("sources", () => {
  const page = listSources(
    [
      finding(
        "A",
        "x",
        "SI 2025/531, https://www.legislation.gov.uk/uksi/2025/531/made; scope: from memory",
      ),
      finding("B", "y", "ASTM F1912-17, introduction: closures of bean bags"),
      finding("C", "z", "ASTM F1912-17, introduction: closures of bean bags"),
      finding("D", "w"),
    ],
    [],
  );
  const cite = citeFrom(page);

  test("are listed once each, those worked out here not at all", () => {
    expect(page!.sources.map(({ number }) => number)).toEqual([1, 2]);
  });

  test("are named in one short line with the number of the list", () => {
    expect(
      cite("SI 2025/531, https://www.legislation.gov.uk/uksi/2025/531/made; scope: from memory"),
    ).toBe("SI 2025/531 [1]");
    expect(cite("ASTM F1912-17, introduction: closures of bean bags")).toBe("ASTM F1912-17 [2]");
    expect(cite("computed from the blocks")).toBe("computed from the blocks");
  });
});
