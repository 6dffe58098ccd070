const PREFIX = "stave-draft-";

/** What was typed and not sent yet, so that closing the dialog or the page loses nothing. Kept for this tab alone. */
export function readDraft(about: string): string | undefined {
  try {
    return sessionStorage.getItem(PREFIX + about) ?? undefined;
  } catch {
    return undefined;
  }
}

/** @param text empty to forget it */
export function keepDraft(about: string, text: string): void {
  try {
    if (text === "") sessionStorage.removeItem(PREFIX + about);
    else sessionStorage.setItem(PREFIX + about, text);
  } catch {
    // A browser that keeps nothing still lets the coach decide.
  }
}
