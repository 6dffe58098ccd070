/**
 * Words from outside that a spreadsheet must not take for a formula: a quote stands before what begins like one.
 *
 * @example asText("=1+1") //=> "'=1+1"
 */
export function asText(words: string): string {
  return /^[=+\-@\t\r]/.test(words) ? `'${words}` : words;
}
