import { PIECE_PROBLEMS } from "./file-pieces.ts";
import { LOAD_PROBLEMS } from "./load-text.ts";
import { HEALTH_PROBLEMS } from "./person-health.ts";
import { TRAINING_PROBLEMS } from "./person-training.ts";
import { PLACE_PROBLEMS } from "./place-read.ts";
import { PERSON_PROBLEMS } from "./roster-read.ts";
import { WINDOW_PROBLEMS } from "./window-text.ts";

/** What can be wrong with a text before anybody asks what it is about. */
const YAML_PROBLEMS = [
  "yaml/too-long",
  "yaml/not-text",
  "yaml/empty",
  "yaml/only-comments",
  "yaml/too-deep",
  "yaml/directive",
  "yaml/second-document",
  "yaml/alias",
  "yaml/anchor",
  "yaml/tag",
  "yaml/merge",
  "yaml/key",
  "yaml/duplicate-key",
  "yaml/number",
  "yaml/comma",
  "yaml/tab",
  "yaml/indent",
  "yaml/unclosed",
  "yaml/quotes-needed",
  "yaml/second-colon",
  "yaml/colon-missing",
  "yaml/escape",
  "yaml/syntax",
  "yaml/more-problems",
] as const;

/** What can be wrong with any value that a schema looks at. */
const VALUE_PROBLEMS = [
  "key/unknown",
  "key/missing",
  "value/type",
  "value/choice",
  "value/form",
  "value/step",
  "value/small",
  "value/big",
  "value/short",
  "value/long",
  "value/few",
  "value/many",
] as const;

/** Every problem that reading YAML, places and people can tell; each names a sentence. */
export const READ_PROBLEMS = [
  ...YAML_PROBLEMS,
  ...VALUE_PROBLEMS,
  ...PIECE_PROBLEMS,
  ...LOAD_PROBLEMS,
  ...WINDOW_PROBLEMS,
  ...PLACE_PROBLEMS,
  ...HEALTH_PROBLEMS,
  ...PERSON_PROBLEMS,
  ...TRAINING_PROBLEMS,
] as const;
export type ReadProblemCode = (typeof READ_PROBLEMS)[number];
