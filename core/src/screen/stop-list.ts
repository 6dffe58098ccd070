import type { BeforeAnswer } from "./before.ts";
import { reason } from "./reasons.ts";

/** Signs that end a session at once, on every session's page. After them: the emergency number, then the doctor. */
export const STOP_SIGNS = [
  "chest pain or pressure",
  "faint or dizzy",
  "pale, cold and clammy",
  "unsteady or confused",
  "irregular heartbeat that stays",
  "unusual breathlessness or wheeze",
  "leg cramp on walking",
  "sudden severe headache",
  "weakness on one side or slurred speech",
  "new numbness with loss of bladder or bowel control",
  "dark urine with swollen muscles",
  "signs of heat illness",
  "severe allergic reaction",
] as const;
export type StopSign = (typeof STOP_SIGNS)[number];

/**
 * What a sign on the stop list asks for: stop now. The person's own wish to stop needs no sign.
 *
 * @source acsmGuidelines9, ours
 */
export function stopBefore(signs: readonly StopSign[]): BeforeAnswer {
  return signs.length === 0
    ? { before: "go", because: [] }
    : { before: "hold", because: [reason("before/stop-now", { signs })] };
}
