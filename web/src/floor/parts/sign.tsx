import { type Drawing, STYLED, svgOf } from "@stave/core/sign";

/** A drawing of core on the page, in the colours of the style sheet. Core escapes every word in it. */
export function Sign({
  drawing,
  label,
  class: name,
}: {
  drawing: Drawing;
  label?: string;
  class?: string | undefined;
}) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the drawing is made by core, which escapes its words
  return <span class={name} dangerouslySetInnerHTML={{ __html: svgOf(drawing, STYLED, label) }} />;
}
