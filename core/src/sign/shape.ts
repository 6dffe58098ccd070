/** What a line or a face of a drawing is for; its colour is the palette's. */
export type Role = "ink" | "edge" | "rule" | "correction" | "none";

export type Shape =
  | {
      readonly kind: "bar";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly fill: Role;
      /** Drawn inside the bar, so that the bar is as wide as it says. */
      readonly outline: Role;
      readonly dashed: boolean;
      /** Width of the outline; 0 where there is none. */
      readonly weight: number;
    }
  | { readonly kind: "line"; readonly x1: number; readonly x2: number; readonly y: number; readonly role: Role }
  | { readonly kind: "dot"; readonly x: number; readonly y: number; readonly radius: number; readonly role: Role }
  | { readonly kind: "word"; readonly x: number; readonly y: number; readonly word: string; readonly role: Role };

/** A sign as data: shapes in the order of painting, in pixels from the upper left corner. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}
