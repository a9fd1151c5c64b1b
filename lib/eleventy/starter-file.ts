import type { Unit } from "../project/types.ts";

export const starterKinds = ["cushion", "cloth", "crate"] as const;
export type StarterKind = (typeof starterKinds)[number];

export interface Starter {
  readonly title: string;
  readonly units: Unit;
  readonly kind: StarterKind;
}

/** Sizes that look made for each unit: round inches, or round centimetres. */
const sizes = {
  in: {
    length: "20",
    depth: "18",
    thick: "3",
    slab: "72, 24, 3",
    width: "54",
    selvedge: "1/2",
    seam: "1/2",
    sheet: "48, 24",
    thickness: "1/2",
    batten: "1 1/2, 3/4",
    boards: "96",
    kerf: "1/8",
  },
  cm: {
    length: "50",
    depth: "45",
    thick: "8",
    slab: "200, 60, 8",
    width: "140",
    selvedge: "1",
    seam: "1.5",
    sheet: "122, 61",
    thickness: "1.2",
    batten: "3.4, 1.9",
    boards: "240",
    kerf: "0.3",
  },
  mm: {
    length: "500",
    depth: "450",
    thick: "80",
    slab: "2000, 600, 80",
    width: "1400",
    selvedge: "10",
    seam: "15",
    sheet: "1220, 610",
    thickness: "12",
    batten: "34, 19",
    boards: "2400",
    kerf: "3",
  },
} as const satisfies Record<Unit, Record<string, string>>;

/** A project file that builds as it stands, for its author to change. */
export function starterFile({ title, units, kind }: Starter): string {
  const { length, depth, thick } = sizes[units];
  return `---
title: ${JSON.stringify(title)}
units: ${units}
dimensions: {length: ${length}, depth: ${depth}, thick: ${thick}}
${body(kind, units)}---
Say here what a stranger should know before starting.
`;
}

function body(kind: StarterKind, units: Unit): string {
  const { slab, width, selvedge, seam, sheet, thickness, batten, boards, kerf } = sizes[units];
  const cloth = `  cloth: {kind: fabric, width: ${width}, selvedge: ${selvedge}, direction: one-way}\n`;
  switch (kind) {
    case "cushion":
      return `stock:
  foam: {kind: slab, size: [${slab}], have: 1}
${cloth}solids:
  cushion:
    foam: foam
    blocks:
      pad: {box: [length, depth, thick]}
    cover:
      fabric: cloth
      seamAllowance: ${seam}
      fit: exact
      panels: auto
      closing: {kind: hand-sewn}
`;
    case "cloth":
      return `stock:
${cloth}pieces:
  front: {stock: cloth, size: [length, depth], cut: 2, seamAllowance: ${seam}, up: up}
  strap: {stock: cloth, size: [length, thick], cut: 2, seamAllowance: ${seam}, up: none}
`;
    case "crate":
      return `stock:
  plywood: {kind: sheet, size: [${sheet}], thickness: ${thickness}, kerf: ${kerf}, grain: along}
  batten: {kind: board, section: [${batten}], length: ${boards}, kerf: ${kerf}}
pieces:
  floor: {stock: plywood, size: [length, depth]}
  rail: {stock: batten, length: length, cut: 4}
`;
  }
}
