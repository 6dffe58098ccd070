import { type Catalogue, type Exercise, LANES, type Ladder, laneOf, type Need } from "../model/index.ts";
import { SOURCES } from "../sources.ts";
import { type Gate, gateOf } from "./gate.ts";

/**
 * The catalogue as a page to read: what stands in each lane, the ladders, then every entry.
 *
 * @returns Markdown, the same for the same catalogue
 */
export function cataloguePage(catalogue: Catalogue): string {
  const exercises = [...catalogue.exercises.values()];
  const parts = [
    "# Exercise catalogue",
    `${exercises.length} exercises and ${catalogue.ladders.length} ladders. This page is made from the catalogue itself.`,
    "Stress grades, entry criteria and hold ranges are our own judgement. They are unsigned: a practising coach and a clinician must sign them before they are used with a person. Stop at sharp or new pain, chest pressure, faintness, unusual breathlessness, numbness or loss of strength, or anything a clinician said to stop for.",
    "## Lanes",
    ...[...LANES, undefined].map((lane) =>
      laneSection(
        lane ?? "other",
        exercises.filter(({ pattern }) => laneOf(pattern) === lane),
      ),
    ),
    "## Ladders",
    ...catalogue.ladders.map((ladder) => ladderSection(ladder, catalogue)),
    "## Entries",
    ...exercises.map(entrySection),
  ];
  return `${parts.join("\n\n")}\n`;
}

function laneSection(lane: string, exercises: readonly Exercise[]): string {
  const lines = exercises.map(({ id, name, pattern }) => `- ${plain(name)} (\`${id}\`), ${pattern}`);
  return `### Lane: ${lane}\n\n${lines.length === 0 ? "Nothing yet." : lines.join("\n")}`;
}

function ladderSection({ id, name, start, steps }: Ladder, catalogue: Catalogue): string {
  const rows = steps.map(({ from, to, branch }) => {
    const gate = gateOf(catalogue, { from, to, branch });
    return `| \`${from}\` | \`${to}\` | ${plain(branch)} | ${plain(gateText(gate))} |`;
  });
  return [
    `### Ladder: ${plain(name)} (\`${id}\`)`,
    `Starts on \`${start}\`.`,
    [
      "| From | To | Branch | Shown first, in sets of clean repetitions, and what must be true |",
      "| --- | --- | --- | --- |",
      ...rows,
    ].join("\n"),
  ].join("\n\n");
}

function entrySection(exercise: Exercise): string {
  const { id, name, setUp, move, cues, faults } = exercise;
  return [
    `### ${plain(name)}`,
    facts(exercise)
      .map(([what, value]) => `- ${what}: ${what === "Id" ? `\`${id}\`` : plain(value)}`)
      .join("\n"),
    `${plain(setUp)} ${plain(move)}`,
    `Cues: ${cues.map((cue) => plain(cue)).join(" · ")}`,
    [
      "| Seen | Likely reason | First fix |",
      "| --- | --- | --- |",
      ...faults.map(({ see, why, fix }) => `| ${plain(see)} | ${plain(why)} | ${plain(fix)} |`),
    ].join("\n"),
  ].join("\n\n");
}

const MARKS = [
  ["fixed", "body-mass load cannot be made lighter"],
  ["coachOnly", "only a coach may add it"],
  ["armsUsed", "arms carry or move load"],
  ["seated", "needs no legs"],
  ["lowering", "lowering only"],
] as const;

/** What is so for every entry, then what is so only for some. */
function facts(exercise: Exercise): readonly (readonly [what: string, value: string])[] {
  const { muscles, needs, stress, bodyShare, hold, need, sources, synonyms, alsoCounts } = exercise;
  const pairs = (record: Readonly<Record<string, number>>) =>
    Object.entries(record).map(([key, value]) => `${key} ${value}`);
  const flags = MARKS.filter(([mark]) => exercise[mark]).map(([, words]) => words);
  const all: readonly (readonly [string, string | undefined])[] = [
    ["Id", exercise.id],
    ["Also called", synonyms.join(", ")],
    ["Pattern", alsoCounts ? `${exercise.pattern}, also counts as ${alsoCounts}` : exercise.pattern],
    ["Done", `${exercise.position}, ${exercise.limb}, ${exercise.plane}, ${exercise.mode}, hands: ${exercise.hands}`],
    ["Counted in", `${exercise.amounts}${exercise.eachSide ? ", each side" : ""}`],
    ["Muscles", pairs(muscles).join(", ") || "none counted"],
    ["Needs", needs.map((group) => group.join(" or ")).join("; ") || "nothing"],
    ["Load", exercise.loadMeaning],
    ["Share of body mass", bodyShare && `${bodyShare.share} (${SOURCES[bodyShare.source].cite})`],
    ["Entry criterion", needText(need)],
    ["Base stress", pairs(stress).join(", ") || "none"],
    ["Hold", hold && `${hold.from} to ${hold.to} s, raised by ${hold.step} s`],
    ["Marked", flags.join(", ")],
    ["Seconds", secondsText(exercise)],
    ["Sources", sources.join(", ")],
  ];
  return all.flatMap(([what, value]) => (value ? [[what, value] as const] : []));
}

function secondsText({ secondsPerRep, switchS, setupS, changeS, moveS, amounts }: Exercise): string {
  const one = amounts === "hold" || amounts === "time" ? "" : `${secondsPerRep} for one, `;
  const other = switchS > 0 ? `${switchS} to change sides, ` : "";
  return `${one}${other}${setupS} to set up, ${changeS} between sets, ${moveS} to get there`;
}

function needText({ count, conditions }: Need): string {
  if (!count) return conditions.join("; ");
  const { of, reps, holdS, sets } = count;
  const amount = holdS === undefined ? `${reps ?? 1}` : reps === undefined ? `${holdS} s` : `${reps} × ${holdS} s`;
  return [`${sets === undefined ? "" : `${sets} × `}${amount} of ${of}`, ...conditions].join("; ");
}

const UNIT_OF = { reps: "", hold: " s", metres: " m", time: " s", contacts: " quiet landings" } as const;

function gateText({ of, sets, amount, conditions }: Gate): string {
  const shown = amount === undefined ? [] : [`${sets} × ${amount.value}${UNIT_OF[amount.kind]} of ${of}`];
  return [...shown, ...conditions].join("; ");
}

/** Signs that would mean something in Markdown are written as themselves. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>|#]/g, "\\$&");
}
