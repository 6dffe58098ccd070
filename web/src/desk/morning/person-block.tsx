import type { MorningPerson } from "@stave/core/api";
import type { Names } from "@stave/core/text";
import { Link } from "../address/index.ts";
import { type Case, DecisionRow, type Deeds, isOpen, type RowActs } from "../decision/index.ts";
import { Watched } from "../watched/index.ts";
import { words } from "../words.ts";
import style from "./morning.module.css";

interface Props {
  readonly block: MorningPerson;
  readonly cases: readonly Case[];
  readonly names: Names;
  readonly deeds: Deeds;
  readonly marks: ReadonlySet<string>;
  readonly acts: RowActs & { readonly takeAll: (cases: readonly Case[]) => void };
}

/** One person of the morning: when they come, and what is to be decided. */
export function PersonBlock({ block: { person, today, notes, figures }, cases, names, deeds, marks, acts }: Props) {
  const stops = cases.filter(({ item }) => item.stop && isOpen(deeds.get(item.proposal.proposal)));
  return (
    <section className={style["block"]} aria-labelledby={`person-${person.id}`}>
      <p className={today === undefined ? style["noHour"] : style["hour"]}>
        {today === undefined ? words.morning.noHour : words.clock(today.from)}
      </p>
      <div className={style["who"]}>
        <h2 id={`person-${person.id}`}>
          <Link to={{ page: "person", id: person.id }}>{person.name}</Link>
        </h2>
        {today !== undefined && <p className="soft small">{words.person.session(today.title)}</p>}
        {stops.length > 1 && (
          <button type="button" className="link" onClick={() => acts.takeAll(stops)}>
            {words.morning.takeStops(stops.length)}
          </button>
        )}
      </div>
      <div className={style["what"]}>
        {cases.length === 0 ? (
          <p className={`soft ${style["nothing"]}`}>{words.morning.nothing}</p>
        ) : (
          <ul className={style["items"]}>
            {cases.map((of) => {
              const proposal = of.item.proposal.proposal;
              return (
                <DecisionRow
                  key={proposal}
                  of={of}
                  names={names}
                  deed={deeds.get(proposal)}
                  marked={marks.has(proposal)}
                  acts={acts}
                />
              );
            })}
          </ul>
        )}
        <Watched notes={notes} figures={figures} names={names} />
      </div>
    </section>
  );
}
