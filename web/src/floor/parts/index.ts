/** Controls and marks that the pages are made of. */
export { Bars } from "./bars.tsx";
export { Button } from "./button.tsx";
export { LoadPicker } from "./load-picker.tsx";
export { Note } from "./note.tsx";
export { NumberField } from "./number-field.tsx";
export { Reserve } from "./reserve.tsx";
export { Sign } from "./sign.tsx";
export { Running } from "./timers.tsx";
