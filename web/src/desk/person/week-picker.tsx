import type { Plan } from "@stave/core/model";
import { Link } from "../address/index.ts";
import { words } from "../words.ts";
import style from "./person.module.css";
import type { Week } from "./which-week.ts";

interface Props {
  readonly person: string;
  readonly plan: Plan;
  readonly shown: Week;
}

/** Phases and their weeks; dashed is a light week, and what is only forecast says so. */
export function WeekPicker({ person, plan, shown }: Props) {
  const firm = plan.phases.findIndex(({ key }) => key === plan.firmTo.phase);
  const { light, lightWeek, forecast, week: named, weeks } = words.person;
  return (
    <nav className={style["picker"]} aria-label={weeks}>
      {plan.phases.map((phase, at) => (
        <div key={phase.key}>
          <p className="soft small" id={`phase-${phase.key}`}>
            {phase.title}
            {at > firm && ` (${forecast})`}
          </p>
          <ul aria-labelledby={`phase-${phase.key}`}>
            {phase.weeks.map(({ week, light: isLight }) => {
              const id = `${phase.key}/${week}`;
              return (
                <li key={id}>
                  <Link
                    to={{ page: "person", id: person, week: id }}
                    className={isLight ? style["lightWeek"] : undefined}
                    aria-current={id === shown.id ? "true" : undefined}
                    aria-label={isLight ? lightWeek(week) : named(week)}
                  >
                    {week}
                  </Link>
                </li>
              );
            })}
          </ul>
        </div>
      ))}
      {plan.phases.some(({ weeks }) => weeks.some((week) => week.light)) && <p className="soft small">{light}</p>}
    </nav>
  );
}
