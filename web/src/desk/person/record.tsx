import { type Names, sayReason } from "@stave/core/text";
import { Strip } from "../strip/index.ts";
import { words } from "../words.ts";
import style from "./person.module.css";
import type { SlotRecord } from "./slot-card.tsx";

interface Props {
  readonly records: readonly SlotRecord[];
  readonly names: Names;
}

/** What can be lifted, with how sure that is; or why nobody can say. */
export function sayCapacity(
  { capacity, missing, carried }: Pick<SlotRecord, "capacity" | "missing" | "carried">,
  names: Names,
): string {
  if (capacity === undefined) {
    const why = missing === undefined ? words.person.noCapacity : sayReason(missing, names);
    return carried === undefined ? why : `${why} ${sayReason(carried, names)}`;
  }
  const { value, low, high, sessions } = capacity;
  return words.person.capacity(value, low, high, sessions);
}

/** What was done, movement by movement, and what can be lifted now. */
export function RecordOf({ records, names }: Props) {
  const done = records.filter(({ past }) => past.length > 0);
  return (
    <section className={style["record"]}>
      <h2>{words.person.record}</h2>
      {done.length === 0 && <p className="soft">{words.person.noRecord}</p>}
      {done.map(({ slot, past, ...record }) => (
        <div key={slot} className={style["movement"]}>
          <div>
            <h3>{names.slot(slot)}</h3>
            <p className="soft small">
              {words.person.from(words.bareDay(past[0]!.day), words.bareDay(past.at(-1)!.day))}
            </p>
          </div>
          <Strip past={past} next={[]} width={760} height={48} className={style["longStrip"]} />
          <p className="soft small">{sayCapacity(record, names)}</p>
        </div>
      ))}
    </section>
  );
}
