import {
  type AllKept,
  type Change,
  comingDevice,
  type Kept,
  keepAloud,
  keepLinked,
  leaveForgotten,
  openKept,
  readAll,
  record,
  touchDraft,
} from "./kept/index.ts";
import { exchangeLink, Sender, type SenderState } from "./send/index.ts";
import type { Draft } from "./session/index.ts";

/** The name under which the tabs of this phone tell one another that something was kept. */
const CHANNEL = "stave-floor";

export type LinkState = "asked" | "busy" | "no network" | "not valid" | "unsent first";

/** All that the page shows. */
export interface Shown {
  readonly kept: AllKept;
  /** What the link's page says, while it is on the screen. */
  readonly link?: LinkState;
  readonly sender: SenderState;
  /** `busy` between a tap and the word of the disk; `failed` when the disk would not. */
  readonly saving: "no" | "busy" | "failed";
}

/** The phone: what it keeps, what it sends, and what the page shows of both. */
export class Phone {
  shown: Shown;
  readonly #kept: Kept;
  readonly #sender: Sender;
  readonly #tabs = new BroadcastChannel(CHANNEL);
  #link: string | undefined;
  #draw: () => void = () => {};

  private constructor(kept: Kept, all: AllKept, link: string | undefined) {
    this.#kept = kept;
    this.#link = link;
    this.#sender = new Sender(kept, () => this.#read());
    this.shown = { kept: all, sender: "idle", saving: "no", ...(link === undefined ? {} : { link: "asked" }) };
    this.#tabs.onmessage = () => void this.#read();
  }

  /** @param link token of a link that the page was opened by */
  static async open(link: string | undefined): Promise<Phone> {
    const kept = await openKept();
    await leaveForgotten(kept, Date.now());
    return new Phone(kept, await readAll(kept), link);
  }

  /** Begins to draw and to send. */
  start(draw: () => void): void {
    this.#draw = draw;
    draw();
    this.#sender.listen();
  }

  /** Exchanges the link, after the tap. A phone that holds what was not sent yet sends that first. */
  async takeLink(): Promise<void> {
    const { device, events } = this.shown.kept;
    if (this.#link === undefined) return;
    if (device !== undefined && events.some(({ fate }) => fate === "unsent")) {
      this.#show({ link: "unsent first" });
      this.#sender.now();
      return;
    }
    this.#show({ link: "busy" });
    const mine = await comingDevice(this.#kept, this.#link, Date.now());
    const answer = await exchangeLink({ link: this.#link, token: mine.token });
    if (!answer.ok) {
      this.#show({ link: answer.status === "nothing" || answer.status >= 500 ? "no network" : "not valid" });
      return;
    }
    await keepLinked(this.#kept, { ...mine, person: answer.body.person });
    this.leaveLink();
    await this.#changed();
    this.#sender.now();
  }

  /** Puts the link's page away. */
  leaveLink(): void {
    this.#link = undefined;
    const { link: _, ...rest } = this.shown;
    this.shown = rest;
    this.#draw();
  }

  /** Notes what the thumb did. The screen shows it once it is kept. */
  touch(session: string, change: (draft: Draft) => Draft): Promise<void> {
    return this.#keep(() => touchDraft(this.#kept, session, change), false);
  }

  /** Writes what happened; it is saved when the promise is done. Then it is sent. */
  async say(session: string, change: Change): Promise<void> {
    await this.#keep(() => record(this.#kept, session, change, Date.now()), true);
    this.#sender.now();
  }

  setAloud(aloud: boolean): Promise<void> {
    return this.#keep(() => keepAloud(this.#kept, aloud), false);
  }

  sendNow(): void {
    this.#sender.now();
  }

  async #keep(write: () => Promise<void>, told: boolean): Promise<void> {
    if (told) this.#show({ saving: "busy" });
    try {
      await write();
      this.shown = { ...this.shown, saving: "no" };
      await this.#changed();
    } catch (error) {
      console.error(error);
      this.#show({ saving: "failed" });
    }
  }

  async #changed(): Promise<void> {
    await this.#read();
    this.#tabs.postMessage("kept");
  }

  async #read(): Promise<void> {
    this.#show({ kept: await readAll(this.#kept) });
  }

  #show(change: Partial<Shown>): void {
    this.shown = { ...this.shown, ...change, sender: this.#sender.state };
    this.#draw();
  }
}
