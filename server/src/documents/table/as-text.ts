/** Spreadsheets take these for the beginning of a formula, also after blanks, and some of them the wide forms too. */
const FORMULA = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/u;

/**
 * Words from outside that a spreadsheet must not take for a formula: a quote stands before what begins like one.
 * Columns of numbers do not go through here, so a number stays a number.
 *
 * @example asText("=1+1") //=> "'=1+1"
 */
export function asText(words: string): string {
  return FORMULA.test(words) ? `'${words}` : words;
}
