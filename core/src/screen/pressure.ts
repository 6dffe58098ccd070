import type { BeforeAnswer } from "./before.ts";
import { reason } from "./reasons.ts";
import type { RuleName } from "./rule-name.ts";

/** Blood pressure at rest, mmHg. */
export interface Pressure {
  readonly systolic: number;
  readonly diastolic: number;
}

/** A named rule for lifting by the pressure at rest: from `hold` on no session, from `light` on light work at most. */
export interface PressureRule extends RuleName {
  readonly hold: Pressure;
  readonly light: Pressure;
}

/** Rules as printed; they differ, so the one that ran is part of every answer. The first is used unless chosen. */
export const PRESSURE_RULES: readonly PressureRule[] = [
  {
    id: "lifting 2024",
    dated: "2024",
    source: "liftingPressure2024",
    hold: { systolic: 180, diastolic: 110 },
    light: { systolic: 160, diastolic: 100 },
  },
  {
    id: "exercise test",
    dated: "2013",
    source: "acsmGuidelines9",
    hold: { systolic: 200, diastolic: 110 },
    light: { systolic: 200, diastolic: 110 },
  },
];
/** Outside these a reading is a slip of the cuff or the pen. Ours. */
const SYSTOLIC = { from: 60, to: 300 };
const DIASTOLIC = { from: 30, to: 200 };

function assertReading({ systolic, diastolic }: Pressure): void {
  const inside =
    systolic >= SYSTOLIC.from && systolic <= SYSTOLIC.to && diastolic >= DIASTOLIC.from && diastolic <= DIASTOLIC.to;
  if (!(inside && systolic > diastolic)) {
    throw new RangeError(
      `Cannot judge a blood pressure as it must be 60–300 over 30–200 mmHg, the first the higher: current value is ${systolic}/${diastolic}`,
    );
  }
}

const reaches = (reading: Pressure, limit: Pressure) =>
  !(reading.systolic < limit.systolic && reading.diastolic < limit.diastolic);

/**
 * Whether somebody may lift today at their blood pressure at rest. Both numbers are judged: either alone may hold.
 *
 * A first reading over a limit asks for a second after five minutes seated; the last one decides. Between the limits
 * light work is left only where the clinician's note allows it.
 *
 * @param readings mmHg, oldest first, at least one
 * @throws RangeError for a reading that nobody can have
 * @source liftingPressure2024, acsmGuidelines9
 */
export function pressureBefore(
  readings: readonly [Pressure, ...Pressure[]],
  noteAllowsLight: boolean,
  rule: PressureRule = PRESSURE_RULES[0]!,
): BeforeAnswer {
  for (const reading of readings) assertReading(reading);
  const last = readings.at(-1)!;
  const said = { systolic: last.systolic, diastolic: last.diastolic, rule: rule.id };
  if (!reaches(last, rule.light)) return { before: "go", because: [reason("before/pressure-fine", said)] };
  if (readings.length === 1) return { before: "ask", because: [reason("before/pressure-again", said)] };
  if (reaches(last, rule.hold)) {
    return { before: "hold", because: [reason("before/pressure-hold", { ...said, limit: { ...rule.hold } })] };
  }
  const because = [reason("before/pressure-light", { ...said, limit: { ...rule.light }, note: noteAllowsLight })];
  return { before: noteAllowsLight ? "soften" : "hold", because };
}
