export { drawPatternSheets } from "./draw-pattern-sheets.ts";
export { drawFigure, listFigures, pageLimits } from "./draw-figure.ts";
