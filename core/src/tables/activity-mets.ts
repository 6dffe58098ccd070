import type { SourceId } from "../sources.ts";

/** METs of one activity in the 2011 and the 2024 list; codes are the lists' own. Missing where a list has none. */
export interface ActivityMets {
  readonly activity: string;
  readonly in2011?: { readonly code: string; readonly mets: number };
  readonly in2024?: { readonly code: string; readonly mets: number };
}

const of = (code: string, mets: number) => ({ code, mets });

/**
 * Energy cost of training activities as the two editions print it. The 2024 list is for 19 to 59 years. They are means of
 * groups: one person may lie a fifth away. Editions are kept apart and never mixed.
 *
 * @source ainsworth2011, herrmann2024
 */
export const ACTIVITY_METS: {
  readonly sources: { readonly in2011: SourceId; readonly in2024: SourceId };
  readonly rows: readonly ActivityMets[];
} = {
  sources: { in2011: "ainsworth2011", in2024: "herrmann2024" },
  rows: [
    { activity: "resistance training, vigorous", in2011: of("02050", 6), in2024: of("02050", 6) },
    { activity: "resistance training, squats or deadlifts", in2011: of("02052", 5), in2024: of("02052", 5) },
    {
      activity: "resistance training, several exercises of 8 to 15",
      in2011: of("02054", 3.5),
      in2024: of("02054", 3.5),
    },
    { activity: "body-weight training, general", in2024: of("02056", 3) },
    { activity: "body-weight training, hard", in2024: of("02057", 6.5) },
    { activity: "kettlebell swings", in2024: of("02058", 9.8) },
    { activity: "calisthenics, vigorous", in2011: of("02020", 8), in2024: of("02020", 7.5) },
    { activity: "calisthenics, moderate", in2011: of("02022", 3.8), in2024: of("02022", 3.8) },
    { activity: "calisthenics, light", in2011: of("02024", 2.8), in2024: of("02024", 2.8) },
    { activity: "calisthenics, general", in2011: of("02030", 3.5), in2024: of("02030", 3.5) },
    { activity: "circuit, moderate", in2011: of("02035", 4.3), in2024: of("02035", 5) },
    { activity: "circuit, vigorous", in2011: of("02040", 8), in2024: of("02040", 7.5) },
    { activity: "elliptical, moderate", in2011: of("02048", 5), in2024: of("02048", 5) },
    { activity: "elliptical, vigorous", in2024: of("02049", 9) },
    { activity: "rowing machine, general and vigorous", in2011: of("02070", 6), in2024: of("02070", 7.3) },
    { activity: "rowing machine, moderate", in2011: of("02071", 4.8), in2024: of("02071", 5) },
    { activity: "rowing machine, 100 W", in2011: of("02072", 7), in2024: of("02072", 7.5) },
    { activity: "rowing machine, 150 W", in2011: of("02073", 8.5), in2024: of("02073", 11) },
    { activity: "rowing machine, 200 W", in2011: of("02074", 12), in2024: of("02074", 14) },
    { activity: "stair machine", in2011: of("02065", 9), in2024: of("02065", 9.3) },
    { activity: "rope skipping", in2011: of("02068", 12.3), in2024: of("02068", 11) },
    { activity: "cycle, 25 to 30 W", in2011: of("02011", 3.5), in2024: of("01210", 3.5) },
    { activity: "cycle, 50 W", in2024: of("01214", 4) },
    { activity: "cycle, 60 W", in2024: of("01216", 5) },
    { activity: "cycle, 70 to 80 W", in2024: of("01218", 5.8) },
    { activity: "cycle, 90 to 100 W", in2024: of("01220", 6) },
    { activity: "cycle, 101 to 125 W", in2024: of("01224", 6.8) },
    { activity: "cycle, 126 to 150 W", in2024: of("01228", 8) },
    { activity: "cycle, 151 to 199 W", in2024: of("01232", 10.3) },
    { activity: "cycle, 200 to 229 W", in2024: of("01236", 10.8) },
    { activity: "cycle, 230 to 250 W", in2024: of("01240", 12.5) },
    { activity: "cycle, 270 to 305 W", in2024: of("01244", 13.8) },
    { activity: "cycle, over 325 W", in2024: of("01248", 16.3) },
    { activity: "intervals, moderate", in2024: of("02210", 7) },
    { activity: "intervals, vigorous", in2024: of("02214", 11) },
    { activity: "walking, 3 mph, level", in2011: of("17190", 3.5), in2024: of("17190", 3.8) },
    { activity: "walking, 3.5 mph, level", in2011: of("17200", 4.3), in2024: of("17200", 4.8) },
    { activity: "walking, 4.0 to 4.4 mph, level", in2024: of("17220", 5.5) },
    { activity: "walking, 4.5 to 4.9 mph, level", in2024: of("17230", 7) },
    { activity: "running, 5 mph", in2024: of("12030", 8.5) },
    { activity: "running, 6 mph", in2024: of("12050", 9.3) },
    { activity: "running, 7 mph", in2024: of("12070", 11) },
    { activity: "running, 8 mph", in2024: of("12090", 12) },
    { activity: "stretching, mild", in2011: of("02101", 2.3), in2024: of("02101", 2.3) },
  ],
};

/**
 * METs by the code of an edition.
 *
 * @returns undefined where that edition has no such row here
 * @source herrmann2024, ainsworth2011
 * @example metsByCode("02054") //=> 3.5
 */
export function metsByCode(code: string, edition: "in2011" | "in2024" = "in2024"): number | undefined {
  return ACTIVITY_METS.rows.find((row) => row[edition]?.code === code)?.[edition]?.mets;
}
