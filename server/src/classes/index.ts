export { ClassBook, type Entry } from "./class-book.ts";
export { classifier, type PeopleClass } from "./class-of.ts";
export type { FitWorld, PlanSummary } from "./fit-job.ts";
export { type Fitters, fitters } from "./fitters.ts";
export { LineFile } from "./line-file.ts";
