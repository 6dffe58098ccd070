import { expect, test } from "vitest";
import { STRESS_TAGS } from "../model/index.ts";
import { RAISED_BY } from "./raised-by.ts";

/** The last two columns of the table of tags in the guide to the catalogue, section 5.1. */
const PRINTED = `
sh_overhead | heavy, near failure | yes
sh_abd_er | heavy, near failure | no
sh_ir_elev | heavy, near failure | no
sh_ext | heavy, lowering, near failure | no
elbow | heavy, lowering, near failure | yes
wr_ext | heavy, hold | yes
grip | heavy, hold, near failure | yes
neck | heavy, near failure | yes
sp_axial | heavy | yes
sp_hold | heavy, lowering, hold, near failure | yes
sp_flex | heavy, near failure | no
sp_ext | heavy, hold, near failure | no
sp_rot | heavy | yes
hip_deep | never | no
hip_spread | heavy, lowering | no
knee_deep | heavy, lowering | no
knee_open | heavy, near failure | no
kneel | hold | no
ankle_df | never | no
impact | never | no
balance | near failure | no
supine | hold | no
prone | hold | no
floor | never | no
head_down | hold | no
head_quick | never | no
pressor | heavy, breath, hold, near failure | yes
abd_press | heavy, breath, near failure | yes
`
  .trim()
  .split("\n");

test("ours 5.1, printed: what raises each of the 28 tags, and which a light dose lowers", () => {
  const ours = STRESS_TAGS.map((tag) => {
    const { raisedBy, lightLowers } = RAISED_BY[tag];
    return `${tag} | ${raisedBy.join(", ") || "never"} | ${lightLowers ? "yes" : "no"}`;
  });
  expect(ours).toEqual(PRINTED);
});
