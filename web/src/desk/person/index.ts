/** One person: plan with reasons, record, what waits and what was decided. */
export { PersonPage } from "./person-page.tsx";
