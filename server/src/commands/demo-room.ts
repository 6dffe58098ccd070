import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The made-up room's files are written around this Monday. */
export const DEMO_START = "2027-01-11";

/** The demo's files stand beside the program in the project. */
export function demoFolder(): string {
  return join(dirname(fileURLToPath(import.meta.url)), "../../examples/ropewalk");
}
