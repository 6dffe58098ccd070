/** The coach's standing rules. */
export { RulesPage } from "./rules-page.tsx";
