import { type FileHandle, open, rename, rm } from "node:fs/promises";
import { join } from "node:path";

/** Lines that are written at once. */
const AT_ONCE = 2000;

/** A text file that is written line by line, however long, and stands under its name only when it is whole. */
export class LineFile {
  readonly #part: string;
  readonly #path: string;
  readonly #handle: FileHandle;
  #lines: string[] = [];

  private constructor(part: string, path: string, handle: FileHandle) {
    this.#part = part;
    this.#path = path;
    this.#handle = handle;
  }

  static async begin(folder: string, name: string): Promise<LineFile> {
    const part = join(folder, `.part-${name}`);
    return new LineFile(part, join(folder, name), await open(part, "w"));
  }

  async write(line: string): Promise<void> {
    this.#lines.push(line);
    if (this.#lines.length >= AT_ONCE) await this.#flush();
  }

  /** Everything is written: the file takes its name. */
  async end(): Promise<void> {
    await this.#flush();
    await this.#handle.sync();
    await this.#handle.close();
    await rename(this.#part, this.#path);
  }

  /** Nothing more will come, and the file is not to be kept. What was there under its name before stays. */
  async leave(): Promise<void> {
    await this.#handle.close();
    await rm(this.#part, { force: true });
  }

  async #flush(): Promise<void> {
    const text = this.#lines.map((line) => `${line}\r\n`).join("");
    this.#lines = [];
    await this.#handle.writeFile(text);
  }
}
