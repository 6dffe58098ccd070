/** Small changes of a source text that a good test would notice. */

export interface Mutant {
  /** Offset into the text, what stands there and what shall stand there instead. */
  readonly at: number;
  readonly from: string;
  readonly to: string;
}

/** Literals and comments, which are left alone: a text that is printed is not a decision. */
const QUIET =
  /\/\/[^\n]*|\/\*[\s\S]*?\*\/|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`|(?<=[(,=:[!&|?{};]\s*)\/(?![/*\s])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n])+\/[dgimsuvy]*/g;

/** The formatter puts a space on both sides of these; in types they stand without. */
const SPACED: Readonly<Record<string, string>> = {
  "<": "<=",
  "<=": "<",
  ">": ">=",
  ">=": ">",
  "===": "!==",
  "!==": "===",
  "+": "-",
  "-": "+",
  "*": "/",
  "/": "*",
  "%": "*",
  "&&": "||",
  "||": "&&",
  "??": "&&",
  "+=": "-=",
  "-=": "+=",
  "*=": "/=",
};

const NAMED: Readonly<Record<string, string>> = {
  true: "false",
  false: "true",
  ".some(": ".every(",
  ".every(": ".some(",
  "Math.min(": "Math.max(",
  "Math.max(": "Math.min(",
  "Math.floor(": "Math.ceil(",
  "Math.ceil(": "Math.floor(",
  "Math.round(": "Math.floor(",
  ".toReversed()": "",
  "++": "--",
  "continue;": ";",
  "if (": "if (true || ",
};

const FORMS: readonly (readonly [pattern: RegExp, to: (found: string) => string | undefined])[] = [
  [/(?<= )[<>=!+\-*/%&|?]+(?= )/g, (found) => SPACED[found]],
  [/\b(?:true|false)\b|\.(?:some|every)\(|Math\.\w+\(|\.toReversed\(\)|\+\+|continue;|if \(/g, (found) => NAMED[found]],
  [/if \(/g, () => "if (false && "],
  [/(?<![\w.])\d[\d_]*(?![\w.])/g, (found) => String(Number(found.replaceAll("_", "")) + 1)],
  [/(?<=[\s([,&|?:{>])[!-](?=[\w(])/g, () => ""],
  [
    /(?<=\n +)(?!const |let |return|import |export |type |if |for |throw |else |readonly |case |break)[a-z][^\n;]*\([^\n]*\);(?=\n)/g,
    () => ";",
  ],
];

/**
 * Every mutant of a TypeScript text, in the order of the text.
 *
 * @example
 * mutantsOf("const far = a < 3;").map(({ from, to }) => `${from} > ${to}`) //=> ["< > <=", "3 > 4"]
 */
export function mutantsOf(text: string): readonly Mutant[] {
  const code = text.replaceAll(QUIET, (quiet) => quiet.replaceAll(/[^\n]/g, "_"));
  return FORMS.flatMap(([pattern, to]) =>
    [...code.matchAll(pattern)].flatMap((match): Mutant[] => {
      const other = to(match[0]);
      return other === undefined ? [] : [{ at: match.index, from: match[0], to: other }];
    }),
  ).sort((a, b) => a.at - b.at || (a.to < b.to ? -1 : 1));
}

/** @returns the text with one mutant in it */
export function mutated(text: string, { at, from, to }: Mutant): string {
  return text.slice(0, at) + to + text.slice(at + from.length);
}

/** @returns the tests beside a source file, which most often notice its faults and soonest; then all others */
export function besideFirst<T>(tests: readonly T[], pathOf: (test: T) => string, path: string): [T[], T[]] {
  const own = path.replace(/\.ts$/, ".test.ts");
  return [tests.filter((test) => pathOf(test) === own), tests.filter((test) => pathOf(test) !== own)];
}

/**
 * The lower end of Wilson's 95 % interval of a share.
 *
 * Wilson, J. Am. Stat. Assoc. 22 (1927) 209, from memory.
 */
export function wilsonLower(hits: number, all: number): number {
  if (!(all > 0)) return 0;
  const z = 1.96;
  const p = hits / all;
  const spread = z * Math.sqrt((p * (1 - p)) / all + (z * z) / (4 * all * all));
  return (p + (z * z) / (2 * all) - spread) / (1 + (z * z) / all);
}
