import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { type PulseMessage, readPulseMessage } from "./pulse-message.ts";

function read(hex: string): PulseMessage {
  const message = readPulseMessage(hex.split(" ").map((byte) => Number.parseInt(byte, 16)));
  if (typeof message === "string") throw new Error(message);
  return message;
}
const LONG = "19 2C 01 64 00 9A 01 CD 00";

published("gattHeartRate", "16 48 00 04", [
  ["worked", "beats a minute", () => read("16 48 00 04").bpm, 72, 0],
  ["worked", "seconds between beats", () => read("16 48 00 04").gapsS[0]!, 1, 0],
]);
published("gattHeartRate", "00 3C", [["worked", "beats a minute", () => read("00 3C").bpm, 60, 0]]);
published("gattHeartRate", LONG, [
  ["worked", "beats a minute, two bytes", () => read(LONG).bpm, 300, 0],
  ["worked", "kJ", () => read(LONG).energyKj!, 100, 0],
  ["worked", "first gap", () => read(LONG).gapsS[0]!, 0.400391, 5e-7],
  ["worked", "second gap", () => read(LONG).gapsS[1]!, 0.200195, 5e-7],
]);

test("contact: said, said not, cannot be told", () => {
  expect(read("16 48 00 04").contact).toBe(true);
  expect(read("04 48").contact).toBe(false);
  for (const cannot of ["00 3C", "02 3C", LONG]) expect(read(cannot)).not.toHaveProperty("contact");
});

describe("lengths that cannot be", () => {
  test.each([
    ["", "pulse/too-short"],
    ["00", "pulse/too-short"],
    ["01 3C", "pulse/too-short"],
    ["08 3C 64", "pulse/too-short"],
    ["00 3C 00", "pulse/left-over"],
    ["10 3C 00", "pulse/left-over"],
  ])("%s: %s", (hex, fault) => {
    const bytes = hex === "" ? [] : hex.split(" ").map((byte) => Number.parseInt(byte, 16));
    expect(readPulseMessage(bytes)).toBe(fault);
  });
  test("a flag without its gaps is fine, 513 bytes are not", () => {
    expect(read("10 3C").gapsS).toEqual([]);
    expect(readPulseMessage(Array<number>(513).fill(0))).toBe("pulse/too-long");
  });
});

test("whatever arrives, nothing but a message or a fault comes out", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
      const message = readPulseMessage([...bytes]);
      if (typeof message === "string") return;
      expect(Number.isInteger(message.bpm) && message.bpm >= 0 && message.bpm <= 65_535).toBe(true);
      expect(message.gapsS.every((gap) => gap >= 0 && gap < 64)).toBe(true);
    }),
    { seed: 7 },
  );
});
