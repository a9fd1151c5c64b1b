export { buildSolid } from "./build-solid.ts";
export { flattenPoint, liftPoint } from "./lift-point.ts";
export { distanceFrom, normalOf } from "./surfaces.ts";
