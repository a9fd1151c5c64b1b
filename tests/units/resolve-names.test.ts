import { describe, expect, test } from "vitest";
import { resolveNames } from "../../lib/units/resolve-names.ts";

const resolve = (sizes: Readonly<Record<string, string | number>>) =>
  resolveNames(new Map(Object.entries(sizes)), "cm");

describe("working out named sizes", () => {
  test("names may be used before they are given a size", () => {
    const { sizes, faults } = resolve({ half: "length / 2", length: "2 * depth", depth: 30 });
    expect([...sizes]).toEqual([
      ["half", 300],
      ["length", 600],
      ["depth", 300],
    ]);
    expect(faults.size).toBe(0);
  });

  test("names that need one another in a circle are one fault", () => {
    const { sizes, faults } = resolve({ a: "b + 1", b: "c", c: "a", d: "a * 2", e: 5 });
    expect([...faults].map(([name, { fault }]) => `${name}: ${fault}`)).toEqual([
      "a: a needs b needs c needs a, which goes round in a circle",
    ]);
    expect(sizes.get("d")).toBeNull();
    expect(sizes.get("e")).toBe(50);
  });

  test("a name that needs itself is a circle of one", () => {
    expect(resolve({ a: "a" }).faults.get("a")?.fault).toBe(
      "a needs a, which goes round in a circle",
    );
  });

  test("one bad size is told once, not again by each name that uses it", () => {
    const { faults } = resolve({ depth: "forty", length: "2 * depth", thick: "length / 8" });
    expect([...faults.keys()]).toEqual(["depth"]);
  });

  test("zero and negative sizes are faults", () => {
    const { faults } = resolve({ a: 0, b: "a - 1", c: "2 - 5", d: "-1" });
    expect([...faults].map(([name, { fault }]) => [name, fault])).toEqual([
      ["a", "the length is zero"],
      ["c", "the length is negative"],
      ["d", "the length is negative"],
    ]);
  });

  test("a long chain is followed, one without end is refused", () => {
    const chain = (count: number) =>
      Object.fromEntries(
        Array.from({ length: count }, (_, n) => [`a${n}`, n === count - 1 ? 1 : `a${n + 1} * 1`]),
      );
    expect(resolve(chain(500)).sizes.get("a0")).toBe(10);
    const { sizes, faults } = resolve(chain(3000));
    expect(sizes.get("a0")).toBeNull();
    expect([...faults.values()].map(({ fault }) => fault)).toEqual([
      "it stands at the end of a chain of 1000 names",
      "it stands at the end of a chain of 1000 names",
    ]);
  });
});
