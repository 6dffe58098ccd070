import { nearExercises } from "@stave/core/exercises";
import { conflictOf, type FitInput, fitPhase, type WhyNot, whatHelps, whyNot } from "@stave/core/fit";
import { nearNames, type Phase, type Problem, type Reason, slotsOf } from "@stave/core/model";
import { fitTask } from "@stave/core/revise";
import { namesFrom, sayConflict, sayGains, sayPoints, sayReason, sayWhyNot } from "@stave/core/text";
import { type Answer, failed, type Io } from "./answer.ts";
import { slotWords } from "./fit.ts";
import { type PeopleOptions, readPlans } from "./plans.ts";
import { placeOf } from "./world.ts";

export interface WhyOptions extends PeopleOptions {
  readonly person: string;
  /** An exercise: why not this one? */
  readonly not?: string;
  /** Also solve every single change, and say what each would gain. */
  readonly helps?: boolean;
}

function indented(lines: readonly string[]): readonly string[] {
  return lines.map((line) => `  ${line}`);
}

/** A sentence, and what belongs to it indented under it. */
function underFirst([first = "", ...rest]: readonly string[]): readonly string[] {
  return [first, ...indented(rest)];
}

/** What a slot's form counts by itself, as the fit of this phase has it. */
function pointsIn(task: FitInput, slot: string) {
  const { lines } = fitPhase(task);
  return lines.flatMap(({ id, level, points, slot: at }) => (at === slot ? [{ id, level, points }] : []));
}

/** Why a slot holds what it holds for one person, and why not something else. */
export async function why(path: string, slotKey: string, options: WhyOptions, io: Io): Promise<Answer> {
  const command = "why";
  const read = await readPlans([path], options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const planned = read.value.plans[0]!;
  const { catalogue } = read.value;
  const { person, programme, plan } = planned;
  const has = (phase: Phase) =>
    phase.sessions.some(({ work }) => work.some((block) => slotsOf(block).some(({ slot }) => slot === slotKey)));
  const phaseAt = programme.programme.phases.findIndex(has);
  const keys = plan.phases.flatMap((phase) =>
    phase.weeks[0]!.sessions.flatMap((session) => [
      ...session.blocks.flatMap((block) => block.slots.map(({ key }) => key)),
      ...session.open.map(({ key }) => key),
    ]),
  );
  const problem = (code: string, found: string, allowed: readonly string[], maybe: string | undefined): Problem => ({
    code,
    file: path,
    at: [],
    line: 0,
    column: 0,
    found,
    allowed: allowed.join(", "),
    ...(maybe === undefined ? {} : { maybe }),
  });
  if (phaseAt < 0 || !keys.includes(slotKey))
    return failed(command, [problem("why/no-such-slot", slotKey, keys, nearNames(slotKey, keys)[0])]);
  const sessions = plan.phases[phaseAt]!.weeks[0]!.sessions;
  const slot = sessions
    .flatMap((session) => session.blocks.flatMap((block) => block.slots))
    .find(({ key }) => key === slotKey);
  const open = sessions.flatMap((session) => session.open).find(({ key }) => key === slotKey);
  const reasons = slot?.why ?? open?.why ?? [];
  const head =
    slot === undefined
      ? `${slotKey}, ${person.name}: left open`
      : `${slotKey}, ${person.name}: ${slotWords(slot, person.units, catalogue)}`;
  const titles = programme.programme.phases[phaseAt]!.sessions.map(({ key, title }) => [key, title] as const);
  const names = namesFrom(catalogue, { sessions: new Map(titles) });
  const found = slot?.find === undefined ? [] : [slot.find.because];
  const task = fitTask(
    {
      programme: programme.programme,
      programmeHash: programme.hash,
      person,
      place: placeOf(person, read.value.roster),
      others: read.value.roster.places,
      catalogue,
      on: read.value.on,
    },
    phaseAt,
  );
  let other: { readonly exercise: string; readonly answer: WhyNot } | undefined;
  if (options.not !== undefined) {
    if (!catalogue.exercises.has(options.not)) {
      const maybe = nearExercises(catalogue, options.not).map(({ id }) => id);
      return failed(command, [problem("why/no-such-exercise", options.not, maybe, maybe[0])]);
    }
    other = { exercise: options.not, answer: whyNot(task, slotKey, options.not)! };
  }
  const why: readonly Reason[] = [...reasons, ...found];
  const points = pointsIn(task, slotKey);
  const conflict = slot === undefined ? conflictOf(task, slotKey) : undefined;
  const helps = options.helps === true ? whatHelps(task).gains : undefined;
  const result = {
    person: person.id,
    slot: slotKey,
    exercise: slot?.exercise ?? null,
    why,
    points,
    ...(other === undefined ? {} : { not: other }),
    ...(conflict === undefined ? {} : { conflict }),
    ...(helps === undefined ? {} : { helps }),
  };
  const words = [
    head,
    ...indented(why.map((reason) => sayReason(reason, names))),
    ...indented(sayPoints(points)),
    ...(conflict === undefined ? [] : underFirst(sayConflict(conflict, names))),
    ...(other === undefined ? [] : underFirst(sayWhyNot(other.exercise, other.answer, names))),
    ...(helps === undefined ? [] : underFirst(sayGains(helps, names))),
  ].join("\n");
  return { command, result, findings: [], problems: [], words: `${words}\n` };
}
