import type { Drawing, Role, Shape } from "./shape.ts";

/** A colour, or a style variable that holds one, for every role. */
export type Palette = Readonly<Record<Exclude<Role, "none">, string>>;

/** Colours of paper. Source: our own palette, web/src/style/tokens.css. */
export const PRINTED: Palette = { ink: "#1d2733", edge: "#7c8489", rule: "#d9d3c3", correction: "#a63d2f" };
/** On a page the style sheet decides, so that light and dark keep the roles. */
export const STYLED: Palette = {
  ink: "var(--ink)",
  edge: "var(--edge)",
  rule: "var(--rule)",
  correction: "var(--correction)",
};

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (found) => ESCAPES[found]!);
}

function element(shape: Shape, palette: Palette): string {
  const colour = (role: Role) => (role === "none" ? "none" : palette[role]);
  switch (shape.kind) {
    case "bar": {
      const { x, y, width, height, weight } = shape;
      const inset = weight / 2;
      const box = `x="${x + inset}" y="${y + inset}" width="${Math.max(0, width - weight)}" height="${Math.max(0, height - weight)}"`;
      const dashes = shape.dashed ? ' stroke-dasharray="2 2"' : "";
      const outline = weight === 0 ? "" : ` stroke="${colour(shape.outline)}" stroke-width="${weight}"${dashes}`;
      return `<rect ${box} fill="${colour(shape.fill)}"${outline}/>`;
    }
    case "line":
      return `<path d="M${shape.x1} ${shape.y}H${shape.x2}" stroke="${colour(shape.role)}"/>`;
    case "dot":
      return `<circle cx="${shape.x}" cy="${shape.y}" r="${shape.radius}" fill="${colour(shape.role)}"/>`;
    case "word":
      return `<text x="${shape.x}" y="${shape.y}" fill="${colour(shape.role)}" font-size="11" text-anchor="middle">${escaped(shape.word)}</text>`;
  }
}

/**
 * A drawing as SVG text for a page, a report or paper.
 *
 * @param label what the picture says, for readers who do not see it; without one it is hidden from them, because the
 * words stand beside it
 */
export function svgOf({ width, height, shapes }: Drawing, palette: Palette, label?: string): string {
  const said = label === undefined ? 'aria-hidden="true"' : `role="img" aria-label="${escaped(label)}"`;
  const inside = shapes.map((shape) => element(shape, palette)).join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" ${said}>${inside}</svg>`;
}
