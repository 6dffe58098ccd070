import type { Bundle } from "@stave/core/model";
import type { Phone } from "../phone.ts";
import type { Draft, SessionView, Step } from "../session/index.ts";
import { freshDraft, opened, viewOf } from "../session/index.ts";

/** A session that runs, for its pages. */
export interface SessionRun {
  readonly phone: Phone;
  readonly bundle: Bundle;
  readonly view: SessionView;
  readonly draft: Draft;
}

/** @returns the session that fills the screen, or undefined between sessions */
export function runningSession(phone: Phone): SessionRun | undefined {
  const { bundle: kept, next, open, events, drafts } = phone.shown.kept;
  const of = kept?.bundle.sessions.find(({ id }) => id === open);
  if (kept === undefined || of === undefined) return undefined;
  const draft = drafts.get(of.id) ?? freshDraft(of.id);
  const own = events.filter(({ session }) => session === of.id).map(({ event }) => event);
  const view = viewOf(of, kept.bundle, own, draft, next?.bundle);
  return { phone, bundle: kept.bundle, view, draft };
}

/** Shows a step. */
export function goTo({ phone, view }: SessionRun, step: Step | undefined): Promise<void> {
  return phone.touch(view.of.id, (draft) => opened(draft, view, step));
}

/** Shows what stands beside the course, or puts it away. */
export function showAside({ phone, view }: SessionRun, aside: Draft["aside"]): Promise<void> {
  return phone.touch(view.of.id, ({ aside: _aside, hurt: _hurt, told: _told, ...rest }) =>
    aside === undefined ? rest : { ...rest, aside },
  );
}
