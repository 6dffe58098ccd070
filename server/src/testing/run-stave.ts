import { main } from "../program.ts";

/** The files of the made-up room, and the first Monday of the demonstration. */
export const ROOM = "examples/ropewalk";
export const PROGRAMME = `${ROOM}/harbour-steps.yaml`;
export const PEOPLE = ["--people", `${ROOM}/people.yaml`, "--places", `${ROOM}/places.yaml`, "--from", "2027-01-11"];

export interface Ran {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Runs one command line as the program would, on a fixed day. */
export async function stave(...args: readonly string[]): Promise<Ran> {
  const [out, err]: [string[], string[]] = [[], []];
  const io = {
    out: (text: string) => void out.push(text),
    err: (text: string) => void err.push(text),
    today: "2027-01-06",
    now: Date.UTC(2027, 0, 6),
  };
  const exit = await main(args, io);
  return { exit, out: out.join(""), err: err.join("") };
}
