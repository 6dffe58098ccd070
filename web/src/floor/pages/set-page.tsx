import type { PlanSlot } from "@stave/core/model";
import type { Load } from "@stave/core/units";
import { Bars, Button, LoadPicker, Note, NumberField, Reserve, Running } from "../parts/index.ts";
import {
  type Asked,
  askedSpan,
  boundLoad,
  countedAs,
  type Entry,
  entryOf,
  isSaid,
  mostOf,
  ofStep,
  passed,
  placeKey,
  type Side,
  type Step,
  seedOf,
  setDone,
  sidesOf,
  stepKey,
  stepped,
  type Timer,
} from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import { HowTo } from "./how-to.tsx";
import { formOf, nameOf } from "./names.ts";
import style from "./page.module.css";
import { type SessionRun, showAside } from "./running.ts";
import { Stops } from "./stops.tsx";

type SetStep = Extract<Step, { kind: "set" }>;

function askedOf(slot: PlanSlot, set: number, loads: readonly Load[]): Asked {
  const load = boundLoad(slot.loads?.[set] ?? slot.load, loads);
  return {
    dose: slot.dose.sets[set]!,
    ...(slot.side === undefined ? {} : { side: slot.side }),
    ...(load === undefined ? {} : { load }),
  };
}

/** One set: the stroke that the thumb sets, the load, what was left in reserve, and done. */
export function SetPage({ run, step }: { run: SessionRun; step: SetStep }) {
  const { phone, bundle, view, draft } = run;
  const key = stepKey(step);
  const { exercise } = step.of;
  const form = formOf(bundle, exercise);
  const bounds = draft.bounds[step.slot];
  const limits = bounds?.exercise === exercise ? bounds.loads : undefined;
  const loads = limits ?? form?.loads ?? [];
  const asked = askedOf(step.of, step.set, loads);
  const { amount } = asked.dose;
  const counted = countedAs(amount);
  const sides = sidesOf(asked);
  const said = view.sets.get(key);
  const before = step.of.dose.sets.slice(0, step.set).flatMap((_, set) => {
    const { done } = view.sets.get(placeKey({ slot: step.slot, set })) ?? {};
    return done === undefined ? [] : [done];
  });
  // Sets that ask for loads of their own do not take over the load of the one before.
  const seed: Entry =
    said?.done !== undefined ? entryOf(said.done) : step.of.loads === undefined ? seedOf(before, exercise) : {};
  const entry = draft.entries[key] ?? seed;

  const touch = (change: (entry: Entry) => Entry) =>
    phone.touch(view.of.id, (now) => ({
      ...now,
      at: key,
      entries: { ...now.entries, [key]: change(now.entries[key] ?? seed) },
    }));
  const set = (field: keyof Entry, value: Entry[keyof Entry] | undefined) =>
    touch(({ [field]: _was, ...rest }) => (value === undefined ? rest : { ...rest, [field]: value }));
  const setTimer = (timer: Timer | undefined) =>
    phone.touch(view.of.id, ({ timer: _was, ...rest }) => (timer === undefined ? rest : { ...rest, timer }));
  const what = counted === "holdS" ? words.control.seconds : words.control.reps;

  const write = (kind: "set-done" | "set-left-out" | "struck") => {
    const of = ofStep(bundle, view, step);
    const replaces = said === undefined ? {} : { replaces: said.event.id };
    return phone.say(view.of.id, {
      said: [
        kind === "set-done"
          ? { kind, of, data: setDone(exercise, asked, entry, loads), ...replaces }
          : { kind, of, data: {}, ...replaces },
      ],
      already: (events) =>
        said === undefined ? isSaid(events, step) : events.some((event) => event.replaces === said.event.id),
      draft: ({ timer: _timer, ...now }) => passed(now, view, step),
    });
  };

  const { timer } = draft;
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{nameOf(bundle, exercise)}</h1>
          <p>
            {words.course.set(step.set + 1, step.of.dose.sets.length)} ·{" "}
            {words.course.slotDose(amount, step.of, asked.dose.eachSide)}
          </p>
        </div>
        {said === undefined ? null : <Note>{words.course.corrects}</Note>}
        {limits === undefined ? null : (
          <Note stop role="status">
            {words.course.news}:{" "}
            {words.course.newLoads(words.load(loads.at(-1) ?? { value: 0, unit: bundle.person.units }))}
          </Note>
        )}
        {form === undefined ? null : <HowTo form={form} />}
        {counted === undefined ? null : (
          <>
            <Bars amount={amount} sides={sides} entry={entry} set={(side, value) => void set(side, value)} />
            <div class={style["sides"]}>
              {sides.map((side) => (
                <div key={side}>
                  <NumberField
                    name={words.control.of(what, side)}
                    title={side === "both" ? what : words.side(side)}
                    value={entry[side]}
                    most={mostOf(amount)}
                    asked={words.span(askedSpan(amount))}
                    step={(by) => void touch((now) => ({ ...now, [side]: stepped(now[side], by, amount) }))}
                    set={(value) => void set(side, value)}
                  />
                  {counted === "holdS" ? (
                    <HoldTimer run={run} side={side} seconds={askedSpan(amount).to} set={set} setTimer={setTimer} />
                  ) : null}
                </div>
              ))}
            </div>
          </>
        )}
        {form === undefined || (loads.length === 0 && asked.load === undefined) ? null : (
          <LoadPicker
            exercise={form}
            loads={loads}
            asked={asked.load}
            value={entry.load}
            find={step.of.find === undefined ? undefined : words.control.find(step.of.find.from)}
            set={(load) => void set("load", load)}
          />
        )}
        {counted === "reps" ? <Reserve value={entry.reserve} set={(reserve) => void set("reserve", reserve)} /> : null}
        <Stops bundle={bundle} />
      </Body>
      <Foot
        beside={
          timer?.kind === "rest" ? (
            <Running
              timer={timer}
              aloud={phone.shown.kept.aloud}
              setAloud={(aloud) => phone.setAloud(aloud)}
              stop={() => setTimer(undefined)}
            />
          ) : (
            <>
              {step.restS === undefined ? null : (
                <Button kind="quiet" tap={() => setTimer({ kind: "rest", from: Date.now(), seconds: step.restS! })}>
                  {words.timer.rest(step.restS)}
                </Button>
              )}
              <Button kind="quiet" tap={() => write(said === undefined ? "set-left-out" : "struck")}>
                {said === undefined ? words.course.leaveOut : words.course.takeBack}
              </Button>
            </>
          )
        }
      >
        <Button kind="warning" tap={() => showAside(run, "hurt")}>
          {words.hurt.button}
        </Button>
        <Button tap={() => showAside(run, "easier")}>{words.easier.button}</Button>
        <Button kind="strong" tap={() => write("set-done")}>
          {said === undefined ? words.course.done : words.course.change}
        </Button>
      </Foot>
    </>
  );
}

interface HoldTimerProps {
  readonly run: SessionRun;
  readonly side: Side;
  readonly seconds: number;
  readonly set: (side: Side, value: number) => Promise<void>;
  readonly setTimer: (timer: Timer | undefined) => Promise<void>;
}

/** Times a hold; what it measured is then the value, to be changed like any other. */
function HoldTimer({ run, side, seconds, set, setTimer }: HoldTimerProps) {
  const { timer } = run.draft;
  if (timer?.kind !== "hold") {
    return (
      <Button wide tap={() => setTimer({ kind: "hold", side, from: Date.now(), seconds })}>
        {words.timer.hold}
      </Button>
    );
  }
  if (timer.side !== side) return null;
  return (
    <Running
      timer={timer}
      aloud={run.phone.shown.kept.aloud}
      setAloud={(aloud) => run.phone.setAloud(aloud)}
      stop={async (held) => {
        await setTimer(undefined);
        await set(side, held);
      }}
    />
  );
}
