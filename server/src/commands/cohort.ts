import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import type { Person, Problem } from "@stave/core/model";
import { en } from "@stave/core/text";
import { ClassBook, classifier, type Entry, fitters, LineFile, type PeopleClass } from "../classes/index.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { cohortPeople, type Told } from "./cohort-people.ts";
import { startDay } from "./plans.ts";
import { UnreadableError } from "./read-table.ts";
import { readProgrammes, readRooms } from "./world.ts";
import { outProblem } from "./write-files.ts";

export interface CohortOptions {
  readonly people: string;
  readonly places: string;
  readonly out: string;
  readonly workers: number;
  readonly from?: string;
}

/** Problems that are told one by one; people beyond them are counted. */
const MOST_PROBLEMS = 100;
/** Classes that are gathered before they are fitted; each is about a thousand characters until then. */
const GATHERED = 10_000;
/** People between two words of progress. */
const EVERY = 1000;

/**
 * Fits one programme to everybody of a cohort: a class of people whom the programme cannot tell apart is fitted once.
 *
 * Writes `plans/<class>.json`, `people.csv` (whose plan is which) and `classes.csv` (what each plan is like and how many
 * have it). Run again after a stop, it goes on from the plans that are there.
 */
export async function cohort(path: string, options: CohortOptions, io: Io): Promise<Answer> {
  const command = "cohort";
  const { people: file, out, workers } = options;
  const [programmes, rooms] = [await readProgrammes([path]), await readRooms(options.places)];
  const on = startDay(options.from, io.today);
  if (!programmes.ok || !rooms.ok || !on.ok)
    return failed(
      command,
      [programmes, rooms, on].flatMap((read) => (read.ok ? [] : read.problems)),
    );
  const places = rooms.value;
  const programme = programmes.value[0]!;
  const world = { programmes: [{ programme: programme.programme, hash: programme.hash }], places, on: on.value };
  const fitting = fitters(world, workers);
  const progress = new Progress(io);
  try {
    await mkdir(join(out, "plans"), { recursive: true });
    const book = new ClassBook(join(out, "plans"), fitting, GATHERED, () => progress.plans(book));
    const classOf = classifier(world.programmes[0]!, places, on.value);
    const source = { file, places, on: on.value, onBytes: progress.bytes };
    const { people, unread } = await readAll(cohortPeople(source), classOf, book, options, progress);
    progress.plans(book, "", "\n");
    const classes = book.entries();
    const result = {
      programme: { programme: programme.programme.id, hash: programme.hash },
      people: {
        fitted: people,
        unread: unread.people,
        withOpenSlots: count(classes, ({ summary }) => summary!.open > 0),
        unserved: count(classes, ({ summary }) => summary!.filled === 0),
      },
      classes: {
        all: classes.length,
        alreadyThere: classes.filter(({ found }) => found).length,
        unproven: classes.filter(({ summary }) => !summary!.proven).length,
      },
      files: [...LISTS, "plans"].map((name) => join(out, name)),
    };
    return { command, result, findings: [], problems: problemsOf(unread, people, file), words: words(result) };
  } catch (error) {
    if (error instanceof UnreadableError) return failed(command, error.problems);
    if (typeof (error as NodeJS.ErrnoException).code === "string") return failed(command, [outProblem(out, error)]);
    throw error;
  } finally {
    await fitting.close();
  }
}

/** Whose plan is which, and what each plan is like. */
const LISTS = ["people.csv", "classes.csv"] as const;

interface Unread {
  people: number;
  readonly problems: Problem[];
}

/** Reads everybody into the book and writes the lists. */
async function readAll(
  everybody: AsyncIterable<Told>,
  classOf: (person: Person) => PeopleClass,
  book: ClassBook,
  { people: file, out: folder }: Pick<CohortOptions, "people" | "out">,
  progress: Progress,
): Promise<{ readonly people: number; readonly unread: Unread }> {
  const unread: Unread = { people: 0, problems: [] };
  const ids = new Set<string>();
  const list = await LineFile.begin(folder, LISTS[0]);
  try {
    await list.write("person,plan");
    for await (const { read, at } of everybody) {
      const told =
        read.ok && ids.has(read.value.id) ? [{ code: "id/same", ...at, at: ["id"], found: read.value.id }] : [];
      if (!read.ok || told.length > 0) {
        unread.people++;
        if (unread.problems.length < MOST_PROBLEMS) unread.problems.push(...read.problems, ...told);
        continue;
      }
      ids.add(read.value.id);
      const mine = classOf(read.value);
      await book.add(mine);
      await list.write(`${read.value.id},${mine.key}`);
      progress.person(ids.size, book);
    }
    // Where nobody could be read, what an earlier run wrote stays as it is.
    if (ids.size === 0) throw new UnreadableError(problemsOf(unread, 0, file));
    await book.settle();
    await list.end();
  } catch (error) {
    await list.leave();
    throw error;
  }
  const table = await LineFile.begin(folder, LISTS[1]);
  await table.write("plan,people,slots,open,proven");
  for (const { key, people, summary } of book.entries())
    await table.write([key, people, summary!.filled, summary!.open, summary!.proven ? "yes" : "no"].join(","));
  await table.end();
  return { people: ids.size, unread };
}

/** People of those classes of which something holds. */
function count(classes: readonly Entry[], holds: (entry: Entry) => boolean): number {
  return classes.reduce((sum, entry) => (holds(entry) ? sum + entry.people : sum), 0);
}

function problemsOf({ people: unread, problems }: Unread, people: number, file: string): readonly Problem[] {
  const last = problems.at(-1);
  const place = { file, at: [], line: last?.line ?? 0, column: last?.column ?? 0 };
  if (unread === 0 && people === 0) return [{ code: "cohort/no-lines", ...place }];
  const told = new Set(problems.map(({ line }) => line)).size;
  return unread > told
    ? [...problems, { code: "cohort/more-problems", ...place, found: String(unread - told) }]
    : problems;
}

/** How far it is, now and then. */
class Progress {
  readonly #io: Io;
  #share = 0;
  #people = 0;

  constructor(io: Io) {
    this.#io = io;
  }

  readonly bytes = (read: number, all: number): void => {
    this.#share = Math.floor((100 * read) / Math.max(1, all));
  };

  person(people: number, book: ClassBook): void {
    this.#people = people;
    if (people % EVERY === 0) this.plans(book, `, ${this.#share} % of the file`);
  }

  plans(book: ClassBook, more = "", end = "\r"): void {
    this.#io.err(`fitted ${book.done} of ${book.size} classes of ${this.#people} people${more}${end}`);
  }
}

interface Counts {
  readonly people: {
    readonly fitted: number;
    readonly unread: number;
    readonly withOpenSlots: number;
    readonly unserved: number;
  };
  readonly classes: { readonly all: number; readonly alreadyThere: number; readonly unproven: number };
  readonly files: readonly string[];
}

function words({ people, classes, files }: Counts): string {
  const { plural } = en.print;
  const lines = [
    `${plural(people.fitted, "person", "people")} in ${plural(classes.all, "class", "classes")} that the programme can tell apart.`,
    ...(classes.alreadyThere === 0 ? [] : [`${plural(classes.alreadyThere, "plan", "plans")} had been made before.`]),
    ...(classes.unproven === 0 ? [] : [`${plural(classes.unproven, "plan is", "plans are")} not proven best.`]),
    ...(people.withOpenSlots === 0
      ? []
      : [`${plural(people.withOpenSlots, "person has", "people have")} a slot that stays open.`]),
    ...(people.unserved === 0 ? [] : [`0 slots could be filled for ${plural(people.unserved, "person", "people")}.`]),
    ...(people.unread === 0
      ? []
      : [
          `${plural(people.unread, "person", "people")} could not be read and ${people.unread === 1 ? "has" : "have"} no plan.`,
        ]),
    ...files.map((path) => `wrote ${path}`),
  ];
  return `${lines.join("\n")}\n`;
}
