import type { Finding, Remedy, Severity, Silence } from "../../model/index.ts";
import { CHECKS, type CheckId } from "./all.ts";
import { changed } from "./change.ts";
import type { Check, CheckInput, Cure, Facts, Found } from "./check.ts";
import { editOf } from "./file-form.ts";
import { identityOf } from "./identity.ts";
import { type Look, lookAt } from "./look.ts";

export interface Silenced {
  readonly finding: Finding;
  readonly reason: string;
}

export interface Checked {
  /** In the order of the file. */
  readonly findings: readonly Finding[];
  /** What the coach has silenced: kept, with the reason. */
  readonly silenced: readonly Silenced[];
  /** Silences that silence nothing. */
  readonly unused: readonly Silence[];
}

/** A finding without its remedies, and how to get them. */
interface Raw {
  readonly finding: Finding;
  readonly always: boolean;
  readonly more: () => Facts;
  readonly cures: () => readonly Cure[];
}

const RANK: Readonly<Record<Severity, number>> = { stop: 2, warn: 1, note: 0 };

function raw(check: Check, found: Found): Raw {
  const severity = found.severity ?? check.severity;
  return {
    finding: { check: check.id, severity, at: found.at, data: found.data, remedies: [] },
    always: check.always ?? false,
    more: found.more ?? (() => ({})),
    cures: found.cures ?? (() => []),
  };
}

function findIn(check: Check, look: Look): readonly Raw[] {
  return check.run(look).map((found) => raw(check, found));
}

/** What can be said of a plan whose doses nobody wrote down. */
const WITHOUT_DOSES: readonly CheckId[] = [
  "slot/unknown-exercise",
  "week/pattern-never-trained",
  "week/muscle-once",
  "slot/not-served-here",
  "session/one-station-twice",
  "session/pair-for-one-muscle",
  "week/trunk-directions",
  "programme/cannot-judge",
];

function findAll(look: Look): readonly Raw[] {
  const checks: readonly Check[] =
    look.unsaid === undefined ? CHECKS : CHECKS.filter(({ id }) => WITHOUT_DOSES.includes(id));
  return checks.flatMap((check: Check) => findIn(check, look));
}

function silenceOf({ finding, always }: Raw, silence: readonly Silence[]): Silence | undefined {
  if (always) return undefined;
  return silence.find(
    (each) => each.check === finding.check && (each.slot === undefined || each.slot === finding.data["slot"]),
  );
}

/**
 * Whether a cure holds: the finding is gone, or at least no worse where the cure says so, and nothing as serious has
 * come. What the coach has silenced does not count as come.
 */
function holds(
  input: CheckInput,
  silence: readonly Silence[],
  before: readonly Raw[],
  mine: Finding,
  cure: Cure,
): boolean {
  const look = lookAt({ ...input, programme: changed(input.programme, cure.changes) });
  const own: Check = CHECKS.find(({ id }) => id === mine.check)!;
  // Most that do not hold leave their own finding, which is soon told.
  const isMine = ({ finding }: Raw) => identityOf(finding) === identityOf(mine);
  if (cure.partly !== true && findIn(own, look).some(isMine)) return false;
  const severityBefore = new Map(before.map(({ finding }) => [identityOf(finding), RANK[finding.severity]]));
  const isFine = (each: Raw) => {
    const id = identityOf(each.finding);
    const rank = RANK[each.finding.severity];
    if (id === identityOf(mine)) return cure.partly === true && rank <= RANK[mine.severity];
    const worse = rank > (severityBefore.get(id) ?? -1);
    return !worse || rank < RANK[mine.severity] || silenceOf(each, silence) !== undefined;
  };
  return CHECKS.every((check: Check) => findIn(check, look).every(isFine));
}

/** @returns the cures that hold, of each group only the first */
function remediesOf(
  input: CheckInput,
  silence: readonly Silence[],
  before: readonly Raw[],
  found: Raw,
): readonly Remedy[] {
  const taken = new Set<string>();
  const remedies: Remedy[] = [];
  for (const cure of found.cures()) {
    if (cure.group !== undefined && taken.has(cure.group)) continue;
    if (!holds(input, silence, before, found.finding, cure)) continue;
    if (cure.group !== undefined) taken.add(cure.group);
    remedies.push({ id: cure.id, data: cure.data, edits: cure.changes.map(editOf) });
  }
  return remedies;
}

/** A place as a text whose order is that of places from the top; what holds comes before what it holds. */
function orderOf({ at }: Finding): string {
  return at.map((step) => (typeof step === "number" ? String(step).padStart(6, "0") : step)).join("/");
}

/**
 * Everything the checks say of a programme. Every remedy offered has been tried: it removes its finding, or says what
 * it leaves, and brings nothing as serious.
 *
 * @param silence what the coach has silenced, with reasons; an exercise that nobody knows cannot be silenced
 * @param remedies "none" leaves them out: trying them costs many runs, and on every keystroke only findings are needed
 */
export function runChecks(
  input: CheckInput,
  silence: readonly Silence[],
  remedies: "tried" | "none" = "tried",
): Checked {
  const all = findAll(lookAt(input));
  const findings: Finding[] = [];
  const silenced: Silenced[] = [];
  const used = new Set<Silence>();
  for (const each of all) {
    const by = silenceOf(each, silence);
    const finding = { ...each.finding, data: { ...each.finding.data, ...each.more() } };
    if (by !== undefined) {
      used.add(by);
      silenced.push({ finding, reason: by.reason });
    } else {
      findings.push(remedies === "none" ? finding : { ...finding, remedies: remediesOf(input, silence, all, each) });
    }
  }
  return {
    findings: findings.sort((a, b) => Number(orderOf(a) > orderOf(b)) - Number(orderOf(a) < orderOf(b))),
    silenced,
    unused: silence.filter((each) => !used.has(each)),
  };
}

/** Checks a programme, with the silences that its own file holds. */
export function checkProgramme(input: CheckInput): Checked {
  return runChecks(input, input.programme.silence ?? []);
}
