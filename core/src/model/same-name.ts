/** How two written names stand to each other. */
export type NameMatch = "same" | "maybe" | "different";

/** A name for comparing: composed, blanks joined, case folded. The first spelling stays the one that is shown. */
export function nameKey(name: string): string {
  return name.normalize("NFC").trim().replace(/\s+/gu, " ").toUpperCase().toLowerCase();
}

/** The same without marks over and under letters: what a keyboard without them gives. */
function bareKey(name: string): string {
  return nameKey(name).normalize("NFD").replace(/\p{M}/gu, "").normalize("NFC");
}

/**
 * Whether two written names mean one person, as far as a name can tell. Birth dates decide before names do: two people
 * may share one.
 *
 * @returns "same" for one spelling in any case and composition; "maybe" when only marks on letters differ, which is
 * offered and never merged
 * @source unicode15
 */
export function matchNames(one: string, other: string): NameMatch {
  if (nameKey(one) === nameKey(other)) return "same";
  return bareKey(one) === bareKey(other) ? "maybe" : "different";
}
