import { CATALOGUE } from "@stave/core/exercises";
import type { PlanSlot } from "@stave/core/model";
import type { Names } from "@stave/core/text";
import { useId, useMemo } from "react";
import { words } from "../words.ts";

interface Named {
  readonly id: string;
  readonly name: string;
}

interface Props {
  readonly slot: PlanSlot;
  readonly names: Names;
  /** The coach's own exercises. */
  readonly own: readonly Named[];
  readonly value: string;
  readonly onValue: (exercise: string) => void;
}

/** Which form stands in the slot: those offered for it first, then every other of the catalogue. */
export function FormField({ slot, names, own, value, onValue }: Props) {
  const id = useId();
  const others = useMemo(() => {
    const offered = new Set([slot.exercise, ...slot.offer]);
    return [...own, ...CATALOGUE.exercises.values()]
      .filter((exercise) => !offered.has(exercise.id))
      .sort((a, b) => a.name.localeCompare(b.name));
  }, [slot, own]);
  return (
    <div className="field">
      <label htmlFor={id}>{words.slot.exercise}</label>
      <select id={id} value={value} onChange={(event) => onValue(event.target.value)}>
        <option value={slot.exercise}>{words.slot.exerciseKeep(names.exercise(slot.exercise))}</option>
        {slot.offer.length > 0 && (
          <optgroup label={words.slot.offered}>
            {slot.offer.map((exercise) => (
              <option key={exercise} value={exercise}>
                {names.exercise(exercise)}
              </option>
            ))}
          </optgroup>
        )}
        <optgroup label={words.slot.anyOther}>
          {others.map((exercise) => (
            <option key={exercise.id} value={exercise.id}>
              {exercise.name}
            </option>
          ))}
        </optgroup>
      </select>
    </div>
  );
}
