import { canonicalJson } from "@stave/core/model";
import { hashOf, Refusal } from "../safeguard/index.ts";
import type { Handlers, Serving } from "./handlers.ts";

export function bundle({ practice, clock }: Serving): Pick<Handlers, "bundle"> {
  return {
    async bundle({ caller, request, reply }) {
      const found = await practice(caller.practice).bundle(caller.person, clock());
      if (found === undefined) throw new Refusal(404, "person/unknown", "There is nobody of that id");
      const etag = `"${hashOf(canonicalJson(found))}"`;
      reply.header("etag", etag).header("cache-control", "private, no-cache");
      return matches(request.headers["if-none-match"], etag) ? reply.code(304).send() : found;
    },
  };
}

/** RFC 9110 13.1.2: a list of tags, compared weakly, or a star. */
function matches(asked: string | undefined, etag: string): boolean {
  return (asked ?? "").split(",").some((one) => one.trim() === "*" || one.trim().replace(/^W\//, "") === etag);
}
