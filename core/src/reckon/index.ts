export * from "./quantity.ts";
export * from "./reckon.ts";
export * from "./reckoning.ts";
