import type { PeopleOutput } from "@stave/core/api";
import { useDeferredValue, useEffect, useId, useMemo, useRef } from "react";
import { go, type Order } from "../address/index.ts";
import { useLoaded } from "../ask/index.ts";
import { FaultNote, Reading } from "../fault-note.tsx";
import { useLetters, useRows } from "../keys/index.ts";
import { words } from "../words.ts";
import { findPeople } from "./find.ts";
import style from "./people.module.css";
import { PeopleTable } from "./people-table.tsx";

/** Everybody, found as the coach types; what is found has an address of its own. */
export function PeoplePage({ find, by }: { readonly find: string; readonly by: Order }) {
  const { value, fault, again } = useLoaded<PeopleOutput>("people");
  // A long list follows the typing, and never holds it up.
  const wanted = useDeferredValue(find);
  const found = useMemo(() => findPeople(value?.people ?? [], wanted, by), [value, wanted, by]);
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useRows();
  useLetters({ f: () => field.current?.focus() });
  useEffect(() => {
    document.title = words.title(words.pages.people);
  }, []);
  if (value === undefined) return fault === undefined ? <Reading /> : <FaultNote fault={fault} again={again} />;
  const all = value.people.length;
  return (
    <>
      <div className={style["top"]}>
        <h1 tabIndex={-1}>{words.people.title(all)}</h1>
        <search className={style["find"]}>
          <label htmlFor={id}>{words.people.find}</label>
          <input
            id={id}
            ref={field}
            type="search"
            value={find}
            maxLength={80}
            onChange={(event) => go({ page: "people", find: event.target.value, by }, "replace")}
          />
        </search>
      </div>
      {fault !== undefined && <FaultNote fault={fault} again={again} />}
      <p className={`soft ${style["found"]}`} role="status">
        {all === 0
          ? words.people.nobody
          : found.length === 0
            ? words.people.none(wanted)
            : wanted === ""
              ? ""
              : words.people.found(found.length, all)}
      </p>
      {found.length > 0 && <PeopleTable people={found} by={by} find={find} />}
    </>
  );
}
