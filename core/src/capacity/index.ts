/** What one person can do in one movement, from sets: a running estimate with its interval, and what to expect of a set. */
export {
  CAPACITY_CODES,
  type Capacity,
  type CapacityCode,
  capacity,
  type KnownCapacity,
  type Once,
  onceOf,
  type ZoneState,
} from "./capacity.ts";
export { capacityOf, type ExerciseCapacity, factsOf, type OnceShown, traineeOf } from "./capacity-of.ts";
export { type CarriedBy, type CarriedFrom, carriedFrom } from "./carried-from.ts";
export { lossAway } from "./detraining.ts";
export { type Forecast, forecast, forecastHold } from "./forecast.ts";
export { type SetFact, type Trainee, ZONE_TOP, ZONES, type Zone, zoneOf } from "./set-fact.ts";
export { settledBy } from "./settled-by.ts";
