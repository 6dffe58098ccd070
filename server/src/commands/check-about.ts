import type { Day } from "@stave/core/day";
import { nearNames, type Person, type Place, type Problem } from "@stave/core/model";
import { asRecorded } from "@stave/core/revise";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, Practice } from "../practice/index.ts";
import { openRecords } from "./data.ts";
import type { Machine } from "./machine.ts";
import { startDay } from "./plans.ts";
import { type Got, placeOf, readPeople, readRooms } from "./world.ts";

/** Where, and for whom, programmes are checked, as it was typed. */
export interface AboutAsked {
  readonly places?: string;
  /** Which place of the file; it must be said where there are several. */
  readonly place?: string;
  readonly people?: string;
  /** Whose status, minutes and days count; their place is the one that is asked about. */
  readonly person?: string;
  /** The first day for the person; next Monday when left out. */
  readonly from?: string;
  /** A folder with the person's records: what they did of late comes from there, and without a roster the person too. */
  readonly data?: string;
}

/** What checks are told beside the programme. */
export interface About {
  readonly place?: Place;
  readonly person?: Person;
  /** The first day, where a person is named. */
  readonly on?: Day;
}

function wrong(code: string, file: string, more: Pick<Problem, "found" | "allowed" | "maybe"> = {}) {
  return { ok: false as const, problems: [{ code, file, at: [], line: 0, column: 0, ...more }] };
}

/** One of several by its id; the only one without an id. */
function chosen<T extends { readonly id: string }>(
  all: readonly T[],
  id: string | undefined,
  file: string,
  codes: { readonly unsaid: string; readonly unknown: string },
): Got<T> {
  const ids = all.map((one) => one.id);
  const allowed = `${ids.slice(0, 12).join(", ")}${ids.length > 12 ? " …" : ""}`;
  const [only] = all;
  if (id === undefined) {
    return only !== undefined && all.length === 1 ? { ok: true, value: only } : wrong(codes.unsaid, file, { allowed });
  }
  const found = all.find((one) => one.id === id);
  if (found !== undefined) return { ok: true, value: found };
  const [maybe] = nearNames(id, ids);
  return wrong(codes.unknown, file, { found: id, allowed, ...(maybe === undefined ? {} : { maybe }) });
}

/** Reads the place, or the person and their place, that programmes are checked for, with their record where it is named. */
export async function readAbout(asked: AboutAsked, today: string, machine: Machine): Promise<Got<About>> {
  const { data, person, from } = asked;
  const written =
    data !== undefined && asked.people === undefined ? { ok: true as const, value: {} } : await fromFiles(asked, today);
  if (!written.ok || data === undefined) return written;
  const on = startDay(from, today);
  return on.ok ? await withRecord(written.value, { data, person, on: on.value }, machine) : on;
}

/** What the records of a folder tell of a person, whom the roster says where there is one. */
async function withRecord(
  about: About,
  { data, person: asked, on }: { readonly data: string; readonly person: string | undefined; readonly on: Day },
  machine: Machine,
): Promise<Got<About>> {
  const opened = await openRecords(data, machine);
  if ("problem" in opened) return { ok: false, problems: [opened.problem] };
  const { store } = opened;
  try {
    const ids = (await store.listDocuments(LOCAL_PRACTICE, "person")).map(({ id }) => ({ id }));
    const codes = { unsaid: "check/which-person", unknown: "person/unknown" };
    const who = chosen(ids, about.person?.id ?? asked, data, codes);
    if (!who.ok) return who;
    const practice = new Practice(store, LOCAL_PRACTICE, new Changes());
    const planned = (await practice.planned(who.value.id, machine.clock()))!;
    const { place = planned.place } = about;
    return { ok: true, value: { place, person: asRecorded(planned, on, about.person), on } };
  } finally {
    await store.close();
  }
}

/** Reads the place, or the person and their place, from files. Without any, nothing. */
async function fromFiles({ places, place, people, person, from }: AboutAsked, today: string): Promise<Got<About>> {
  if (places === undefined) {
    const left = people === undefined && person === undefined && place === undefined;
    return left ? { ok: true, value: {} } : wrong("check/no-places", "--places");
  }
  if (people === undefined) {
    if (person !== undefined) return wrong("check/no-people", "--people", { found: person });
    const rooms = await readRooms(places);
    if (!rooms.ok) return rooms;
    const room = chosen(rooms.value, place, places, { unsaid: "check/which-place", unknown: "check/no-such-place" });
    return room.ok ? { ok: true, value: { place: room.value } } : room;
  }
  const roster = await readPeople(people, places);
  if (!roster.ok) return roster;
  const who = chosen(roster.value.people, person, people, { unsaid: "check/which-person", unknown: "person/unknown" });
  if (!who.ok) return who;
  const codes = { unsaid: "check/which-place", unknown: "check/no-such-place" };
  const room =
    place === undefined
      ? { ok: true as const, value: placeOf(who.value, roster.value) }
      : chosen(roster.value.places, place, places, codes);
  const on = startDay(from, today);
  if (!room.ok) return room;
  if (!on.ok) return on;
  return { ok: true, value: { place: room.value, person: who.value, on: on.value } };
}
