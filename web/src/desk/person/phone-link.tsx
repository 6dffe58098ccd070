import type { LinkOutput } from "@stave/core/api";
import { useId, useRef, useState } from "react";
import { type Fault, tell } from "../ask/index.ts";
import { Dialog } from "../dialog/index.ts";
import { FaultNote } from "../fault-note.tsx";
import { useSay } from "../speaker.tsx";
import { words } from "../words.ts";
import style from "./person.module.css";

/** Makes a link by which the person's phone gets the plan; its address is shown once and kept nowhere. */
export function PhoneLink({ person }: { readonly person: string }) {
  const [link, setLink] = useState<LinkOutput | undefined>();
  const [fault, setFault] = useState<Fault | undefined>();
  const [busy, setBusy] = useState(false);
  const make = async () => {
    setBusy(true);
    setFault(undefined);
    const answer = await tell<LinkOutput>(`people/${encodeURIComponent(person)}/links`);
    if (answer.ok) setLink(answer.value);
    else setFault(answer.fault);
    setBusy(false);
  };
  return (
    <section className={style["phone"]}>
      <h2>{words.link.title}</h2>
      <p className="soft small">{words.link.about}</p>
      <button type="button" disabled={busy} onClick={make}>
        {words.link.make}
      </button>
      {fault !== undefined && <FaultNote fault={fault} again={make} />}
      {link !== undefined && <MadeLink link={link} close={() => setLink(undefined)} />}
    </section>
  );
}

function MadeLink({ link, close }: { readonly link: LinkOutput; readonly close: () => void }) {
  const field = useRef<HTMLInputElement>(null);
  const [copied, setCopied] = useState("");
  const say = useSay();
  const id = useId();
  const copy = async () => {
    field.current?.select();
    const said = await navigator.clipboard
      .writeText(location.origin + link.path)
      .then(() => words.link.copied)
      .catch(() => words.link.cannotCopy);
    setCopied(said);
    say(said);
  };
  return (
    <Dialog title={words.link.made} close={close}>
      <p>{words.link.once(words.instant(link.expires))}</p>
      <div className="field">
        <label htmlFor={id}>{words.link.address}</label>
        <input
          id={id}
          ref={field}
          type="text"
          readOnly
          value={location.origin + link.path}
          onFocus={(event) => event.target.select()}
        />
      </div>
      <div className="actions">
        <button type="button" className="first" onClick={copy}>
          {words.link.copy}
        </button>
        <button type="button" onClick={close}>
          {words.close}
        </button>
      </div>
      <p className="soft small">{copied}</p>
    </Dialog>
  );
}
