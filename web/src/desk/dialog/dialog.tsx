import { type ReactNode, useEffect, useId, useRef } from "react";
import style from "./dialog.module.css";

interface Props {
  readonly title: string;
  /** Called when it was left by Escape; the one who opened it takes it away. */
  readonly close: () => void;
  readonly children: ReactNode;
}

/** A question over the page. The page behind it stands still, and gets the focus back where it was. */
export function Dialog({ title, close, children }: Props) {
  const box = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const from = document.activeElement;
    box.current?.showModal();
    return () => {
      if (from instanceof HTMLElement && from.isConnected) from.focus();
    };
  }, []);
  return (
    <dialog
      ref={box}
      className={style["dialog"]}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        close();
      }}
    >
      <h2 id={id}>{title}</h2>
      {children}
    </dialog>
  );
}
