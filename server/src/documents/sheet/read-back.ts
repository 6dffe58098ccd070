/** Reads a printed sheet with another library, for tests. */
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

const CLOSE_PATH = OPS.closePath;

/** A rectangle on the page in points, from the lower left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Whether readers aloud pass over it. */
  readonly artifact: boolean;
}

export interface PrintedPage {
  /** In reading order, blanks drawn together. */
  readonly text: string;
  readonly size: readonly [width: number, height: number];
  /** Where each piece of text stands. */
  readonly pieces: readonly Omit<Box, "artifact">[];
  /** Closed four-sided paths that are drawn with a pen. */
  readonly boxes: readonly Box[];
  /** Open paths of two points: rules, brackets, dashed lines. */
  readonly lines: readonly Box[];
  /** Roles of the structure tree, in order. */
  readonly roles: readonly string[];
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
}

export interface Printed {
  readonly pages: readonly PrintedPage[];
  readonly title: string;
  readonly language: string;
  readonly tagged: boolean;
  readonly standard: string;
  /** Whether the file says when it was made. */
  readonly dated: boolean;
}

type Matrix = readonly [number, number, number, number, number, number];
type Page = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>["promise"]>["getPage"]>>;

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[2] * b[1],
    a[1] * b[0] + a[3] * b[1],
    a[0] * b[2] + a[2] * b[3],
    a[1] * b[2] + a[3] * b[3],
    a[0] * b[4] + a[2] * b[5] + a[4],
    a[1] * b[4] + a[3] * b[5] + a[5],
  ];
}

function placed(matrix: Matrix, [left, bottom, right, top]: readonly number[], artifact: boolean): Box {
  const at = (x: number, y: number) => [
    matrix[0] * x + matrix[2] * y + matrix[4],
    matrix[1] * x + matrix[3] * y + matrix[5],
  ];
  const [[x1, y1], [x2, y2]] = [at(left!, bottom!), at(right!, top!)] as [[number, number], [number, number]];
  return { x: Math.min(x1, x2), y: Math.min(y1, y2), width: Math.abs(x2 - x1), height: Math.abs(y2 - y1), artifact };
}

/** Follows the drawing of a page: positions, marks, paths that are stroked. */
function drawn({
  fnArray,
  argsArray,
}: Awaited<ReturnType<Page["getOperatorList"]>>): Pick<PrintedPage, "boxes" | "lines"> {
  const boxes: Box[] = [];
  const lines: Box[] = [];
  const stack: Matrix[] = [];
  const marks: boolean[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  /** Pieces of a path that the reader has cut in two where its list of operations was full. */
  let begun: readonly number[] = [];
  fnArray.forEach((fn, index) => {
    const args: unknown[] = argsArray[index] ?? [];
    if (fn === OPS.save) stack.push(matrix);
    else if (fn === OPS.restore) matrix = stack.pop()!;
    else if (fn === OPS.transform) matrix = times(matrix, args as unknown as Matrix);
    else if (fn === OPS.beginMarkedContent || fn === OPS.beginMarkedContentProps) {
      const name = args[0] as string | { name: string };
      marks.push((typeof name === "string" ? name : name.name) === "Artifact");
    } else if (fn === OPS.endMarkedContent) marks.pop();
    else if (fn === OPS.constructPath && fnArray[index + 1] === OPS.constructPath) begun = args[0] as number[];
    else if (fn === OPS.constructPath && fnArray[index + 1] === OPS.stroke) {
      const [pieces, , bounds] = args as [number[], number[], number[]];
      const kinds = [...begun, ...pieces];
      begun = [];
      const box = placed(matrix, bounds, marks.includes(true));
      if (kinds.length === 5 && kinds.at(-1) === CLOSE_PATH) boxes.push(box);
      else if (kinds.length === 2) lines.push(box);
    }
  });
  return { boxes, lines };
}

function rolesOf(node: unknown): string[] {
  const { role, children } = node as { role?: string; children?: unknown[] };
  return [...(role === undefined ? [] : [role]), ...(children ?? []).flatMap(rolesOf)];
}

async function fontsOf(
  page: Page,
  operators: Awaited<ReturnType<Page["getOperatorList"]>>,
): Promise<PrintedPage["fonts"]> {
  const ids = new Set(
    operators.fnArray.flatMap((fn, at) => (fn === OPS.setFont ? [operators.argsArray[at][0] as string] : [])),
  );
  return [...ids].map((id) => {
    const font = page.commonObjs.get(id) as { name: string; missingFile?: boolean };
    return { name: font.name, embedded: font.missingFile !== true };
  });
}

async function readPage(page: Page): Promise<PrintedPage> {
  const { items } = await page.getTextContent();
  const operators = await page.getOperatorList();
  const texts = items.flatMap((item) => ("str" in item ? [item] : []));
  const [, , width, height] = page.view as [number, number, number, number];
  return {
    text: texts
      .map(({ str, hasEOL }) => (hasEOL ? `${str} ` : str))
      .join("")
      .replace(/\s+/g, " "),
    size: [width, height],
    pieces: texts.map((item) => ({
      x: item.transform[4],
      y: item.transform[5],
      width: item.width,
      height: item.height,
    })),
    ...drawn(operators),
    roles: rolesOf(await page.getStructTree()),
    fonts: await fontsOf(page, operators),
  };
}

export async function readBack(pdf: Uint8Array): Promise<Printed> {
  const document = await getDocument({ data: Uint8Array.from(pdf), useSystemFonts: false, verbosity: 0 }).promise;
  const { info, metadata } = await document.getMetadata();
  const about = info as { Title?: string; Language?: string; CreationDate?: string };
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number++)
    pages.push(await readPage(await document.getPage(number)));
  const marks = await document.getMarkInfo();
  return {
    pages,
    title: about.Title ?? "",
    language: about.Language ?? "",
    tagged: marks?.["Marked"] === true,
    dated: about.CreationDate !== undefined,
    standard: String(metadata?.get("pdfuaid:part") ?? ""),
  };
}
