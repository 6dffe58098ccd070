/** The morning list. */
export { MorningPage } from "./morning-page.tsx";
