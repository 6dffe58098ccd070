import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { type Address, Link, printAddress, useAddress } from "./address/index.ts";
import { Connection } from "./connection.tsx";
import { isTyping } from "./keys/index.ts";
import { KeysDialog } from "./keys/keys-dialog.tsx";
import { MorningPage } from "./morning/index.ts";
import { PeoplePage } from "./people/index.ts";
import { PersonPage } from "./person/index.ts";
import { RulesPage } from "./rules/index.ts";
import { words } from "./words.ts";

function Page({ address }: { readonly address: Address }) {
  switch (address.page) {
    case "morning":
      return <MorningPage />;
    case "people":
      return <PeoplePage find={address.find} by={address.by} />;
    case "person":
      return <PersonPage key={address.id} id={address.id} week={address.week} />;
    case "rules":
      return <RulesPage />;
    case "nowhere":
      return (
        <>
          <h1>{words.nowhere.title}</h1>
          <p className="soft">{words.nowhere.text(address.path)}</p>
        </>
      );
  }
}

/** What makes another page of it; a filter or a week does not. */
function pageOf(address: Address): string {
  return address.page === "person" ? printAddress({ page: "person", id: address.id }) : address.page;
}

/** The frame around every page: its name, the ways to the others, the page itself. */
export function Desk() {
  const address = useAddress();
  const [keys, setKeys] = useState(false);
  const main = useRef<HTMLElement>(null);
  const page = pageOf(address);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page takes the focus, so that reading begins there
  useEffect(() => {
    main.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [page]);
  const onKey = (event: KeyboardEvent) => {
    if (event.key !== "?" || isTyping(event.target)) return;
    event.preventDefault();
    setKeys(true);
  };
  const people = address.page === "people" || address.page === "person";
  return (
    <>
      <a className="skip" href="#main">
        {words.toMain}
      </a>
      <header className="head">
        <p className="product">{words.product}</p>
        <nav aria-label={words.pagesLabel}>
          <Link to={{ page: "morning" }} aria-current={address.page === "morning" ? "page" : undefined}>
            {words.pages.morning}
          </Link>
          <Link to={{ page: "people", find: "", by: "name" }} aria-current={people ? "page" : undefined}>
            {words.pages.people}
          </Link>
          <Link to={{ page: "rules" }} aria-current={address.page === "rules" ? "page" : undefined}>
            {words.pages.rules}
          </Link>
        </nav>
        <Connection />
        <button type="button" className="plain" onClick={() => setKeys(true)}>
          {words.keys.open}
        </button>
      </header>
      <main id="main" ref={main} tabIndex={-1} onKeyDown={onKey}>
        <Page address={address} />
      </main>
      {keys && <KeysDialog close={() => setKeys(false)} />}
    </>
  );
}
