import { Body, Frame, LinkPage, runningSession, SessionPage, TodayPage } from "./pages/index.ts";
import type { Phone } from "./phone.ts";
import { words } from "./words.ts";

/** What fills the screen, by what the phone knows. */
export function App({ phone }: { phone: Phone }) {
  const { shown } = phone;
  const { device, bundle } = shown.kept;
  if (shown.link !== undefined) return <LinkPage phone={phone} link={shown.link} />;
  if (device === undefined || bundle === undefined) {
    return (
      <Frame shown={shown} page="empty">
        <Body>
          <h1>{words.link.title}</h1>
          <p>{device === undefined ? words.link.none : words.plan.coming}</p>
        </Body>
      </Frame>
    );
  }
  const run = runningSession(phone);
  return run === undefined ? <TodayPage phone={phone} bundle={bundle.bundle} /> : <SessionPage run={run} />;
}
