/**
 * A person's name as it stands on a sheet that lies about in a room: first name and the initial of the last.
 *
 * A name of one word, and one in a script without capital letters, stay whole.
 *
 * @example
 * nameOnSheet("Dagny Thistlemere") //=> "Dagny T."
 */
export function nameOnSheet(name: string): string {
  const parts = name.trim().split(/\s+/);
  const last = parts.at(-1)!;
  const initial = [...last][0]!;
  const hasCase = initial.toUpperCase() !== initial.toLowerCase();
  if (parts.length < 2 || !hasCase) return name.trim();
  return `${parts.slice(0, -1).join(" ")} ${initial.toUpperCase()}.`;
}
