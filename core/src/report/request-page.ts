import { printDay } from "../day.ts";
import type { AdviceRequest } from "../screen/index.ts";
import { en, type Messages, type Names, sayReason } from "../text/index.ts";

/** One page to a clinician, as its layout takes it. */
export interface RequestPage {
  readonly lang: string;
  readonly paper: "a4" | "us-letter";
  readonly title: string;
  /** Whom it goes to, whom it comes from, whom it is about. */
  readonly head: readonly string[];
  readonly asks: { readonly title: string; readonly text: string };
  readonly why: { readonly title: string; readonly facts: readonly string[]; readonly rule: string };
  readonly answer: {
    readonly title: string;
    readonly may: string;
    readonly boxes: readonly string[];
    /** Each is followed by lines to write on. */
    readonly lines: readonly { readonly label: string; readonly lines: number }[];
  };
  readonly foot: readonly string[];
}

/** @returns the page of a request; every word that is not the person's or the coach's own comes from `words` */
export function requestPage(
  request: AdviceRequest,
  dated: string,
  names: Names,
  paper: "a4" | "us-letter",
  words: Messages = en,
): RequestPage {
  const { name, born, on, by, wanted, efforts, facts, consent } = request;
  const { request: says, print } = words;
  const date = (value: typeof on) => print.date(printDay(value));
  return {
    lang: "en",
    paper,
    title: says.title,
    head: [says.to, says.from(by, date(on)), says.person(name, date(born))],
    asks: { title: says.asks, text: says.wants(name, wanted) },
    why: { title: says.why, facts: facts.map((fact) => sayReason(fact, names, words)), rule: says.rule(dated) },
    answer: {
      title: says.answer,
      may: says.may,
      boxes: [...efforts.map((effort) => says.efforts[effort]), says.none],
      lines: [
        { label: says.limits, lines: 3 },
        { label: says.first, lines: 2 },
        { label: says.signed, lines: 1 },
      ],
    },
    foot: [says.consent(consent.by, date(consent.on), consent.guardian), says.caution],
  };
}
