import { addDays, ageOn, type Day, day } from "../day.ts";
import { easyForms, formsFor } from "../fit/index.ts";
import {
  type Catalogue,
  canonicalJson,
  type ExerciseId,
  type Ladder,
  type Person,
  type Place,
  type Programme,
  type Pulse,
  type Screening,
  type SlotKey,
  slotsOf,
} from "../model/index.ts";
import { ADULT_AT, mayPrint } from "../offer/index.ts";
import { daysOfPhases, sessionsPerWeek } from "../revise/index.ts";

/**
 * All that a plan of one programme takes of a person, and nothing else: somebody without a name, and how many sessions a
 * week of each phase they can do. Two people with equal ones get the same plan.
 */
export interface Seen {
  readonly person: Person;
  readonly perWeek: readonly number[];
}

/** What is asked of one programme, wherever people train, from one day on. */
export interface SeerInput {
  readonly programme: Programme;
  readonly places: readonly Place[];
  readonly catalogue: Catalogue;
  /** First day of the plan. */
  readonly on: Day;
}

/** What a programme can look at, whoever it is for. */
interface Sight {
  readonly slots: ReadonlySet<SlotKey>;
  readonly mostMinutes: number;
  /** It has conditioning, for which a pulse is told. */
  readonly beats: boolean;
  readonly look: Look;
}

/** Forms that may be thought of, the ladders that they stand on, and the forms whose records tell of them. */
interface Look {
  readonly forms: ReadonlySet<ExerciseId>;
  readonly ladders: readonly Ladder[];
  readonly telling: ReadonlySet<ExerciseId>;
}

/** Records of forms that may be thought of, of all forms on their ladders, and of squats, which tell of other legs' work. */
function lookAt(forms: ReadonlySet<ExerciseId>, catalogue: Catalogue): Look {
  const ladders = catalogue.ladders.filter((ladder) => formsOf(ladder).some((id) => forms.has(id)));
  const squats = [...catalogue.exercises.values()].filter(({ pattern }) => pattern === "squat");
  const telling = new Set([...forms, ...ladders.flatMap(formsOf), ...squats.map(({ id }) => id)]);
  return { forms, ladders, telling };
}

/** Stands for every birthday of somebody who is grown up, and for every mass that nothing is reckoned from. */
const GROWN_UP = day("1970-01-01");
const SOME_MASS = { value: 70, unit: "kg" } as const;

/**
 * What a programme can see of people: a function from a person to `Seen`.
 *
 * Left out: names, notes, likes and rungs of forms that no slot can think of, hours and days away beyond the number of
 * sessions they leave, minutes beyond the longest session, the birthday of a grown-up whose pulse no equation of age tells, dates of cautions that are not
 * due, who screened. Orders that say nothing are made one. Everything else stays as it was said.
 *
 * @example
 * seer({ programme, places, catalogue, on })(tobiah).person.name //=> ""
 */
export function seer(input: SeerInput): (person: Person) => Seen {
  const sight = sightOf(input);
  const placeOf = new Map(input.places.map((place) => [place.id, place]));
  const known = new Map<string, Time>();
  return (person) => {
    const place = placeOf.get(person.place);
    if (place === undefined) throw new Error(`${person.id} trains at a place that is not among the places`);
    // Many people have the same time, and it takes longer to count than all else.
    const { windows, cycle, away, instead, minutes, perWeek: wanted } = person;
    const text = JSON.stringify([place.id, windows, cycle, away, instead, minutes, wanted]);
    const time = known.get(text) ?? timeOf(input, person, place);
    if (known.size >= MOST_TIMES) known.clear();
    known.set(text, time);
    return { person: seenPerson(sight, input, person, time), perWeek: time.perWeek };
  };
}

/** Different times of people that are remembered. */
const MOST_TIMES = 1000;

/** How much of the programme somebody has time for. */
interface Time {
  readonly perWeek: readonly number[];
  /** Last day of the plan. */
  readonly last: Day;
}

function timeOf(input: SeerInput, person: Person, place: Place): Time {
  const asked = { ...input, person, place, others: input.places };
  const perWeek = input.programme.phases.map((phase) => sessionsPerWeek(asked, phase));
  return { perWeek, last: daysOfPhases(asked).at(-1)?.to ?? input.on };
}

function sightOf({ programme, catalogue }: SeerInput): Sight {
  const sessions = programme.phases.flatMap((phase) => phase.sessions);
  const slots = sessions.flatMap(({ work }) => work.flatMap(slotsOf));
  const easy = sessions.flatMap(({ warmup = [], conditioning = [] }) => [
    ...warmup.flatMap((item) => ("do" in item ? [item] : [])),
    ...conditioning,
  ]);
  const forms = [
    ...slots.flatMap((slot) => formsFor(slot, catalogue)),
    ...easy.flatMap((item) => easyForms(item, catalogue)),
  ];
  return {
    slots: new Set(slots.map(({ slot }) => slot)),
    mostMinutes: Math.max(...sessions.map(({ minutes }) => minutes)),
    beats: sessions.some(({ conditioning = [] }) => conditioning.length > 0),
    look: lookAt(new Set(forms.map(({ id }) => id)), catalogue),
  };
}

function seenPerson(sight: Sight, { catalogue, on }: SeerInput, person: Person, { perWeek, last }: Time): Person {
  const pins = person.pins.filter(({ slot }) => sight.slots.has(slot));
  const chosen = pins.flatMap(({ exercise }) => exercise ?? []);
  const { look } = sight;
  const { forms, ladders, telling } =
    chosen.length === 0 ? look : lookAt(new Set([...look.forms, ...chosen]), catalogue);
  const lifts = inOrder(person.lifts.filter(({ exercise }) => telling.has(exercise)));
  const { mass, screening, cycle } = person;
  const pulse = sight.beats ? pulseSeen(person.pulse, on) : undefined;
  const byAge = pulse !== undefined && pulse.highest === undefined;
  return {
    id: "",
    name: "",
    born: ageOn(person.born, on) >= ADULT_AT && !byAge ? GROWN_UP : person.born,
    ...(mass === undefined ? {} : { mass: { load: lifts.length === 0 ? SOME_MASS : mass.load, on } }),
    status: person.status,
    units: lifts.length === 0 ? "kg" : person.units,
    place: person.place,
    windows: [],
    // Of a rota only its length is left: how many days the weeks of the plan have.
    ...(cycle === undefined ? {} : { cycle: { length: cycle.length, anchor: on, days: [] } }),
    minutes: perWeek.includes(0) ? person.minutes : Math.min(person.minutes, sight.mostMinutes),
    rungs: rungsSeen(person.rungs, ladders),
    lifts,
    limits: person.limits.filter(({ from }) => from <= last),
    cautions: inOrder(
      person.cautions
        .filter(({ from }) => from <= last)
        .map((said) => ({
          ...said,
          from: said.from <= on ? on : said.from,
          recheck: said.recheck > on ? addDays(on, 1) : said.recheck,
        })),
    ),
    cannot: [...new Set(person.cannot)].sort(),
    likes: person.likes.filter((id) => forms.has(id)).toSorted(),
    dislikes: person.dislikes.filter((id) => forms.has(id)).toSorted(),
    pins,
    // The plan waits on such days; on others away there is only no session.
    away: person.away.filter(({ waits, from }) => waits === true && from <= last),
    instead: [],
    ...(screening === undefined ? {} : { screening: screeningSeen(person, screening, on) }),
    ...(pulse === undefined ? {} : { pulse }),
  };
}

/** A pulse from which beats can be told; of one that is slowed and whose highest was never measured nothing is. */
function pulseSeen(pulse: Pulse | undefined, on: Day): Pulse | undefined {
  if (pulse === undefined || (pulse.slowed && pulse.highest === undefined)) return undefined;
  return { ...pulse, on };
}

function rungsSeen(rungs: Person["rungs"], ladders: readonly Ladder[]): Person["rungs"] {
  const seen = ladders.flatMap(({ id }) => (rungs[id] === undefined ? [] : [[id, rungs[id]] as const]));
  return Object.fromEntries(seen.toSorted(([a], [b]) => (a < b ? -1 : 1)));
}

/** Of a screening that stands only what it allows; one that does not is told with its date and who entered it. */
function screeningSeen(person: Person, screening: Screening, on: Day): Screening {
  if (!mayPrint(person, on).ok) return screening;
  const { outcome, effort, agreed } = screening;
  return {
    outcome,
    on,
    until: on,
    by: "",
    ...(agreed === undefined ? {} : { agreed: { on: agreed.on <= on ? on : agreed.on, who: "" } }),
    ...(effort === undefined ? {} : { effort }),
  };
}

function formsOf({ start, steps }: Ladder): readonly ExerciseId[] {
  return [start, ...steps.map(({ to }) => to)];
}

function inOrder<T extends object>(entries: readonly T[]): readonly T[] {
  if (entries.length < 2) return entries;
  const texts = entries.map((entry) => [canonicalJson(entry), entry] as const);
  return texts.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, entry]) => entry);
}
