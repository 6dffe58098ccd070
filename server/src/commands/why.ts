import { CATALOGUE, nearExercises } from "@stave/core/exercises";
import { type WhyNot, whyNot } from "@stave/core/fit";
import { nearNames, type Phase, type Problem, type Reason, slotsOf } from "@stave/core/model";
import { fitTask } from "@stave/core/revise";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { type Answer, failed, type Io } from "./answer.ts";
import { slotWords } from "./fit.ts";
import { type PeopleOptions, readPlans } from "./plans.ts";
import { placeOf } from "./world.ts";

export interface WhyOptions extends PeopleOptions {
  readonly person: string;
  /** An exercise: why not this one? */
  readonly not?: string;
}

const NAMES = namesFrom(CATALOGUE);

function say(reasons: readonly Reason[]): string {
  return reasons.map((reason) => `  ${sayReason(reason, NAMES)}`).join("\n");
}

function whyNotWords(exercise: string, answer: WhyNot): string {
  const name = NAMES.exercise(exercise);
  switch (answer.kind) {
    case "chosen":
      return `${name} is what the plan has.`;
    case "set aside":
      return `${name} is set aside:\n${say(answer.why)}`;
    case "not thought of":
      return `${name} is of another pattern, and not the first choice, so this slot never asks for it.`;
    case "does not fit":
      return `With ${name} here, no plan keeps every session within its minutes.`;
    case "costs": {
      const constraints: Readonly<Record<string, string>> = en.words.constraints;
      const lines = answer.lines.map(
        ({ id, best, forced }) =>
          `  ${constraints[id] ?? id}: ${forced - best > 0 ? "+" : "−"}${Math.abs(forced - best)}`,
      );
      const must = answer.must === 0 ? "" : `${answer.must} must points more missing and `;
      if (answer.must === 0 && answer.want === 0)
        return `${name} would be as good; the stated order of ties puts the other first.`;
      return `With ${name} here, the best plan of the phase has ${must}${Math.abs(answer.want)} want points ${answer.want >= 0 ? "fewer" : "more"}:\n${lines.join("\n")}`;
    }
  }
}

/** Why a slot holds what it holds for one person, and why not something else. */
export async function why(path: string, slotKey: string, options: WhyOptions, io: Io): Promise<Answer> {
  const command = "why";
  const read = await readPlans([path], options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const planned = read.value.plans[0]!;
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
      : `${slotKey}, ${person.name}: ${slotWords(slot, person.units)}`;
  const found = slot?.find === undefined ? [] : [slot.find.because];
  let other: { readonly exercise: string; readonly answer: WhyNot } | undefined;
  if (options.not !== undefined) {
    if (!CATALOGUE.exercises.has(options.not)) {
      const maybe = nearExercises(CATALOGUE, options.not).map(({ id }) => id);
      return failed(command, [problem("why/no-such-exercise", options.not, maybe, maybe[0])]);
    }
    const task = fitTask(
      {
        programme: programme.programme,
        programmeHash: programme.hash,
        person,
        place: placeOf(person, read.value.roster),
        others: read.value.roster.places,
        catalogue: CATALOGUE,
        on: read.value.on,
      },
      phaseAt,
    );
    other = { exercise: options.not, answer: whyNot(task, slotKey, options.not)! };
  }
  const result = {
    person: person.id,
    slot: slotKey,
    exercise: slot?.exercise ?? null,
    why: [...reasons, ...found],
    ...(other === undefined ? {} : { not: other }),
  };
  const words = [
    head,
    say([...reasons, ...found]),
    ...(other === undefined ? [] : [whyNotWords(other.exercise, other.answer)]),
  ].join("\n");
  return { command, result, findings: [], problems: [], words: `${words}\n` };
}
