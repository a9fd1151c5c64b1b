export type { Format, Material, Work } from "./types.ts";
export { adhesiveArea } from "./adhesive-area.ts";
export {
  biasFromCloth,
  biasFromSquare,
  biasSquare,
  biasUpperBound,
  clothForBias,
  squareForWholeStrips,
  widthAlongSelvedge,
} from "./bias-strips.ts";
export { boxCushion } from "./box-cushion.ts";
export { countOf } from "./count-of.ts";
export {
  containerCoverage,
  containersFor,
  coverageByCoat,
  squareMetresPerLitre,
} from "./coverage.ts";
export { finishArea } from "./finish-area.ts";
export { foamGrade } from "./foam-grade.ts";
export { foamMass } from "./foam-mass.ts";
export { layeredArea } from "./layered-area.ts";
export { listMaterials } from "./list-materials.ts";
export { nextStockLength } from "./next-stock-length.ts";
export {
  densityFromPoundsPerCubicFoot,
  densityInPoundsPerCubicFoot,
} from "./pounds-per-cubic-foot.ts";
export { replacementFoam } from "./replacement-foam.ts";
export { orderWithRepeat, roundUpToRepeat } from "./round-up-to-repeat.ts";
export { stitchesPerInch } from "./stitches-per-inch.ts";
export { straightStrips } from "./straight-strips.ts";
export { threadLength } from "./thread-length.ts";
export {
  bobbinShare,
  flatThreadRatio,
  overedgeThreadRatio,
  threadRatio,
  threadRatioByThickness,
} from "./thread-ratio.ts";
export { wrapBlank } from "./wrap-blank.ts";
