import { nearNames, type Problem } from "@stave/core/model";
import { OURS, type Size, simulateWorld, WORLDS, type World } from "@stave/core/simulate";
import { en } from "@stave/core/text";
import { type Answer, failed, type Io } from "./answer.ts";

/** The names of worlds are written with hyphens or spaces. */
function named(text: string): World | undefined {
  return WORLDS.find(({ id }) => id === text.replaceAll("-", " "));
}

function noSuchWorld(found: string): Problem {
  const names = WORLDS.map(({ id }) => id);
  const [maybe] = nearNames(found, names);
  return {
    code: "simulate/no-such-world",
    file: "simulate",
    at: [],
    line: 0,
    column: 0,
    found,
    allowed: names.join(", "),
    ...(maybe === undefined ? {} : { maybe }),
  };
}

/** Tries forecasts and ways up on made-up people; in every world when none is named. */
export function simulate(names: readonly string[], size: Size, io: Pick<Io, "err">): Answer {
  const command = "simulate";
  const unknown = names.filter((name) => named(name) === undefined);
  if (unknown.length > 0) return failed(command, unknown.map(noSuchWorld));
  const worlds = names.length === 0 ? WORLDS : [...new Set(names.flatMap((name) => named(name) ?? []))];
  const result = worlds.map((world, at) => {
    const figures = simulateWorld(world, size, OURS);
    io.err(`tried ${at + 1} of ${worlds.length}${at + 1 === worlds.length ? "\n" : "\r"}`);
    return figures;
  });
  const words = [...result.map(en.simulate.world), en.simulate.limits].join("\n\n");
  return { command, result, findings: [], problems: [], words: `${words}\n` };
}
