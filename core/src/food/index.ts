/** General guidance on food within a coach's scope: floors, and who is sent to a dietitian or doctor instead. */
export * from "./food-guidance.ts";
