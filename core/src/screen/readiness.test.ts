import { expect, test } from "vitest";
import { type Readiness, readiness } from "./readiness.ts";

/** Riebe et al. 2015 as a table of 16 keys: active, disease, signs, vigorous wanted (read in a restatement). */
const TABLE: Readonly<Record<string, Readiness>> = {
  "0000": "start light to moderate",
  "0001": "start light to moderate",
  "0010": "ask a doctor before starting",
  "0011": "ask a doctor before starting",
  "0100": "ask a doctor before starting",
  "0101": "ask a doctor before starting",
  "0110": "ask a doctor before starting",
  "0111": "ask a doctor before starting",
  "1000": "go on",
  "1001": "go on",
  "1010": "stop and ask a doctor",
  "1011": "stop and ask a doctor",
  "1100": "go on, moderate at most",
  "1101": "ask a doctor before vigorous",
  "1110": "stop and ask a doctor",
  "1111": "stop and ask a doctor",
};

for (const [key, want] of Object.entries(TABLE)) {
  test(`riebe2015 ${key}, printed: ${want}`, () => {
    const [active, disease, signs, vigorous] = [...key].map((digit) => digit === "1") as [
      boolean,
      boolean,
      boolean,
      boolean,
    ];
    expect(readiness({ active, disease, signs, wanted: vigorous ? "vigorous" : "moderate" })).toBe(want);
    if (!vigorous) expect(readiness({ active, disease, signs, wanted: "light" })).toBe(want);
  });
}
