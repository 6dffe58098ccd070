import { CATALOGUE } from "@stave/core/exercises";
import { canonicalJson, type Person, type Plan } from "@stave/core/model";
import { classifier, fitters } from "../classes/index.ts";
import { catalogueHash, ENGINE, sha256 } from "../made-by.ts";
import type { Planned, Training } from "./plans.ts";
import { placeOf } from "./world.ts";

/**
 * Fits everybody's programme to them. People whom their programme cannot tell apart are fitted once; the plans are the
 * same as one by one, in the order of the people, however many threads there are.
 *
 * @param onDone told how many people have their plan
 */
export async function fitPeople(
  {
    training,
    programmes,
    roster,
    on,
    catalogue,
  }: Pick<Training, "training" | "programmes" | "roster" | "on" | "catalogue">,
  workers: number,
  onDone: (done: number, all: number) => void,
): Promise<readonly Planned[]> {
  const world = {
    programmes: programmes.map(({ programme, hash }) => ({ programme, hash })),
    places: roster.places,
    on,
    // Threads have the catalogue themselves; only one with own exercises is sent to them.
    ...(catalogue === CATALOGUE ? {} : { catalogue }),
  };
  const classOf = world.programmes.map((programme) => classifier(programme, roster.places, on, catalogue));
  const fitting = fitters(world, Math.min(workers, training.length));
  const classes = new Map<string, Promise<Plan>>();
  let done = 0;
  try {
    return await Promise.all(
      training.map(async ({ person, programme }): Promise<Planned> => {
        const at = programmes.indexOf(programme);
        const { key, seen, made } = classOf[at]!(person);
        let plan = classes.get(key);
        if (plan === undefined) {
          plan = fitting.fit([{ programme: at, seen, made }]).then(([answer]) => answer!.plan!);
          classes.set(key, plan);
        }
        const mine = named(await plan, person, programme.programme.id, programme.programme.version);
        onDone(++done, training.length);
        const state = sha256(canonicalJson({ person, place: placeOf(person, roster), on }));
        const decisions = sha256(canonicalJson(person.pins));
        return {
          person,
          programme,
          catalogue,
          plan: { ...mine, made: { engine: ENGINE, catalogue: catalogueHash(catalogue), state, decisions } },
        };
      }),
    );
  } finally {
    await fitting.close();
  }
}

/** The plan of a class in the name of one of its people. */
function named(plan: Plan, person: Person, programme: string, version: number): Plan {
  return { ...plan, id: `${person.id}/${programme}/${version}`, person: person.id };
}
