/** The day by the clock and zone of this computer, YYYY-MM-DD. */
export function todayHere(now = new Date()): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
