import type { Bundle, BundleSession, Reason } from "@stave/core/model";
import { drawStrokes } from "@stave/core/sign";
import { Button, Note, Sign } from "../parts/index.ts";
import type { Phone } from "../phone.ts";
import { freshDraft, nextStep, opened, type SessionView, slotsOf, strokesOf, viewOf } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Frame } from "./frame.tsx";
import { reasonOf } from "./names.ts";
import { OnlyHere } from "./only-here.tsx";
import style from "./page.module.css";

/** Today as this phone's calendar has it, YYYY-MM-DD. */
function todayHere(now: Date): string {
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
}

function begin(phone: Phone, bundle: Bundle, view: SessionView): Promise<void> {
  const session = view.of.id;
  return phone.say(session, {
    said: view.begun ? [] : [{ kind: "session-started", data: {}, of: { plan: bundle.plan, session } }],
    already: (events) => events.length > 0,
    draft: (draft) => opened(draft, view, nextStep(view, draft)),
    open: session,
  });
}

function Entry({ phone, bundle, of, today }: { phone: Phone; bundle: Bundle; of: BundleSession; today: string }) {
  const events = phone.shown.kept.events.filter(({ session }) => session === of.id).map(({ event }) => event);
  const view = viewOf(of, bundle, events, freshDraft(of.id));
  const title = words.session(of.title);
  const { minutes } = of.session;
  const slots = slotsOf(view.now);
  const state = view.ended === undefined ? undefined : view.ended.early ? words.plan.doneEarly : words.plan.done;
  const nothing = slots.length === 0 && view.now.conditioning.length === 0;
  const tap = view.ended !== undefined ? words.plan.again : view.begun ? words.plan.goOn : words.plan.start;
  return (
    <li>
      <div>
        <p class={style["soft"]}>
          {of.day === today ? words.plan.today : words.plan.day(of.day)}, {words.plan.when(of.from)}
          {state === undefined ? "" : ` · ${state}`}
        </p>
        <h2>{title}</h2>
        <p class={style["soft"]}>
          {nothing
            ? words.plan.allWait
            : `${words.plan.movements(slots.length)}, ${words.plan.minutes(minutes.low, minutes.high)}`}
        </p>
      </div>
      {nothing && !view.begun ? null : (
        <>
          <Sign class={style["drawn"]} drawing={drawStrokes(strokesOf(view), { height: 36, scale: "each" })} />
          <Button
            kind={of.day === today && view.ended === undefined ? "strong" : "plain"}
            wide
            label={`${tap}: ${title}`}
            tap={() => begin(phone, bundle, view)}
          >
            {tap}
          </Button>
        </>
      )}
    </li>
  );
}

/** Movements that wait, each reason once. */
function Waiting({ bundle }: { bundle: Bundle }) {
  const because = new Map<string, number>();
  for (const paused of bundle.paused) {
    const says = reasonOf(bundle, paused.because);
    because.set(says, (because.get(says) ?? 0) + 1);
  }
  return (
    <>
      {[...because].map(([says, count]) => (
        <Note key={says} stop>
          {words.plan.waiting(count)} {says}
        </Note>
      ))}
    </>
  );
}

/** Why there is no session, and whom to ask. */
function Withheld({ bundle, why }: { bundle: Bundle; why: Reason }) {
  return (
    <Note stop>
      {reasonOf(bundle, why)} {words.plan.ask(bundle.call)}
    </Note>
  );
}

/** Between sessions: today's on top, and the days after. */
export function TodayPage({ phone, bundle }: { phone: Phone; bundle: Bundle }) {
  const today = todayHere(new Date());
  const sessions = bundle.sessions.filter(({ day }) => day >= today);
  return (
    <Frame shown={phone.shown} page="today">
      <Body>
        <div class={style["title"]}>
          <h1>{words.plan.greeting(bundle.person.name)}</h1>
        </div>
        <OnlyHere bundle={bundle} events={phone.shown.kept.events} />
        {bundle.withheld === undefined ? (
          <Waiting bundle={bundle} />
        ) : (
          <Withheld bundle={bundle} why={bundle.withheld} />
        )}
        {sessions.length === 0 && bundle.withheld === undefined ? <p>{words.plan.none}</p> : null}
        <ul class={style["list"]}>
          {sessions.map((of) => (
            <Entry key={`${bundle.plan} ${of.id}`} phone={phone} bundle={bundle} of={of} today={today} />
          ))}
        </ul>
      </Body>
    </Frame>
  );
}
