export * from "./norm.ts";
export { ASSESS_CODES, type AssessCode, differing, type Scored, scoreOf, type TestResult } from "./result.ts";
export { RESULT_PROBLEMS, type ResultsFile, readResults } from "./results-read.ts";
export * from "./return-list.ts";
export * from "./rungs.ts";
export * from "./series.ts";
export * from "./sides.ts";
export * from "./tests.ts";
