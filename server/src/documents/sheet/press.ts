import { type ChildProcess, fork } from "node:child_process";
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { TypesetAnswer, TypesetJob } from "./typeset.ts";

/** The typesetter keeps a little memory for every document; after so many a fresh process takes over. */
const MOST_DOCUMENTS = 1000;
/** A layout that has not come back by then is given up. */
const MOST_MS = 60_000;

const FONT_PACKAGES = [
  "@expo-google-fonts/atkinson-hyperlegible-next",
  "@expo-google-fonts/bricolage-grotesque",
  "@expo-google-fonts/noto-sans",
  "@expo-google-fonts/noto-sans-arabic",
  "@expo-google-fonts/noto-sans-devanagari",
  "@expo-google-fonts/noto-sans-hebrew",
  "@expo-google-fonts/noto-sans-thai",
  "@embedpdf/fonts-jp",
  "@embedpdf/fonts-kr",
  "@embedpdf/fonts-sc",
];

const here = dirname(fileURLToPath(import.meta.url));
const require = createRequire(import.meta.url);

/** The layout stands beside this file in the sources and beside the bundle once built. */
function layoutFolder(): string {
  return existsSync(join(here, "sheet.typ")) ? here : join(here, "layouts");
}

/** Folders of the fonts: packages that hold only files may not be entered by name, so their folders are looked for. */
function fontFolders(): readonly string[] {
  return FONT_PACKAGES.map((name) => {
    const folder = require.resolve
      .paths(name)
      ?.map((modules) => join(modules, name))
      .find((path) => existsSync(path));
    if (folder === undefined) throw new Error(`The font package ${name} is not installed: run npm ci`);
    return folder;
  });
}

/** The typesetter stands beside the bundle; the sources use the one that was built last. */
function typesetter(): string {
  const beside = join(here, "typeset.js");
  return existsSync(beside) ? beside : join(here, "../../../dist/typeset.js");
}

/** Turns data and a layout into PDF/UA, one document after another, in a process of its own. */
export class Press {
  #child: ChildProcess | undefined;
  #made = 0;
  #next = 0;
  #last: Promise<unknown> = Promise.resolve();
  readonly #quota: number;
  readonly #program: string;

  /**
   * @param quota documents that one process prints before a fresh one takes over
   * @param program the built typesetter
   */
  constructor(quota: number = MOST_DOCUMENTS, program: string = typesetter()) {
    this.#quota = quota;
    this.#program = program;
  }

  /**
   * Prints a document after those that were asked for before it. A fault of one does not reach the next.
   *
   * @throws Error when the layout cannot be set; the message is the typesetter's own
   */
  async print(layout: string, data: unknown): Promise<Uint8Array> {
    const turn = this.#last.then(() => this.#typeset(layout, data));
    this.#last = turn.catch(() => undefined);
    return await turn;
  }

  #process(): ChildProcess {
    if (this.#made >= this.#quota || this.#child?.connected === false) this.close();
    this.#child ??= fork(this.#program, [], {
      serialization: "advanced",
      env: { ...process.env, MALLOC_ARENA_MAX: "1" },
    });
    this.#made++;
    return this.#child;
  }

  #typeset(layout: string, data: unknown): Promise<Uint8Array> {
    const child = this.#process();
    const job: TypesetJob = { id: this.#next++, folder: layoutFolder(), layout, fonts: fontFolders(), data };
    return new Promise((resolve, reject) => {
      const fail = (why: string) => {
        done();
        this.close();
        reject(new Error(`Cannot typeset ${layout}: ${why}`));
      };
      const onMessage = (answer: TypesetAnswer) => {
        if (answer.id !== job.id) return;
        if ("fault" in answer) return fail(answer.fault);
        done();
        resolve(answer.pdf);
      };
      const onExit = () => fail("the typesetter stopped");
      const onError = (error: Error) => fail(error.message);
      const timer = setTimeout(() => fail("it took too long"), MOST_MS);
      const done = () => {
        clearTimeout(timer);
        child.off("message", onMessage);
        child.off("exit", onExit);
        child.off("error", onError);
      };
      child.on("message", onMessage);
      child.on("exit", onExit);
      child.on("error", onError);
      child.send(job, (error) => {
        if (error !== null) fail(error.message);
      });
    });
  }

  /** Ends the typesetter. A document that is still being set fails; the next one starts a fresh process. */
  close(): void {
    this.#child?.kill();
    this.#child = undefined;
    this.#made = 0;
  }
}
