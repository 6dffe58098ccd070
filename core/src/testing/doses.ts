import fc from "fast-check";
import type { Amount, Dose, SetDose, Span, Tempo } from "../model/index.ts";
import { DOSE_BOUNDS } from "../model/index.ts";

function whole(bounds: { readonly from: number; readonly to: number }): fc.Arbitrary<number> {
  return fc.integer({ min: bounds.from, max: bounds.to });
}

function span(bounds: { readonly from: number; readonly to: number }): fc.Arbitrary<Span> {
  return fc.oneof(
    whole(bounds).map((n) => ({ from: n, to: n })),
    fc.tuple(whole(bounds), whole(bounds)).map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) })),
  );
}

const reps: fc.Arbitrary<Amount> = span(DOSE_BOUNDS.reps).map((s) => ({ kind: "reps", span: s }));
const most: fc.Arbitrary<Amount> = fc.option(whole(DOSE_BOUNDS.reps)).map((least) => ({
  kind: "most",
  ...(least === null ? {} : { least }),
}));
const counted: readonly fc.Arbitrary<Amount>[] = [
  span(DOSE_BOUNDS.hold).map((s) => ({ kind: "hold", span: s })),
  span(DOSE_BOUNDS.metres).map((s) => ({ kind: "metres", span: s })),
  span(DOSE_BOUNDS.time).map((s) => ({ kind: "time", span: s })),
  span({ from: 1, to: 300 }).map((s) => ({ kind: "time", span: { from: s.from * 60, to: s.to * 60 } })),
  span(DOSE_BOUNDS.contacts).map((s) => ({ kind: "contacts", span: s })),
];

function set(amount: fc.Arbitrary<Amount>, within: fc.Arbitrary<SetDose["within"] | null>): fc.Arbitrary<SetDose> {
  const effort = fc.oneof(
    fc.constant({}),
    whole(DOSE_BOUNDS.percent).map((percent) => ({ percent })),
    fc
      .tuple(fc.integer({ min: 1, max: 1_000_000 }), fc.constantFrom("kg" as const, "lb" as const))
      .map(([thousandths, unit]) => ({ load: { value: thousandths / 1000, unit } })),
  );
  return fc
    .tuple(amount, fc.boolean(), effort, fc.option(span(DOSE_BOUNDS.reserve)), within)
    .map(([a, eachSide, e, reserve, w]) => ({
      amount: a,
      eachSide,
      ...e,
      ...(reserve === null ? {} : { reserve }),
      ...(w && a.kind === "reps" ? { within: w } : {}),
    }));
}

const within = fc.option(
  fc.record({
    bouts: fc.array(whole(DOSE_BOUNDS.reps), { minLength: DOSE_BOUNDS.bouts.from, maxLength: DOSE_BOUNDS.bouts.to }),
    restS: whole(DOSE_BOUNDS.inside),
  }),
);

const oneSet = [set(fc.oneof(reps, most), within), ...counted.map((amount) => set(amount, fc.constant(null)))] as const;

/** Sets are often alike, as coaches write them: few kinds, repeated, in any order. */
const sets: fc.Arbitrary<readonly SetDose[]> = fc.oneof(
  ...oneSet.map((one) =>
    fc.array(one, { minLength: 1, maxLength: 3 }).chain((kinds) =>
      fc.oneof(
        fc.array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 20 }),
        fc.array(
          fc
            .nat(kinds.length - 1)
            .map((i) => ({ ...kinds[0]!, amount: kinds[i]!.amount }))
            .map(withoutStrayBouts),
          { minLength: 1, maxLength: 5 },
        ),
      ),
    ),
  ),
);

function withoutStrayBouts(one: SetDose): SetDose {
  if (one.amount.kind === "reps") return one;
  const { within: _, ...rest } = one;
  return rest;
}

const tempo: fc.Arbitrary<Tempo> = fc
  .tuple(whole(DOSE_BOUNDS.tempo), whole(DOSE_BOUNDS.tempo), whole(DOSE_BOUNDS.tempo), whole(DOSE_BOUNDS.tempo))
  .filter((parts) => parts.some((part) => part > 0));

/** Every dose that a programme may ask for. */
export const doses: fc.Arbitrary<Dose> = fc
  .tuple(sets, fc.option(whole(DOSE_BOUNDS.rest)), fc.option(tempo))
  .map(([s, restS, t]) => ({
    sets: s,
    ...(restS === null ? {} : { restS }),
    ...(t === null ? {} : { tempo: t }),
  }));
