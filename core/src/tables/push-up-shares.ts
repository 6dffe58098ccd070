import type { SourceId } from "../sources.ts";

/** Share of body mass on the hands in one push-up, as one paper measured it. */
export interface PushUpShare {
  readonly source: SourceId;
  readonly form:
    | "floor"
    | "knees"
    | "hands raised"
    | "feet raised"
    | "straps"
    | "hands wide"
    | "hands narrow"
    | "hands back"
    | "hands forward";
  /** Height of hands or feet, cm. */
  readonly heightCm?: number;
  readonly moment: "peak" | "top, still" | "bottom, still" | "start";
  readonly sex?: "men" | "women";
  readonly share: number;
  readonly sd?: number;
}

function rows(source: SourceId, list: readonly Omit<PushUpShare, "source">[]): readonly PushUpShare[] {
  return list.map((row) => ({ source, ...row }));
}

/**
 * What the hands carry in a push-up. The papers disagree: one calls 0.64 a peak, and it lies under the standing-still
 * values of the others and far under the peaks of mier2014. So ebben2011 is a ladder of forms against one another, and
 * mier2014 tells the top and the bottom. suprak2011, and the hand positions of
 * gouvaliBoudolos2005, are known from restatements in whole per cent.
 *
 * @source ebben2011, suprak2011, gouvaliBoudolos2005, mier2014, gulmez2017
 */
export const PUSH_UP_SHARES: readonly PushUpShare[] = [
  ...rows("ebben2011", [
    { form: "hands raised", heightCm: 60.96, moment: "peak", share: 0.41 },
    { form: "knees", moment: "peak", share: 0.49 },
    { form: "hands raised", heightCm: 30.48, moment: "peak", share: 0.55 },
    { form: "floor", moment: "peak", share: 0.64 },
    { form: "feet raised", heightCm: 30.48, moment: "peak", share: 0.7 },
    { form: "feet raised", heightCm: 60.96, moment: "peak", share: 0.74 },
  ]),
  ...rows("suprak2011", [
    { form: "floor", moment: "top, still", sex: "men", share: 0.69 },
    { form: "floor", moment: "bottom, still", sex: "men", share: 0.75 },
    { form: "knees", moment: "top, still", sex: "men", share: 0.54 },
    { form: "knees", moment: "bottom, still", sex: "men", share: 0.62 },
  ]),
  ...rows("gouvaliBoudolos2005", [
    { form: "floor", moment: "start", sex: "men", share: 0.664 },
    { form: "knees", moment: "start", sex: "men", share: 0.529 },
    { form: "hands wide", moment: "start", sex: "men", share: 0.63 },
    { form: "hands narrow", moment: "start", sex: "men", share: 0.65 },
    { form: "hands back", moment: "start", sex: "men", share: 0.73 },
    { form: "hands forward", moment: "start", sex: "men", share: 0.61 },
  ]),
  ...rows("mier2014", [
    { form: "floor", moment: "top, still", sex: "men", share: 0.67, sd: 0.038 },
    { form: "floor", moment: "top, still", sex: "women", share: 0.651, sd: 0.031 },
    { form: "floor", moment: "bottom, still", sex: "men", share: 0.746, sd: 0.036 },
    { form: "floor", moment: "bottom, still", sex: "women", share: 0.703, sd: 0.031 },
    { form: "knees", moment: "top, still", sex: "men", share: 0.525, sd: 0.037 },
    { form: "knees", moment: "top, still", sex: "women", share: 0.515, sd: 0.031 },
    { form: "knees", moment: "bottom, still", sex: "men", share: 0.601, sd: 0.045 },
    { form: "knees", moment: "bottom, still", sex: "women", share: 0.566, sd: 0.027 },
    { form: "floor", moment: "peak", sex: "men", share: 0.977, sd: 0.081 },
    { form: "floor", moment: "peak", sex: "women", share: 0.8, sd: 0.039 },
    { form: "knees", moment: "peak", sex: "men", share: 0.797, sd: 0.074 },
    { form: "knees", moment: "peak", sex: "women", share: 0.682, sd: 0.03 },
  ]),
  ...rows("gulmez2017", [
    { form: "straps", moment: "top, still", share: 0.504 },
    { form: "straps", moment: "bottom, still", share: 0.753 },
  ]),
];

const MEASURED_CM = 60.96;

/**
 * The share of body mass on the hands with hands or feet raised, along straight lines between the measured heights. A
 * tilt formula does not give the measured shares, so none is used.
 *
 * @param handsCm height of the hands over the feet; feet over the hands is negative; −60.96 to 60.96
 * @returns the share, by 14 men and 9 women
 * @throws RangeError beyond the measured heights
 * @source ebben2011
 * @example pushUpShareAt(20).toFixed(3) //=> "0.581"
 */
export function pushUpShareAt(handsCm: number): number {
  if (!(handsCm >= -MEASURED_CM && handsCm <= MEASURED_CM)) {
    throw new RangeError(
      `Cannot tell the share of body mass as the hands must be from ${-MEASURED_CM} to ${MEASURED_CM} cm over the feet: current value is ${handsCm}`,
    );
  }
  const points = PUSH_UP_SHARES.filter(({ source, form }) => source === "ebben2011" && form !== "knees")
    .map(({ form, heightCm = 0, share }) => ({ at: form === "feet raised" ? -heightCm : heightCm, share }))
    .sort((a, b) => a.at - b.at);
  const above = Math.max(
    1,
    points.findIndex(({ at }) => at >= handsCm),
  );
  const [low, high] = [points[above - 1]!, points[above]!];
  return low.share + ((high.share - low.share) * (handsCm - low.at)) / (high.at - low.at);
}
