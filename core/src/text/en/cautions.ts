import type { Statement } from "../../model/index.ts";

/** What a coach acts on under a statement, and whom to ask; short, and no diagnosis. */
export interface CautionNote {
  readonly act: string;
  readonly ask: string;
}

/** Ours, unsigned: a practising coach and a clinician have to sign each line before it reaches anybody. */
export const cautionNotes: Readonly<Record<Statement, CautionNote>> = {
  pregnant: {
    act: "light-headed or unwell lying flat: nothing flat any more; face-down work and jumps end as soon as they feel wrong; no falls, no contact",
    ask: "midwife or doctor, before the start and at every stop sign",
  },
  postnatal: {
    act: "leaking, heaviness, pain or bleeding: one stage back, and refer; impact and straining rise only after a clinician's word",
    ask: "midwife, doctor or pelvic-health physiotherapist",
  },
  pressure: {
    act: "breathe out on effort, 90 s of rest and more, no long all-out holds; a new medicine is asked about at once",
    ask: "doctor before the start when it is not under control or a medicine has changed",
  },
  bone: {
    act: "after a fracture of the spine less weight on it, and the physiotherapist first; a rail within reach; getting down and up is taught before work on the floor",
    ask: "doctor; physiotherapist after a fracture of the spine",
  },
  back: {
    act: "in the first two weeks the coach alone chooses; numbness in the saddle, bladder or bowel changes, growing weakness, fever, night pain or a heavy fall: urgent care, and no plan",
    ask: "physiotherapist when a third asking finds it no better",
  },
  shoulder: {
    act: "rows stop with the elbow at the trunk; pull-downs stay in the range that is comfortable",
    ask: "physiotherapist when a second asking finds it no better, or with pain at night",
  },
  knee: {
    act: "step-downs only after four clean weeks of step-ups; box height and knee bend are those of the movement, not of the day",
    ask: "physiotherapist when it swells, locks or gives way",
  },
  wrist: {
    act: "straight wrist, straps for pulls are fine; hands on a surface return when the clinician allows it, and never as fists",
    ask: "physiotherapist or doctor with swelling, numbness or after a fall",
  },
  vertigo: {
    act: "slow changes of position, a rail within reach; sudden severe spinning, double vision, slurred speech or a weak limb: emergency number",
    ask: "doctor before the start",
  },
  eye: { act: "no breath-holding, head never under the heart", ask: "eye specialist before the start" },
  hernia: {
    act: "the surgeon's word comes first; a hard, painful lump that stays, with nausea: emergency number",
    ask: "surgeon or doctor before the start",
  },
  "surgery-arm": {
    act: "nothing is offered by itself for the region: ask for date, limits, positions to avoid, end and contact",
    ask: "surgeon or physiotherapist, in writing",
  },
  "surgery-leg": {
    act: "nothing is offered by itself for the region: ask for date, limits, positions to avoid, end and contact",
    ask: "surgeon or physiotherapist, in writing",
  },
  "surgery-trunk": {
    act: "nothing is offered by itself for the region: ask for date, limits, positions to avoid, end and contact",
    ask: "surgeon or physiotherapist, in writing",
  },
  hip: {
    act: "what to avoid differs with the way of the operation: the surgeon's list stands in place of this",
    ask: "surgeon or physiotherapist, in writing",
  },
  larger: {
    act: "look up what every chair, box and machine carries; assume nothing; the person may lift this",
    ask: "nobody, unless the screening says so",
  },
  flare: { act: "name the joints: only theirs are capped", ask: "doctor with a hot, red joint or a fever" },
  diabetes: {
    act: "without complications nothing is capped; with eye disease straining and head-down work, with numb feet impact and balance",
    ask: "diabetes team; eye or foot clinic",
  },
  seated: {
    act: "by what works and not by a name; at least as many sets of pulling as of pushing",
    ask: "their own clinician with new shoulder pain, skin or dizziness",
  },
  young: {
    act: "a coach is there, a parent or guardian agrees, no tests of the most at first",
    ask: "nobody, unless the screening says so; parent or guardian are told",
  },
};

/** Said on every page about cautions. */
export const standingLine =
  "Stave plans exercise. It diagnoses nothing, treats nothing and clears nobody. Whoever is unsure, has something new or worse, or was told to hold back asks a doctor, physiotherapist or midwife first, and their word comes before any plan.";
