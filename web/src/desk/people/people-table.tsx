import { go, Link, ORDERS, type Order } from "../address/index.ts";
import { ROW } from "../keys/index.ts";
import { words } from "../words.ts";
import type { Line } from "./find.ts";
import style from "./people.module.css";

interface Props {
  readonly people: readonly Line[];
  readonly by: Order;
  readonly find: string;
}

const DIRECTION: Readonly<Record<Order, "ascending" | "descending">> = {
  name: "ascending",
  programme: "ascending",
  last: "ascending",
  next: "ascending",
  waiting: "descending",
};

/** The people found, a line each; a column's name puts them in its order. */
export function PeopleTable({ people, by, find }: Props) {
  const { columns, noNext, noRecord, next } = words.people;
  return (
    <table className={style["people"]}>
      <thead>
        <tr>
          {ORDERS.map((order) => (
            <th key={order} scope="col" aria-sort={order === by ? DIRECTION[order] : undefined}>
              <button
                type="button"
                className={order === by ? style["by"] : undefined}
                onClick={() => go({ page: "people", find, by: order }, "replace")}
              >
                {columns[order]}
              </button>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {people.map((line) => (
          <tr key={line.id} {...{ [ROW]: line.id }}>
            <th scope="row">
              <Link to={{ page: "person", id: line.id }} data-first>
                {line.name}
              </Link>
            </th>
            <td data-label={columns.programme}>{line.programme}</td>
            <td data-label={columns.last} className={line.last === undefined ? "soft" : undefined}>
              {line.last === undefined ? noRecord : words.shortDay(line.last)}
            </td>
            <td data-label={columns.next} className={line.next === undefined ? "soft" : undefined}>
              {line.next === undefined
                ? noNext
                : next(words.shortDay(line.next.day), words.clock(line.next.from), line.next.title)}
            </td>
            <td data-label={columns.waiting} className={line.waiting === 0 ? `soft ${style["count"]}` : style["count"]}>
              {line.waiting}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
