import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { Press } from "./press.ts";
import { readBack } from "./read-back.ts";
import { trialPage, trialSheet } from "./trial-sheet.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-press-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** A typesetter that answers with the number of its process, or does what the data say. */
const PROGRAM = join(folder, "answer.mjs");
writeFileSync(
  PROGRAM,
  `process.on("message", ({ id, data }) => {
    if (data === "die") process.exit(3);
    setTimeout(() => process.send(data === "fault" ? { id, fault: "no" } : { id, pdf: Buffer.from(String(process.pid)) }), 20);
    if (data === "last") setTimeout(() => process.exit(0), 40);
  });`,
);

async function by(press: Press, data: unknown = ""): Promise<string> {
  return Buffer.from(await press.print("any", data)).toString();
}

describe("with the real typesetter", () => {
  test("a layout that is not there is an error, and the next document prints", async () => {
    const press = new Press();
    await expect(press.print("none.typ", {})).rejects.toThrow(/^Cannot typeset none\.typ: /);
    expect((await readBack(await press.print("sheet.typ", trialSheet([trialPage()])))).pages).toHaveLength(1);
    press.close();
  });

  test("data that the layout cannot use are an error that says what is wrong, and the next document prints", async () => {
    const press = new Press();
    await expect(press.print("sheet.typ", { paper: "a4" })).rejects.toThrow(/does not contain key/);
    expect((await readBack(await press.print("sheet.typ", trialSheet([trialPage()])))).pages).toHaveLength(1);
    press.close();
  });

  test("documents asked for at once come back each to its own asker, over more processes than one", async () => {
    const press = new Press(2);
    const titles = ["One", "Two", "Three", "Four", "Five"];
    const pdfs = await Promise.all(titles.map((title) => press.print("sheet.typ", trialSheet([trialPage({ title })]))));
    for (const [index, pdf] of pdfs.entries()) expect((await readBack(pdf)).pages[0]!.text).toContain(titles[index]);
    press.close();
  });
});

describe("processes", () => {
  test("a process is replaced after its quota", async () => {
    const press = new Press(2, PROGRAM);
    const made = await Promise.all([1, 2, 3, 4, 5].map(() => by(press)));
    expect(made[0]).toBe(made[1]);
    expect(made[2]).toBe(made[3]);
    expect(new Set(made).size).toBe(3);
    press.close();
  });

  test("a fault and a death reach only the document that they belong to", async () => {
    const press = new Press(100, PROGRAM);
    const [first, fault, second, death, third] = await Promise.allSettled(
      ["", "fault", "", "die", ""].map((data) => by(press, data)),
    );
    for (const { status } of [first!, second!, third!]) expect(status).toBe("fulfilled");
    expect(fault).toMatchObject({ status: "rejected", reason: { message: "Cannot typeset any: no" } });
    expect(death).toMatchObject({
      status: "rejected",
      reason: { message: "Cannot typeset any: the typesetter stopped" },
    });
    press.close();
  });

  test("a process that went away between two documents is replaced", async () => {
    const press = new Press(100, PROGRAM);
    const first = await by(press, "last");
    await new Promise((resolve) => setTimeout(resolve, 400));
    expect(await by(press)).not.toBe(first);
    press.close();
  });

  test("after closing, the next document starts a fresh process", async () => {
    const press = new Press(100, PROGRAM);
    const first = await by(press);
    press.close();
    expect(await by(press)).not.toBe(first);
    press.close();
  });

  test("a typesetter that was never built is said to have stopped", async () => {
    const press = new Press(1, join(folder, "none.mjs"));
    await expect(press.print("any", {})).rejects.toThrow("Cannot typeset any: the typesetter stopped");
  });
});
