import { describe, expect, test } from "vitest";
import { checkZipForChildren } from "../../lib/checks/check-zip-for-children.ts";
import { zipPlace } from "../../lib/checks/zip-place.ts";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { readProject } from "../../lib/project/read-project.ts";
import { makeFormat } from "../../lib/units/make-format.ts";
import * as make from "../fixtures/plans/make.ts";

const pad = (closing: string) => `---
title: Reading pad
units: cm
audience: {age: 5}
stock:
  foam: {kind: slab, size: [100, 50, 10], have: 1}
  print: {kind: fabric, width: 140}
solids:
  pad:
    foam: foam
    blocks: {one: {box: [60, 40, 10]}}
    cover:
      fabric: print
      ${closing}
---
`;
const findingFor = (closing: string) => {
  const { projects, faults } = readProject({ file: "content/reading-pad.md", text: pad(closing) });
  const [project] = projects;
  if (project === undefined) throw new Error(JSON.stringify(faults));
  const plan = computePlan(project);
  const [found] = checkZipForChildren({ ...plan, format: makeFormat(project) });
  return found;
};

describe("where a zip lies that a child could open", () => {
  // Our choice of what is in reach: front, sides and top; the back and the underside are away from a child.
  test("between back and underside it is out of reach, and only the puller is taken off", () => {
    const found = findingFor(
      "open: [{between: [one/back, one/underside]}]\n      closing: {kind: zip}",
    );
    expect(found?.message).toMatch(
      /runs along the (back and the underside|underside and the back), out of reach/,
    );
    expect(found?.remedy).toMatch(/^Take the puller/);
  });

  test("between front and top it is in reach, and the seam is to be moved", () => {
    const found = findingFor("open: [{between: [one/front, one/top]}]\n      closing: {kind: zip}");
    expect(found?.message).toMatch(
      /the (front and the top|top and the front), where a child can reach it/,
    );
    expect(found?.remedy).toMatch(
      /^Open the seam between back and underside instead .*Take the puller/,
    );
  });

  // The opening as planned for a zip put across a face: the edge between the face's two halves.
  test.each([
    ["back", [0, 1, 0], false],
    ["left side", [-1, 0, 0], true],
  ] as const)("across the %s it lies between its halves", (name, normal, isInReach) => {
    const half = (id: string, part: string) =>
      make.makeFace({ id, label: `${part} half of the ${name}`, normal });
    const edge = make.makeEdge({ id: "split", faces: ["one", "one#half"] });
    const faces = [half("one", "lower"), half("one#half", "upper")];
    const opening = make.makeOpening({ edges: ["split"] });
    expect(zipPlace({ opening }, { faces, edges: [edge] })).toEqual({
      along: [`lower half of the ${name}`, `upper half of the ${name}`],
      isInReach,
    });
    expect(zipPlace({ opening: null }, { faces, edges: [edge] })).toBeNull();
  });
});
