import { expect, test } from "vitest";
import { InTurn } from "./in-turn.ts";

const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

test("jobs of one key never overlap, whatever each takes and however it ends; other keys go on", async () => {
  const turns = new InTurn();
  const log: string[] = [];
  const job = (key: string, name: string, ms: number, fails = false) =>
    turns.run(key, async () => {
      log.push(`${name} begins`);
      await later(ms);
      log.push(`${name} ends`);
      if (fails) throw new Error(name);
      return name;
    });
  const results = await Promise.allSettled([
    job("ana", "a1", 20),
    job("ana", "a2", 5, true),
    job("ana", "a3", 1),
    job("ben", "b1", 1),
  ]);
  expect(results.map(({ status }) => status)).toEqual(["fulfilled", "rejected", "fulfilled", "fulfilled"]);
  expect(log.filter((line) => line.startsWith("a"))).toEqual(
    ["a1", "a2", "a3"].flatMap((name) => [`${name} begins`, `${name} ends`]),
  );
  expect(log.indexOf("b1 ends")).toBeLessThan(log.indexOf("a1 ends"));
});
