/** One coach's files on one machine: a practice of its own until there are several. */
export const LOCAL_PRACTICE = "local";
