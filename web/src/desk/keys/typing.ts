/** Where letters are text and no keys. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return target.type !== "checkbox" && target.type !== "radio";
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || target.isContentEditable;
}

/** A letter alone, with no key held that makes a command of it. */
export function letterOf(event: {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}): string | undefined {
  if (event.ctrlKey || event.metaKey || event.altKey || event.key.length !== 1) return undefined;
  return event.key.toLowerCase();
}
