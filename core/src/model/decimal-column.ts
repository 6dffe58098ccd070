/** One cell of a column of numbers. `ask` names why it is not taken as it stands. */
export type NumberCell =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "ask"; readonly text: string; readonly maybe: readonly number[]; readonly because: Doubt }
  | { readonly kind: "blank" }
  | { readonly kind: "text"; readonly text: string };

/**
 * `grouped`: thousands and decimals both written. `other mark`: the decimal mark is not that of the column.
 * `thousands or decimals`: three digits after a lone mark may be either.
 */
export type Doubt = "grouped" | "other mark" | "thousands or decimals";

export interface NumberColumn {
  /** The decimal mark that the column is written with; undefined when no cell tells. */
  readonly mark: "." | "," | undefined;
  readonly cells: readonly NumberCell[];
}

const GROUPED = /^\d{1,3}(?:([.,])\d{3})+([.,])\d{1,2}$/;
const LONE = /^\d{1,6}([.,])(\d{1,3})$/;

function toNumber(text: string, mark: string): number {
  const other = mark === "." ? "," : ".";
  return Number(text.replaceAll(other, "").replace(mark, "."));
}

/** The marks that cells use without any doubt: one or two digits after a lone mark, or both marks. */
function votes(cells: readonly string[]): readonly string[] {
  return cells.flatMap((text) => {
    const grouped = GROUPED.exec(text);
    if (grouped && grouped[1] !== grouped[2]) return [grouped[2]!];
    const lone = LONE.exec(text);
    return lone && lone[2]!.length < 3 ? [lone[1]!] : [];
  });
}

/**
 * Reads a column of numbers whose decimal mark is not known: the mark that most cells use without doubt is the
 * column's, the first of them where it is a tie. What does not follow it is shown and asked, and no number becomes
 * text silently.
 *
 * @param cells as they stand in the file
 * @example readNumberColumn(["22,5", "17.5"]) //=> mark ",", 22.5, and 17.5 asked
 */
export function readNumberColumn(cells: readonly string[]): NumberColumn {
  const said = cells.map((cell) => cell.trim());
  const voted = votes(said);
  const commas = voted.filter((mark) => mark === ",").length;
  const tie = commas * 2 === voted.length;
  const mark = voted.length === 0 ? undefined : tie ? (voted[0] as "." | ",") : commas * 2 > voted.length ? "," : ".";
  return { mark, cells: said.map((text) => readCell(text, mark)) };
}

function readCell(text: string, mark: "." | "," | undefined): NumberCell {
  if (text === "") return { kind: "blank" };
  if (/^\d{1,6}$/.test(text)) return { kind: "number", value: Number(text) };
  const grouped = GROUPED.exec(text);
  if (grouped) {
    const own = grouped[2]!;
    if (grouped[1] === own) return { kind: "text", text };
    return { kind: "ask", text, maybe: [toNumber(text, own)], because: own === mark ? "grouped" : "other mark" };
  }
  const lone = LONE.exec(text);
  if (!lone) return { kind: "text", text };
  const [, own = "", digits = ""] = lone;
  const value = toNumber(text, own);
  if (digits.length === 3) {
    return { kind: "ask", text, maybe: [value, Number(text.replace(own, ""))], because: "thousands or decimals" };
  }
  if (own !== mark) return { kind: "ask", text, maybe: [value], because: "other mark" };
  return { kind: "number", value };
}
