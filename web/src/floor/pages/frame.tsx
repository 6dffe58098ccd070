import { type ComponentChildren, createContext } from "preact";
import { useContext, useEffect, useRef } from "preact/hooks";
import { Note } from "../parts/index.ts";
import type { Shown } from "../phone.ts";
import { words } from "../words.ts";
import style from "./page.module.css";
import { statusOf } from "./status-of.ts";

/** What stands above the body of whatever page is shown. */
const Head = createContext<ComponentChildren>(null);

interface FrameProps {
  readonly shown: Shown;
  /** At the left of the status. */
  readonly about?: string;
  /** Below it, on every page of a session. */
  readonly head?: ComponentChildren;
  /** Changes whenever another page is shown, so that readers of the screen begin at its top. */
  readonly page: string;
  readonly children: ComponentChildren;
}

/** What every page has: where things stand, and what must not be missed. Its children are a `Body` and perhaps a `Foot`. */
export function Frame({ shown, about, head, page, children }: FrameProps) {
  const main = useRef<HTMLElement>(null);
  const seen = useRef(page);
  useEffect(() => {
    if (seen.current === page) return;
    seen.current = page;
    main.current?.focus();
    scrollTo(0, 0);
  });
  const top = (
    <>
      <div class={style["top"]}>
        <span>{about ?? ""}</span>
        <span aria-hidden="true">{statusOf(shown)}</span>
      </div>
      {shown.saving === "failed" ? (
        <Note stop role="alert">
          {words.status.failed}
        </Note>
      ) : null}
      {shown.sender === "unknown phone" ? (
        <Note stop role="alert">
          {words.status.unknownPhone}
        </Note>
      ) : null}
      {head}
    </>
  );
  return (
    <main class={style["page"]} ref={main} tabIndex={-1}>
      <p class={style["heard"]} role="status">
        {statusOf(shown)}
      </p>
      <Head.Provider value={top}>{children}</Head.Provider>
    </main>
  );
}

/** What scrolls; the foot below it never covers any of it. */
export function Body({ children }: { children: ComponentChildren }) {
  return (
    <div class={style["body"]}>
      {useContext(Head)}
      {children}
    </div>
  );
}

/** What ends a page, in reach of the thumb. `beside` stands above it and keeps its room, so that nothing moves. */
export function Foot({ beside, children }: { beside?: ComponentChildren; children: ComponentChildren }) {
  return (
    <div class={style["foot"]}>
      {beside === undefined ? null : <div class={style["beside"]}>{beside}</div>}
      <div class={style["ends"]}>{children}</div>
    </div>
  );
}
