import { expect, test } from "vitest";
import { type Deed, type DeedStep, type Deeds, idFor, isOpen, stepDeeds } from "./deeds.ts";

const person = { id: "bao", name: "Bao-Linh" };
const input = { id: "d1", person: "bao", kind: "accepted", proposal: "p1" } as const;
const send: DeedStep = { step: "send", proposal: "p1", deed: { id: "d1", person, title: "go to 16 kg", input } };
const after = (...steps: readonly DeedStep[]) => steps.reduce<Deeds>(stepDeeds, new Map()).get("p1");

test("a decision is sent, stands, and undone leaves its proposal open", () => {
  expect(isOpen(after())).toBe(true);
  expect(after(send)?.state).toBe("sending");
  expect(isOpen(after(send))).toBe(false);
  expect(after(send, { step: "stands", id: "d1" })?.state).toBe("stands");
  expect(after(send, { step: "stands", id: "d1" }, { step: "undo", id: "d1" }, { step: "undone", id: "d1" })).toBe(
    undefined,
  );
});

test("what did not arrive leaves the proposal open, with the reason; what cannot be undone still stands", () => {
  const failed = after(send, { step: "failed", id: "d1", fault: { kind: "unreachable" } });
  expect([isOpen(failed), failed?.fault]).toEqual([true, { kind: "unreachable" }]);
  const stands = after(
    send,
    { step: "stands", id: "d1" },
    { step: "undo", id: "d1" },
    { step: "not undone", id: "d1", fault: { kind: "unreachable" } },
  );
  expect([stands?.state, stands?.fault]).toEqual(["stands", { kind: "unreachable" }]);
});

test("steps of other decisions change nothing here", () => {
  expect(after(send, { step: "stands", id: "d2" })?.state).toBe("sending");
});

test("the same decision asked again keeps its id, another or a refused one gets a new one", () => {
  const { id: _, ...asked } = input;
  const lost = after(send, { step: "failed", id: "d1", fault: { kind: "unreachable" } }) as Deed;
  expect(idFor(lost, asked, "new")).toBe("d1");
  expect(idFor(lost, { ...asked, kind: "refused" }, "new")).toBe("new");
  expect(idFor(undefined, asked, "new")).toBe("new");
  const refused = { ...lost, fault: { kind: "refused", place: "decisions", status: 422, what: "No." } } as const;
  expect(idFor(refused, asked, "new")).toBe("new");
});
