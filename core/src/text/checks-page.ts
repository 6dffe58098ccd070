import { CHECKS } from "../checks/index.ts";
import type { Finding } from "../model/index.ts";
import { en, type Messages } from "./en.ts";
import { sayFinding, sayRemedy, saySources } from "./say.ts";

/** The example that shows most: the first with remedies, else the first. */
function telling(examples: readonly Finding[]): Finding | undefined {
  return examples.find((finding) => finding.remedies.length > 0) ?? examples[0];
}

/**
 * The checks as a page to read: what each is for, how serious it is, what it rests on, and what it says.
 *
 * @param examples findings of a programme that was written to show each check once
 * @returns Markdown, the same for the same checks
 */
export function checksPage(examples: readonly Finding[], words: Messages = en): string {
  const sections = CHECKS.map(({ id, severity }) => {
    const found = telling(examples.filter((finding) => finding.check === id));
    const remedies = found?.remedies.map((remedy) => `> - ${sayRemedy(remedy, words)}`) ?? [];
    const example =
      found === undefined
        ? []
        : [
            "For example:",
            [`> ${sayFinding(found, words)}`, ...(remedies.length > 0 ? [">", ...remedies] : [])].join("\n"),
          ];
    return [
      `## \`${id}\``,
      `Usually: ${words.words.severities[severity]}. ${saySources(id, words)}`,
      words.whys[id],
      ...example,
    ].join("\n\n");
  });
  const head = [
    "# Checks",
    `${CHECKS.length} rules, all in plain sight. A finding stops, warns or notes. A coach can silence a rule with a reason, in the programme's own file; every remedy offered has been tried and removes its finding, or says what it leaves. This page is made from the checks themselves.`,
  ];
  return `${[...head, ...sections].join("\n\n")}\n`;
}
