/** Questions over the page. */
export { Dialog } from "./dialog.tsx";
