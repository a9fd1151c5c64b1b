export { facesNamed } from "./find-face.ts";
export { findWays } from "./find-ways.ts";
export { refoldPanels } from "./refold-panel.ts";
export { graphSolid } from "./unfold-panel.ts";
