import type { MorningItem } from "@stave/core/api";
import { expect, test } from "vitest";
import { asProposedNow } from "./as-proposed-now.ts";

const item = (proposal: string, slot: string, to: number): MorningItem => ({
  proposal: { proposal, patch: { slot, change: "resume" }, evidence: [], cut: {}, engine: "" },
  slot,
  exercise: { id: "goblet-squat", name: "Goblet squat" },
  title: { code: "progress/go-to-load", data: { to: { value: to, unit: "kg" } } },
  stop: false,
  past: [],
  next: [],
  others: [],
  left: [],
});

test("the same words on the same slot are the same answer, anything else is not", () => {
  const answered = item("old", "squat-a", 16);
  expect(asProposedNow(answered, [item("x", "squat-b", 16), item("new", "squat-a", 16)])?.proposal.proposal).toBe(
    "new",
  );
  expect(asProposedNow(answered, [item("new", "squat-a", 18)])).toBe(undefined);
  expect(asProposedNow(answered, [{ ...item("new", "squat-a", 16), stop: true }])).toBe(undefined);
  expect(asProposedNow(answered, [])).toBe(undefined);
});
