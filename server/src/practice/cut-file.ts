import { Document, isSeq, parseDocument } from "yaml";

/**
 * Cuts a roster or a file of places, which was read and found good, into one text for each entry; comments inside it stay.
 *
 * @returns texts by the entry's id, each a file by itself
 */
export function cutFile(text: string, list: "people" | "places"): ReadonlyMap<string, string> {
  const whole = parseDocument(text);
  const entries = whole.get(list);
  if (!isSeq(entries)) return new Map();
  return new Map(
    entries.items.map((entry, i) => {
      const one = new Document({ stave: 1, [list]: [] });
      one.addIn([list], entry);
      return [String(whole.getIn([list, i, "id"])), one.toString({ lineWidth: 0 })];
    }),
  );
}
