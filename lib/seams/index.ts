export { buildCover } from "./build-cover.ts";
export { makeLoosePiece } from "./make-pieces.ts";
export { smallestGirth } from "./measure-girth.ts";
