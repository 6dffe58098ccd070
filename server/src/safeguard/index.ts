/** Who may ask what, from where, how often and how much. */
export { deviceIn } from "./device.ts";
export { SECURITY_HEADERS } from "./headers.ts";
export { Limits } from "./limits.ts";
export { beginSession, sessionIn } from "./owner.ts";
export * from "./problem.ts";
export { readJson } from "./read-json.ts";
export { checkOwnPage, checkPlace, isFromHere, ownNames } from "./same-place.ts";
export { hashOf, newToken } from "./token.ts";
