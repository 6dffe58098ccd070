/** Orders of the list of people. */
export const ORDERS = ["name", "programme", "last", "next", "waiting"] as const;
export type Order = (typeof ORDERS)[number];

/** Where the coach is. Everything in it can be shared as an address. */
export type Address =
  | { readonly page: "morning" }
  | { readonly page: "people"; readonly find: string; readonly by: Order }
  /** `week` is phase/week; without it the week that runs is shown. */
  | { readonly page: "person"; readonly id: string; readonly week?: string }
  | { readonly page: "rules" }
  | { readonly page: "nowhere"; readonly path: string };

const MOST_FIND = 80;

/** @returns undefined for what is no percent-encoded text */
function decoded(piece: string): string | undefined {
  try {
    return decodeURIComponent(piece);
  } catch {
    return undefined;
  }
}

/** Reads the address of a page; what it does not know leads nowhere and says so. */
export function readAddress({ pathname, search }: { readonly pathname: string; readonly search: string }): Address {
  const [first, second, ...more] = pathname.split("/").filter((piece) => piece !== "");
  const asked = new URLSearchParams(search);
  if (first === undefined || (first === "morning" && second === undefined)) return { page: "morning" };
  if (first === "rules" && second === undefined) return { page: "rules" };
  if (first === "people" && second === undefined) {
    const by = ORDERS.find((order) => order === asked.get("by")) ?? "name";
    return { page: "people", find: (asked.get("find") ?? "").slice(0, MOST_FIND), by };
  }
  const id = second === undefined || more.length > 0 ? undefined : decoded(second);
  if (first === "people" && id !== undefined) {
    const week = asked.get("week");
    return { page: "person", id, ...(week === null ? {} : { week }) };
  }
  return { page: "nowhere", path: pathname };
}

function query(pairs: readonly (readonly [name: string, value: string])[]): string {
  const kept = pairs.filter(([, value]) => value !== "");
  return kept.length === 0 ? "" : `?${new URLSearchParams(kept.map(([name, value]) => [name, value]))}`;
}

/** The shortest address that leads there. @example printAddress({ page: "people", find: "", by: "name" }) //=> "/people" */
export function printAddress(address: Address): string {
  switch (address.page) {
    case "morning":
      return "/";
    case "rules":
      return "/rules";
    case "people":
      return `/people${query([
        ["find", address.find],
        ["by", address.by === "name" ? "" : address.by],
      ])}`;
    case "person":
      return `/people/${encodeURIComponent(address.id)}${query([["week", address.week ?? ""]])}`;
    case "nowhere":
      return address.path;
  }
}
