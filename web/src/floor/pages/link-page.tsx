import { Button, Note } from "../parts/index.ts";
import type { LinkState, Phone } from "../phone.ts";
import { words } from "../words.ts";
import { Body, Frame } from "./frame.tsx";
import style from "./page.module.css";

const SAYS: Readonly<Record<LinkState, string | undefined>> = {
  asked: undefined,
  busy: words.link.busy,
  "no network": words.link.noNetwork,
  "not valid": words.link.notValid,
  "unsent first": words.link.unsentFirst,
};

/** The page of a link: nothing is asked of the server before the tap, since previews of mail open links too. */
export function LinkPage({ phone, link }: { phone: Phone; link: LinkState }) {
  const says = SAYS[link];
  const has = phone.shown.kept.device !== undefined;
  return (
    <Frame shown={phone.shown} page="link">
      <Body>
        <div class={style["title"]}>
          <h1>{words.link.title}</h1>
        </div>
        <p>{words.link.why}</p>
        {has ? <p>{words.link.already}</p> : null}
        <div role="status">{says === undefined ? null : <Note stop={link !== "busy"}>{says}</Note>}</div>
        <Button kind="strong" wide disabled={link === "busy" || link === "not valid"} tap={() => phone.takeLink()}>
          {words.link.open}
        </Button>
        {has ? (
          <Button kind="quiet" wide tap={() => phone.leaveLink()}>
            {words.link.back}
          </Button>
        ) : null}
      </Body>
    </Frame>
  );
}
