import { type Place, readPlaces } from "../model/index.ts";

/** A week of sessions, each a list of what is done, as somebody writes them down. */
export function broughtPlan(days: Readonly<Record<string, readonly string[]>>): string {
  const sessions = Object.entries(days).map(
    ([key, work]) =>
      `      - key: ${key}\n        title: ${key}\n        minutes: 90\n        work:\n${work.map((slot) => `          - { ${slot} }\n`).join("")}`,
  );
  return `stave: 1\nid: brought\ntitle: Brought\nversion: 1\ngoal: size\nstatus: intermediate\nunits: kg\nphases:\n  - key: all\n    title: All\n    weeks: 6\n    sessions:\n${sessions.join("")}`;
}

/** A room with a 20 kg bar, one pair each of 20, 10 and 5 kg, and dumbbells of 4, 6, 8 and 20 kg. */
export function sparseRoom(): Place {
  const read = readPlaces(
    `stave: 1\nplaces:\n  - id: room\n    name: The room\n    zone: Europe/Vienna\n    has: { bench: 1, rack: 1 }\n    bars: [20 kg]\n    plates: { 20 kg: 1, 10 kg: 1, 5 kg: 1 }\n    dumbbells: { pairs: [4 kg, 6 kg, 8 kg, 20 kg] }\n`,
    "places.yaml",
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.value[0]!;
}
