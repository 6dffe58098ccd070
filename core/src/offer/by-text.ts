/** Order of two texts by code unit, the same in every language and engine. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
