/** Something wrong inside a short text; `offset` counts UTF-16 units from its first character. */
export interface Slip {
  readonly code: string;
  readonly offset: number;
  readonly found: string;
  readonly allowed: string;
  readonly maybe?: string;
}

export type Slipped<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly slip: Slip };

export function read<T>(value: T): Slipped<T> {
  return { ok: true, value };
}

export function slipped(slip: Slip): { readonly ok: false; readonly slip: Slip } {
  return { ok: false, slip };
}
