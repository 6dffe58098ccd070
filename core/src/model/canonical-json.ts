/**
 * The one spelling of a JSON value: members sorted by UTF-16 code units, no spaces, numbers and strings as ECMAScript
 * prints them (RFC 8785). Equal values give equal bytes. A member that is undefined counts as absent.
 *
 * @throws RangeError for whatever JSON cannot hold or a database would alter: NaN, infinities, bigints, functions,
 * dates, NUL and halves of a surrogate pair
 * @example
 * canonicalJson({ b: 1, a: [true, "x"] }) // {"a":[true,"x"],"b":1}
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === "boolean") return String(value);
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new RangeError(`JSON holds finite numbers only: current value is ${value}`);
    return JSON.stringify(value);
  }
  if (typeof value === "string") return quoted(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  if (typeof value !== "object" || !isPlain(value)) throw new RangeError(`JSON cannot hold a ${typeName(value)}`);
  const members = Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, inner]) => `${quoted(name)}:${canonicalJson(inner)}`);
  return `{${members.join(",")}}`;
}

function quoted(text: string): string {
  if (!isStorable(text)) throw new RangeError("Text must hold neither NUL nor half of a surrogate pair");
  return JSON.stringify(text);
}

/** @returns whether both databases give the text back as it was: no NUL, no half of a surrogate pair */
export function isStorable(text: string): boolean {
  return !/\0|\p{Surrogate}/u.test(text);
}

function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

function typeName(value: unknown): string {
  return typeof value === "object" && value !== null ? value.constructor.name : typeof value;
}
