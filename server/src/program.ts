import { availableParallelism } from "node:os";
import { WEEKDAYS } from "@stave/core/day";
import { MISS_CAUSES } from "@stave/core/model";
import { REPORT_KINDS } from "@stave/core/report";
import { Command, CommanderError, InvalidArgumentError, Option } from "commander";
import { type Answer, type Exit, give, type Io } from "./commands/answer.ts";
import { assess } from "./commands/assess.ts";
import { before } from "./commands/before.ts";
import { calendar } from "./commands/calendar.ts";
import { check } from "./commands/check.ts";
import { cohort } from "./commands/cohort.ts";
import { demo } from "./commands/demo.ts";
import { exercises } from "./commands/exercises.ts";
import { fit } from "./commands/fit.ts";
import { type Machine, THIS_MACHINE } from "./commands/machine.ts";
import { reckon } from "./commands/reckon.ts";
import { schedule } from "./commands/schedule.ts";
import { screen } from "./commands/screen.ts";
import { sheet } from "./commands/sheet.ts";
import { simulate } from "./commands/simulate.ts";
import { why } from "./commands/why.ts";
import { EXAMPLES } from "./examples.ts";
import { ENGINE } from "./made-by.ts";

const CAUTION = `
Stave plans exercise. It does not diagnose, treat or clear anyone. Stop at chest pain, faintness, unusual breathlessness,
sharp or rising pain. Clinicians' advice, local law, insurance and the coach's licence come first.

"stave help COMMAND" tells one command with an example; "stave demo" shows all of it at work.
Exit status: 0 done, 1 a finding stops, 2 input that cannot be read.`;

const PORT = 4747;
const MOST_WORKERS = 64;

function whole(least: number, most: number): (text: string) => number {
  return (text) => {
    const value = Number(text);
    if (!(/^\d+$/.test(text) && value >= least && value <= most))
      throw new InvalidArgumentError(`It is a whole number from ${least} to ${most}.`);
    return value;
  };
}

function also(text: string, before: readonly string[] = []): readonly string[] {
  return [...before, text];
}

function noPerson(): CommanderError {
  return new CommanderError(2, "stave.person", "error: name one person with --person <id>");
}

function folder(text: string): string {
  if (text.trim() === "") throw new InvalidArgumentError("It is a folder.");
  return text;
}

function withPeople(command: Command): Command {
  return command
    .requiredOption("--people <file>", "roster file (required)")
    .requiredOption("--places <file>", "places file (required)")
    .option("--person <id>", "only this person")
    .option("--from <day>", "first day of the plan, YYYY-MM-DD; next Monday when left out")
    .option("--json", "one JSON document instead of words");
}

const EXERCISES = ["--exercises <file>", "the coach's own exercises, beside those of the catalogue"] as const;

function withOwn(command: Command): Command {
  return withPeople(command)
    .option(
      "--tests <file>",
      "results of tests, which say where a person starts where the roster does not; once for each file",
      also,
    )
    .option(...EXERCISES);
}

/** What a coach may ask of the days of one person. */
function withDays(command: Command): Command {
  return command
    .option("--fixed <session=day>", "a session that stands on this day, before all others; once for each", also)
    .option("--keep-hours", "hours between hard sessions before welcome hours and days of the week")
    .option("--missed <session>", "what follows a missed session, named by its id or its day")
    .addOption(new Option("--because <cause>", "why it was missed").choices(MISS_CAUSES))
    .option("--back <day>", "first day on which the person can train again; the day after when left out");
}

function onePerson(options: { readonly person?: string; readonly missed?: string; readonly fixed?: unknown }): void {
  if ((options.missed !== undefined || options.fixed !== undefined) && options.person === undefined) throw noPerson();
}

function program(io: Io, machine: Machine, done: (exit: Exit) => void): Command {
  const stave = new Command("stave")
    .description("Checks strength programmes, fits them to people, puts them on real days and prints them.")
    .version(ENGINE, "--version", "version of this program")
    .addHelpText("after", CAUTION)
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: io.err })
    .showSuggestionAfterError();
  const run = async (answer: Promise<Answer> | Answer, json: boolean | undefined) =>
    done(give(await answer, json ?? false, io));

  stave
    .command("check")
    .description("what the checks say of programmes, with line, reason, source and remedies")
    .argument("<programme...>", "programme files")
    .option("--places <file>", "places file: also what the place cannot serve")
    .option("--place <id>", "which place of the file, where there are several")
    .option("--people <file>", "roster file: also what is wrong for one person, at their place")
    .option("--person <id>", "which person of the roster")
    .option("--from <day>", "first day for the person, YYYY-MM-DD; next Monday when left out")
    .option(
      "--data <folder>",
      "records of the person: recent weeks and loads from there; without a roster the person too",
    )
    .option(...EXERCISES)
    .option("--apply <number>", "carry out the remedy of this number, in its file", whole(1, 9999))
    .option("--json", "one JSON document instead of words")
    .action((files: string[], options) => run(check(files, options, io.today, machine), options.json));
  withOwn(stave.command("fit"))
    .description("fits programmes to the people of a roster: every slot filled, dosed, with reasons")
    .argument("<programme...>", "programme files; with several, the roster says who has which")
    .option("--reasons", "say why each movement was chosen")
    .option("--out <folder>", "write plans as JSON and CSV", folder)
    .option("--workers <number>", "threads that fit", whole(1, MOST_WORKERS), 1)
    .action((files: string[], options) => run(fit(files, options, io), options.json));
  stave
    .command("cohort")
    .description("fits one programme to all who follow it: people whom it cannot tell apart are fitted once")
    .argument("<programme>", "programme file")
    .requiredOption("--people <file>", "table of answers (.csv), one person a line, or a roster file (required)")
    .requiredOption("--places <file>", "places file (required)")
    .requiredOption("--out <folder>", "where to write; what an earlier run made there is kept (required)", folder)
    .option("--from <day>", "first day of the plans, YYYY-MM-DD; next Monday when left out")
    .option("--workers <number>", "threads that fit", whole(1, MOST_WORKERS), availableParallelism())
    .option("--json", "one JSON document instead of words")
    .action((file: string, options) => run(cohort(file, options, io), options.json));
  withOwn(stave.command("why"))
    .description("why a slot holds what it holds for one person, and why not something else")
    .argument("<programme>", "programme file")
    .argument("<slot>", "key of the slot")
    .option("--not <exercise>", "an exercise that might stand there instead")
    .option("--helps", "also solve every single change: equipment, minutes, a day, a caution or limit lifted")
    .action((file: string, slot: string, options) => {
      if (options.person === undefined) throw noPerson();
      return run(why(file, slot, options, io), options.json);
    });
  withDays(withOwn(stave.command("schedule")))
    .description("puts sessions on real days: windows, order, recovery; and says what follows when one was missed")
    .argument("<programme...>", "programme files")
    .option("--weeks <number>", "weeks to place", whole(1, 52), 4)
    .addOption(new Option("--week-begins <day>", "for counting sessions a week").choices(WEEKDAYS).default("mon"))
    .action((files: string[], options) => {
      onePerson(options);
      return run(schedule(files, options, io), options.json);
    });
  withOwn(stave.command("sheet"))
    .description("prints a sheet per person to be filled by pencil, as PDF; needs a screening outcome that stands")
    .argument("<programme...>", "programme files")
    .requiredOption("--out <folder>", "where to write (required)", folder)
    .option("--paper <size>", "a4 or letter", "a4")
    .action((files: string[], options) => run(sheet(files, options, io), options.json));
  withDays(withOwn(stave.command("calendar")))
    .description("writes a calendar file per person; an earlier file in the folder is taken on")
    .argument("<programme...>", "programme files")
    .requiredOption("--out <folder>", "where to write (required)", folder)
    .option("--weeks <number>", "weeks to place", whole(1, 52), 4)
    .action((files: string[], options) => {
      onePerson(options);
      return run(calendar(files, options, io), options.json);
    });
  withPeople(stave.command("import"))
    .description("fills a data folder with programmes, people and places, and makes their plans")
    .argument("<programme...>", "programme files")
    .requiredOption("--coach <name>", "who decides")
    .option("--exercises <file>", "the coach's own exercises; they are kept, and those kept before stay when left out")
    .option("--call <name and number>", "whom a participant calls when a message was not sent; the coach when left out")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .action(async (files: string[], options) => {
      const { importFiles } = await import("./commands/import.ts");
      return await run(importFiles(files, options, io, machine), options.json);
    });
  stave
    .command("record")
    .description("takes what people did from a table, after showing what was read as what, and what is asked")
    .argument("<table>", "CSV file: a line for each movement that was done on a day")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .option("--person <id>", "whose record it is, where the table names nobody")
    .addOption(new Option("--unit <unit>", "the unit of loads without one").choices(["kg", "lb"]))
    .addOption(
      new Option("--per <hand>", "whether a load of two implements is of each or both together").choices([
        "each",
        "together",
      ]),
    )
    .addOption(new Option("--dates <order>", "which comes first in 03/04/2027").choices(["day first", "month first"]))
    .option("--take", "take it into the records; without it, it is only shown")
    .option("--leave-asked", "with --take: leave out the lines with a question")
    .option("--correct", "what differs from what is recorded replaces it")
    .option("--undo", "take back what this very table once wrote; what was corrected since stays")
    .option("--json", "one JSON document instead of words")
    .action(async (file: string, options) => {
      const { record } = await import("./commands/record.ts");
      await run(record(file, options, machine), options.json);
    });
  stave
    .command("morning")
    .description(
      "who needs a word today: stops first, then by today's hours; what is proposed, and what the record tells",
    )
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .option("--demo <folder>", "the made-up room with ten weeks of records instead, kept in this folder", folder)
    .option("--json", "one JSON document instead of words")
    .action(async (options) => {
      const { morning } = await import("./commands/morning.ts");
      await run(morning(options, io, machine), options.json);
    });
  stave
    .command("decide")
    .description("says the coach's word on what waits: on many proposals at once, or takes words back")
    .argument("[id...]", "proposals as `stave morning --json` names them; decisions, with --undo")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .option("--all", "every proposal that waits and stops nothing")
    .option("--person <id>", "with --all: only of this person")
    .option("--refuse", "refuse them; without it they are taken")
    .option("--undo", "take these decisions back")
    .option("--json", "one JSON document instead of words")
    .action(async (ids: string[], options) => {
      const { decide } = await import("./commands/decide.ts");
      await run(decide(ids, options, machine), options.json);
    });
  stave
    .command("next")
    .description("the next dose of every movement: what, with what it rests, how sure, what was refused")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .option("--person <id>", "only this person")
    .option("--json", "one JSON document instead of words")
    .action(async (options) => {
      const { next } = await import("./commands/next.ts");
      await run(next(options, machine), options.json);
    });
  stave
    .command("replay")
    .description("runs a rule of your own over the records: what it would have said when, and what was seen of it")
    .argument("[rule]", "file of the rule; the plain published one, two over twice running, when left out")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .option("--demo <folder>", "the made-up room with ten weeks of records instead, kept in this folder", folder)
    .option("--person <id>", "only this person")
    .option("--json", "one JSON document instead of words")
    .action(async (rule: string | undefined, options) => {
      const { replayRule } = await import("./commands/replay.ts");
      await run(replayRule(rule, options, io, machine), options.json);
    });
  stave
    .command("report")
    .description("a report on one person's record: for the person, for a clinician in one page, or for the coach")
    .argument("<person>", "id of the person")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .addOption(new Option("--for <reader>", "who reads it").choices(REPORT_KINDS).default("person"))
    .option("--out <folder>", "also print it as PDF into this folder", folder)
    .option("--paper <size>", "a4 or letter", "a4")
    .option("--json", "one JSON document instead of words")
    .action(async (person: string, options) => {
      const { report } = await import("./commands/report.ts");
      await run(report(person, options, machine), options.json);
    });
  stave
    .command("export")
    .description("a copy of everything that is kept of one person: a table to read, and JSON for programs")
    .argument("<person>", "id of the person")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .requiredOption("--out <folder>", "where to write", folder)
    .option("--json", "one JSON document instead of words")
    .action(async (person: string, options) => {
      const { exportPerson } = await import("./commands/export.ts");
      await run(exportPerson(person, options, machine), options.json);
    });
  stave
    .command("serve")
    .description("serves the coach's page on this machine, and the page for participants' phones, until Ctrl-C")
    .option("--data <folder>", "where the records are kept, unless STAVE_DATABASE says", "data")
    .option("--port <number>", "port to listen on; 0 takes any", whole(0, 65_535), PORT)
    .option("--host <address>", "address to listen on", "127.0.0.1")
    .action(async (options) => {
      const { serve } = await import("./commands/serve.ts");
      done(await serve(options, io, machine));
    });
  stave
    .command("exercises")
    .description("lists exercises, or tells one whole")
    .argument("[word]", "part of a name")
    .option("--pattern <pattern>", "only this movement pattern")
    .option(...EXERCISES)
    .option("--json", "one JSON document instead of words")
    .action((word: string | undefined, options) => run(exercises(word, options), options.json));
  stave
    .command("screen")
    .description("what a person's answers say: start, start gently, ask a doctor first, or stop; why, and until when")
    .argument("<answers>", "file of answers")
    .addOption(
      new Option("--diabetes <rule>", "which published rule runs for diabetes alone")
        .choices(["strict", "mild"])
        .default("strict"),
    )
    .option("--request <folder>", "also write the request for a clinician's advice, one page, as PDF", folder)
    .option("--paper <size>", "a4 or letter", "a4")
    .option("--json", "one JSON document instead of words")
    .action((file: string, options) => run(screen(file, options), options.json));
  stave
    .command("before")
    .description("whether today's session may be held: what is new, pressure, glucose, pain, illness, sleep, consent")
    .addHelpText(
      "after",
      "\nExit status: 0 go, or go softer; 1 hold the session, or ask first; 2 input that cannot be read.",
    )
    .argument("<answers>", "file of the screening's answers")
    .argument("<today>", "file of what was said and measured today")
    .option(
      "--rules <file>",
      "which named rules run, printed or the practice's own; the first printed ones when left out",
    )
    .addOption(
      new Option("--diabetes <rule>", "which published rule runs for diabetes alone")
        .choices(["strict", "mild"])
        .default("strict"),
    )
    .option("--request <folder>", "also write the request for a clinician's advice, one page, as PDF", folder)
    .option("--paper <size>", "a4 or letter", "a4")
    .option("--json", "one JSON document instead of words")
    .action((answers: string, today: string, options) => run(before(answers, today, options), options.json));
  stave
    .command("assess")
    .description("what a person's tests say: scores, norms of their age, sides, changes of like with like")
    .argument("<results>", "file of results")
    .option("--json", "one JSON document instead of words")
    .action((file: string, options) => run(assess(file), options.json));
  stave
    .command("reckon")
    .description("reckons one thing by a published formula: one-rep-max load=100kg reps=5; lists all without a name")
    .argument("[name]", "what to reckon")
    .argument("[answers...]", "name=value, quantities with their unit")
    .option("--json", "one JSON document instead of words")
    .action((name: string | undefined, answers: string[], options) => run(reckon(name, answers), options.json));
  stave
    .command("simulate")
    .description(
      "tries forecasts and ways up on made-up people whose strength is known, in worlds that were fixed before",
    )
    .argument("[world...]", "worlds; all of them when left out")
    .option("--people <number>", "people of each world", whole(1, 2000), 50)
    .option("--weeks <number>", "weeks that they train", whole(1, 104), 40)
    .option("--seed <number>", "the same number gives the same people", whole(0, 2_147_483_647), 1)
    .option("--json", "one JSON document instead of words")
    .action((worlds: string[], options) => run(simulate(worlds, options, io), options.json));
  stave
    .command("demo")
    .description("runs the whole job on the made-up Ropewalk Room: checks, fits, dates, prints")
    .option("--out <folder>", "where to write", folder, "out")
    .option("--serve", "then serve the room with ten weeks of records, until Ctrl-C")
    .option("--no-serve", "end when that is done, which it does without --serve too")
    .option("--port <number>", "port to listen on; 0 takes any", whole(0, 65_535), PORT)
    .option("--json", "one JSON document instead of words")
    .action(async (options) => {
      const exit = give(await demo(options, io, machine), options.json ?? false, io);
      if (options.serve !== true || exit !== 0) return done(exit);
      const { serveDemo } = await import("./commands/serve-demo.ts");
      done(await serveDemo({ ...options, host: "127.0.0.1" }, io, machine));
    });
  for (const command of stave.commands) {
    const lines = (EXAMPLES[command.name()] ?? []).map((line) => `  npx ${line}`);
    if (lines.length > 0) command.addHelpText("after", `\nFor example:\n${lines.join("\n")}`);
  }
  return stave;
}

/** Runs one command line; everything that can go wrong with input comes back as an exit status. */
export async function main(args: readonly string[], io: Io, machine: Machine = THIS_MACHINE): Promise<Exit> {
  let exit: Exit = 0;
  try {
    await program(io, machine, (status) => {
      exit = status;
    }).parseAsync(args, { from: "user" });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.code === "stave.person") io.err(`${error.message}\n`);
    return error.exitCode === 0 ? 0 : 2;
  }
  return exit;
}
