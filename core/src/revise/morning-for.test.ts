import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { madeUpSituation } from "../testing/index.ts";
import { morningFor } from "./morning-for.ts";
import { nextRevision } from "./next-revision.ts";
import type { PlannedPerson } from "./situation.ts";

function somebody(id: string, name: string): PlannedPerson {
  const made = madeUpSituation(CATALOGUE, [], 3);
  const situation = { ...made, person: { ...made.person, id, name } };
  return { ...situation, plan: nextRevision(situation) };
}

test("of two who are written alike on a sheet the list names the ids", () => {
  const people = [
    somebody("rowan-p", "Rowan Pellgarth"),
    somebody("rowan-q", "Rowan Pellgarth"),
    somebody("ann", "Ann Quill"),
  ];
  const names = morningFor(people, people[0]!.today).people.map(({ person }) => person.name);
  expect(names).toEqual(["Ann Quill", "Rowan Pellgarth (rowan-p)", "Rowan Pellgarth (rowan-q)"]);
});
