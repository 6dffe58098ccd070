import type { Day } from "../day.ts";
import { type Answers, DISEASES, type Disease, SIGNS, type Sign } from "./answers.ts";

/** What a person says before a session that they did not say when they were screened. */
export interface News {
  readonly disease?: readonly Disease[];
  readonly signs?: readonly Sign[];
  /** The person asks to train harder than they said. */
  readonly wanted?: Answers["wanted"];
}

/**
 * The answers as they stand after "anything new since last time?". What was said stays; what is new is added and
 * dated, and screening is asked again with the whole.
 *
 * @param active whether the person has trained as the question of activity wants since they were screened: then a new
 * sign stops them, where somebody who has not begun would ask a doctor first
 */
export function withNews(answers: Answers, news: News, on: Day, by: string, active?: boolean): Answers {
  const yes = <Name extends string>(names: readonly Name[] | undefined): Partial<Record<Name, boolean>> =>
    Object.fromEntries((names ?? []).map((name) => [name, true])) as Partial<Record<Name, boolean>>;
  const now = active ?? answers.active;
  const wanted = news.wanted ?? answers.wanted;
  return {
    ...answers,
    on,
    by,
    ...(now === undefined ? {} : { active: now }),
    disease: { ...answers.disease, ...yes(news.disease) },
    signs: { ...answers.signs, ...yes(news.signs) },
    ...(wanted === undefined ? {} : { wanted }),
  };
}

/** Names that are yes now and were not yes before; an empty list means that screening need not be asked again. */
export function newSince(before: Answers, now: Answers): readonly (Disease | Sign)[] {
  return [
    ...DISEASES.filter((name) => now.disease[name] === true && before.disease[name] !== true),
    ...SIGNS.filter((name) => now.signs[name] === true && before.signs[name] !== true),
  ];
}
