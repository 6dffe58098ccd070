import type { Bundle, BundleExercise, Dose, PlanSlot } from "@stave/core/model";
import type { Load } from "@stave/core/units";

const KILOS = [2, 4, 6, 8, 10, 12.5, 15, 17.5, 20, 22.5, 25].map((value): Load => ({ value, unit: "kg" }));

function form(more: Pick<BundleExercise, "id" | "name"> & Partial<BundleExercise>): BundleExercise {
  return {
    setUp: "Stand tall, feet as wide as the hips.",
    move: "Go down slowly, come up with force.",
    cues: ["Drag the elbow to the back pocket.", "Keep the ribs down.", "Breathe out on the way up."],
    eachSide: false,
    amounts: "reps",
    loadMeaning: "one implement",
    stress: {},
    needs: [],
    loads: KILOS,
    ...more,
  };
}

function dose(sets: number, from: number, to: number, more: { eachSide?: boolean; kind?: "reps" | "hold" } = {}): Dose {
  const amount = { kind: more.kind ?? "reps", span: { from, to } } as const;
  return { sets: Array.from({ length: sets }, () => ({ amount, eachSide: more.eachSide ?? false })), restS: 90 };
}

function slot(key: string, exercise: string, asked: Dose, load?: number): PlanSlot {
  return {
    key,
    exercise,
    dose: asked,
    why: [],
    offer: [],
    ...(load === undefined ? {} : { load: { value: load, unit: "kg" } }),
  };
}

/** A bundle of one session on each of two days, with sides, holds, pairs and bodyweight. */
export function bundleFrom(day: string, later: string): Bundle {
  const session = {
    key: "b",
    title: "B",
    warmup: [
      {
        exercise: "walk",
        dose: { sets: [{ amount: { kind: "time", span: { from: 300, to: 300 } }, eachSide: false }] },
      },
    ],
    blocks: [
      { kind: "straight", slots: [slot("squat", "goblet-squat", dose(4, 8, 10), 15)] },
      { kind: "straight", slots: [slot("row", "one-arm-row", dose(3, 8, 10, { eachSide: true }), 12.5)] },
      {
        kind: "pair",
        restS: 60,
        slots: [
          slot("press", "half-kneeling-press", dose(3, 8, 8, { eachSide: true }), 8),
          slot("push", "push-up-raised", dose(3, 8, 12)),
        ],
      },
      { kind: "straight", slots: [slot("bridge", "bridge", dose(3, 10, 15), 20)] },
      {
        kind: "straight",
        slots: [
          slot("plank", "front-plank", dose(3, 20, 30, { kind: "hold" })),
          slot("side", "side-plank", dose(3, 15, 20, { kind: "hold", eachSide: true })),
        ],
      },
    ],
    conditioning: [
      {
        exercise: "walk",
        dose: { sets: [{ amount: { kind: "time", span: { from: 600, to: 600 } }, eachSide: false }] },
        effort: "easy",
      },
    ],
    open: [],
    minutes: { low: 41, high: 46 },
  } as const;
  return {
    v: 1,
    person: { id: "ana", name: "Ana", units: "kg" },
    plan: "plan-1",
    n: 10,
    sessions: [
      { id: "base/1/b", day, from: 1080, title: "B", session },
      { id: "base/1/c", day: later, from: 1080, title: "C", session: { ...session, key: "c", title: "C" } },
    ],
    exercises: [
      form({ id: "goblet-squat", name: "Goblet squat", last: { value: 15, unit: "kg" } }),
      form({ id: "one-arm-row", name: "One-arm row on a bench", eachSide: true, last: { value: 12.5, unit: "kg" } }),
      form({ id: "half-kneeling-press", name: "Half-kneeling press", eachSide: true }),
      form({ id: "push-up-raised", name: "Push-up, hands raised", loads: [], loadMeaning: "body only" }),
      form({ id: "bridge", name: "Bridge" }),
      form({ id: "front-plank", name: "Front plank", amounts: "hold", loads: [], loadMeaning: "none" }),
      form({
        id: "side-plank",
        name: "Side plank, knees",
        amounts: "hold",
        eachSide: true,
        loads: [],
        loadMeaning: "none",
      }),
      form({ id: "walk", name: "Easy walk", amounts: "time", loads: [], loadMeaning: "none" }),
      form({ id: "box-squat", name: "Box squat" }),
    ],
    offers: [{ slot: "squat", forms: [{ exercise: "box-squat", rung: 1, load: { value: 10, unit: "kg" } }] }],
    stops: [],
    paused: [],
    call: "Priya on 020 7946 0018",
  };
}
