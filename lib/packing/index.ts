export * from "./lay-cloth.ts";
export * from "./plan-boards.ts";
export * from "./plan-sheets.ts";
export * from "./plan-slabs.ts";
export * from "./shop-length.ts";
export * from "./types.ts";
