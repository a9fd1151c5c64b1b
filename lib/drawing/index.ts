export { drawFigure, listFigures, pageLimits } from "./draw-figure.ts";
