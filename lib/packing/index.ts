export * from "./lay-cloth.ts";
export * from "./types.ts";
