import { type Configuration, configurationOf, isReal, type Sessions } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import type { Net } from "./net.ts";

/** Most ways to fill one block that are tried, the best by themselves: this makes a good start, it proves nothing. */
const MOST_ALTERNATIVES = 40;
const MOST_OPENED = 1_000;

/** Every way that the items which are left make of a block, the best by itself first. */
function alternativesOf(net: Net, goal: Goal, session: number, block: number): readonly Configuration[] {
  const ways = new Map<number, (readonly number[])[]>();
  for (const { block: mine, way, items } of net.sessions[session]!.steps) {
    if (mine !== block) continue;
    const steps = ways.get(way) ?? [];
    steps.push([...items].sort((a, b) => goal.value[b]! - goal.value[a]! || a - b));
    ways.set(way, steps);
  }
  const made = [...ways.values()].flatMap((steps) => {
    let starts: readonly (readonly number[])[] = [[]];
    for (const items of steps)
      starts = starts.flatMap((start) => items.map((item) => [...start, item])).slice(0, MOST_OPENED);
    return starts;
  });
  return made
    .map((items) => configurationOf(net, goal, items))
    .sort((a, b) => b.value - a.value)
    .slice(0, MOST_ALTERNATIVES);
}

/**
 * Makes a plan better by changing one block, or two at once, among the items that are left, until no such change helps.
 *
 * @param plan items of each session in the order of the steps; a real plan
 * @returns a real plan that is worth as much or more
 */
export function improve(net: Net, goal: Goal, plan: Sessions): Sessions {
  const { blocks, capacity } = net.task;
  const rows = net.task.rows.length;
  const choices = blocks.map(({ session }, b) => alternativesOf(net, goal, session, b));
  const chosen = blocks.map(({ session }, b) =>
    configurationOf(
      net,
      goal,
      plan[session]!.filter((item) => net.block[item] === b),
    ),
  );
  const sums = new Int32Array(rows);
  const used = capacity.map(() => 0);
  let value = 0;
  const put = (b: number, { value: worth, time, sums: adds }: Configuration, by: 1 | -1) => {
    value += by * worth;
    used[blocks[b]!.session]! += by * time;
    for (let r = 0; r < rows; r++) sums[r]! += by * adds[r]!;
  };
  for (const [b, alternative] of chosen.entries()) put(b, alternative, 1);
  let best = value - goal.costs(sums);

  /** Whether the plan is real with these blocks changed. */
  const real = (changes: readonly (readonly [b: number, alternative: Configuration])[]) => {
    const sessions = new Set(changes.map(([b]) => blocks[b]!.session));
    const now = chosen.map((alternative, b) => changes.find(([c]) => c === b)?.[1] ?? alternative);
    if (
      !goal.allows(
        now.reduce((sum, { must }) => sum + must, 0),
        sums,
      )
    )
      return false;
    return [...sessions].every((session) =>
      isReal(
        net,
        now.flatMap(({ items }, b) => (blocks[b]!.session === session ? items : [])),
      ),
    );
  };

  const tryOne = (b: number) => {
    const mine = chosen[b]!;
    const { session } = blocks[b]!;
    put(b, mine, -1);
    let found = mine;
    for (const other of choices[b]!) {
      if (used[session]! + other.time > capacity[session]!) continue;
      put(b, other, 1);
      const now = value - goal.costs(sums);
      if (now > best && real([[b, other]])) [best, found] = [now, other];
      put(b, other, -1);
    }
    chosen[b] = found;
    put(b, found, 1);
    return found !== mine;
  };

  const tryTwo = (b: number, c: number) => {
    const [mine, theirs] = [chosen[b]!, chosen[c]!];
    put(b, mine, -1);
    put(c, theirs, -1);
    let found: readonly [Configuration, Configuration] = [mine, theirs];
    for (const one of choices[b]!) {
      put(b, one, 1);
      if (used[blocks[b]!.session]! <= capacity[blocks[b]!.session]!) {
        for (const two of choices[c]!) {
          if (used[blocks[c]!.session]! + two.time > capacity[blocks[c]!.session]!) continue;
          let now = value + two.value;
          for (let r = 0; r < rows && now > best; r++) now -= goal.cost(r, sums[r]! + two.sums[r]!);
          if (!(now > best)) continue;
          put(c, two, 1);
          if (
            real([
              [b, one],
              [c, two],
            ])
          )
            [best, found] = [now, [one, two]];
          put(c, two, -1);
        }
      }
      put(b, one, -1);
    }
    [chosen[b], chosen[c]] = found;
    put(b, found[0], 1);
    put(c, found[1], 1);
    return found[0] !== mine || found[1] !== theirs;
  };

  const once = () => blocks.reduce((changed, _, b) => tryOne(b) || changed, false);
  const twice = () => {
    let changed = false;
    for (let b = 0; b < blocks.length; b++)
      for (let c = b + 1; c < blocks.length; c++) changed = tryTwo(b, c) || changed;
    return changed;
  };
  do while (once());
  while (twice());
  return capacity.map((_, s) => blocks.flatMap(({ session }, b) => (session === s ? chosen[b]!.items : [])));
}
