import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { Note, Status } from "../parts/index.ts";
import type { Shown } from "../phone.ts";
import { words } from "../words.ts";
import style from "./page.module.css";

interface FrameProps {
  readonly shown: Shown;
  /** At the left of the status. */
  readonly about?: string;
  /** Changes whenever another page is shown, so that readers of the screen begin at its top. */
  readonly page: string;
  readonly children: ComponentChildren;
}

/** What every page has: where things stand, and what must not be missed. */
export function Frame({ shown, about, page, children }: FrameProps) {
  const main = useRef<HTMLElement>(null);
  const seen = useRef(page);
  useEffect(() => {
    if (seen.current === page) return;
    seen.current = page;
    main.current?.focus();
    scrollTo(0, 0);
  });
  return (
    <main class={style["page"]} ref={main} tabIndex={-1}>
      <div class={style["top"]}>
        <span>{about ?? ""}</span>
        <Status {...shown} />
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
      {children}
    </main>
  );
}
