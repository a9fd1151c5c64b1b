import type { Mm } from "../plane/types.ts";
import type { PanelRule, PrintDirection } from "../project/types.ts";
import { turnedOn, type Measures } from "./measure-candidate.ts";

/** What each trouble is worth, in millimetres of plain seam. */
export interface Weights {
  readonly panel: number;
  readonly seam: number;
  /** For each mm of cloth length that the box round the panel takes. */
  readonly cloth: number;
  readonly turnedFace: number;
  readonly inwardFold: number;
  readonly extraCorner: number;
  readonly inwardCorner: number;
  readonly dart: number;
  readonly hole: number;
  readonly smoothSeam: number;
  /** For each mm folded over a corner: a fold is softer than a seam. */
  readonly fold: number;
  /** A panel that takes in one side of a symmetrical form without the other. */
  readonly lopsided: number;
}

// @source our choice: `auto` was settled by comparing it with what is drafted by hand for boxes, pads
// and stepped seats. 1 m of cloth is worth 4 m of seam; a face printed the wrong way, 20 m.
const balanced: Weights = {
  panel: 150,
  seam: 1,
  cloth: 4,
  turnedFace: 20_000,
  inwardFold: 300,
  extraCorner: 100,
  inwardCorner: 300,
  dart: 50_000,
  hole: 5_000,
  smoothSeam: 20,
  fold: 0.25,
  lopsided: 600,
};

export const weightsOf: Readonly<Record<PanelRule, Weights>> = {
  auto: balanced,
  fewest: {
    ...balanced,
    panel: 10_000,
    cloth: 0.2,
    turnedFace: 100,
    extraCorner: 5,
    inwardCorner: 20,
    dart: 3_000,
    fold: 0,
  },
  "least-cloth": {
    ...balanced,
    cloth: 20,
    panel: 20,
    turnedFace: 2_000,
    extraCorner: 0,
    inwardCorner: 10,
    fold: 0,
  },
  upright: { ...balanced, turnedFace: 200_000 },
  plain: {
    ...balanced,
    extraCorner: 800,
    inwardCorner: 1_500,
    inwardFold: 2_000,
    panel: 60,
    fold: 0.8,
  },
};

export interface ClothRules {
  /** Width that pieces may lie on, selvedges off. */
  readonly usableWidth: Mm;
  readonly direction: PrintDirection;
  /** Allowance added all round. */
  readonly allowance: Mm;
}

/** The worst of the faces of a panel, each cut by itself. */
export interface Alone {
  readonly width: Mm;
  readonly isTooNarrow: boolean;
}

/** What the faces of a panel would be like cut singly. */
export const worstAlone = (singles: readonly Measures[], cloth: ClothRules): Alone => ({
  width: Math.max(...singles.map((measures) => widthNeeded(measures, cloth))),
  isTooNarrow: singles.some(({ isTooNarrow }) => isTooNarrow),
});

/** A panel whose two edges leave no room for their allowances cannot be cut out. */
const unsewable = 1e6;
/** Too wide for the cloth: worse than anything else, and the more so the wider. */
const overflowing = 1e6;

/**
 * Cost of one panel in mm of seam; costs of panels add up to the cost of a way.
 *
 * @param alone its faces cut singly: nobody is blamed for a face that is wider than the cloth, or that
 *   has a notch too narrow by itself
 */
export function weighCandidate(
  measures: Measures,
  rule: PanelRule,
  cloth: ClothRules,
  alone: Alone,
): number {
  const weights = weightsOf[rule];
  const turned = rule === "upright" ? measures.turned : turnedOn(measures, cloth.direction);
  const [width, height] = measures.box.map((side) => side + 2 * cloth.allowance) as [Mm, Mm];
  const overflow = widthNeeded(measures, cloth) - Math.max(cloth.usableWidth, alone.width);
  return (
    weights.panel +
    weights.seam * measures.halfSeam +
    (weights.cloth * width * height) / cloth.usableWidth +
    weights.turnedFace * turned.length +
    weights.inwardFold * measures.inwardFolds +
    weights.extraCorner * measures.extraCorners +
    weights.inwardCorner * measures.inwardCorners +
    weights.dart * measures.darts +
    weights.hole * measures.holes +
    weights.smoothSeam * measures.smoothSeam +
    weights.fold * measures.foldLength +
    (measures.isLopsided ? weights.lopsided : 0) +
    (measures.isTooNarrow && !alone.isTooNarrow ? unsewable : 0) +
    (overflow > 1e-6 ? overflowing + overflow * 100 : 0)
  );
}

/** Width of cloth a panel must have: its narrow way where it may be turned. */
export function widthNeeded(
  { box, hasVisible }: Measures,
  { direction, allowance }: ClothRules,
): Mm {
  const mayTurn = direction === "any" || !hasVisible;
  return (mayTurn ? Math.min(...box) : box[0]) + 2 * allowance;
}
