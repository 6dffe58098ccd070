import { CATALOGUE } from "@stave/core/exercises";
import type { Catalogue } from "@stave/core/model";
import { en } from "@stave/core/text";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, fillPractice, Practice } from "../practice/index.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { openData } from "./data.ts";
import type { Machine } from "./machine.ts";
import { type PeopleOptions, readTraining } from "./plans.ts";
import { readInput } from "./read-input.ts";

export interface ImportOptions extends PeopleOptions {
  readonly data: string;
  readonly coach: string;
  readonly call?: string;
}

/** Fills a data folder from plain files, and makes the plan of everybody whose plan they change. */
export async function importFiles(
  paths: readonly string[],
  options: ImportOptions,
  io: Io,
  machine: Machine,
): Promise<Answer> {
  const command = "import";
  const read = await readTraining(paths, options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const { roster, programmes, training, without, on, catalogue } = read.value;
  const own = options.exercises === undefined ? undefined : await readInput(options.exercises);
  if (own?.ok === false) return failed(command, own.problems);
  const data = await openData(options.data, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  const { store } = data;
  try {
    await fillPractice(store, LOCAL_PRACTICE, {
      programmes: new Map(programmes.map(({ hash, text }) => [hash, text])),
      places: roster.texts.places,
      ...(own === undefined ? {} : { exercises: own.value }),
      people: roster.texts.people,
      training: training.map(({ person, programme }) => ({ person, programme: programme.hash })),
      on,
      keepStarts: options.from === undefined,
      coach: options.coach,
      call: options.call ?? options.coach,
    });
    const practice = new Practice(store, LOCAL_PRACTICE, new Changes());
    const plans: { person: string; plan: string }[] = [];
    for (const [index, { person }] of training.entries()) {
      const planned = await practice.planned(person.id, machine.clock());
      plans.push({ person: person.id, plan: planned!.plan.id });
      io.err(`planned ${index + 1} of ${training.length}${index + 1 === training.length ? "\n" : "\r"}`);
    }
    const result = {
      plans,
      places: roster.places.map(({ id }) => id),
      programmes: programmes.map(({ programme, hash }) => ({ programme: programme.id, hash })),
      exercises: options.exercises === undefined ? null : ownIn(catalogue),
      without: without.map(({ id, programme }) => ({ person: id, programme: programme ?? null })),
    };
    return { command, result, findings: [], problems: [], words: words(result, options.data) };
  } finally {
    await store.close();
  }
}

/** What a coach's own file makes of the catalogue. */
function ownIn({ exercises }: Catalogue) {
  const ids = { added: [] as string[], changed: [] as string[], hidden: [] as string[] };
  for (const [id, exercise] of exercises) {
    const before = CATALOGUE.exercises.get(id);
    if (before === undefined) ids.added.push(id);
    else if (exercise === before) continue;
    else if (exercise.coachOnly && !before.coachOnly) ids.hidden.push(id);
    else ids.changed.push(id);
  }
  return ids;
}

function words(
  {
    plans,
    places,
    programmes,
    exercises,
    without,
  }: {
    readonly plans: readonly unknown[];
    readonly places: readonly unknown[];
    readonly programmes: readonly unknown[];
    readonly exercises: ReturnType<typeof ownIn> | null;
    readonly without: readonly { readonly person: string }[];
  },
  folder: string,
): string {
  const { plural } = en.print;
  const counts = [
    plural(plans.length, "plan", "plans"),
    plural(programmes.length, "programme", "programmes"),
    plural(places.length, "place", "places"),
  ];
  const own =
    exercises === null
      ? ""
      : `\nOwn exercises: ${exercises.added.length} added, ${exercises.changed.length} changed, ${exercises.hidden.length} hidden.`;
  const left =
    without.length === 0 ? "" : `\nNo programme here for: ${without.map(({ person }) => person).join(", ")}.`;
  return `${counts.join(", ")} in ${folder}/.${own}${left}\nstave serve --data ${folder} serves them.\n`;
}
