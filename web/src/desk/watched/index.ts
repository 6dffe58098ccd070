/** What a person's record tells, as the morning list and the page of the person show it. */
export { Watched } from "./watched.tsx";
