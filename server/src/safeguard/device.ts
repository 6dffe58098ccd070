import type { Holder, Store } from "../store/index.ts";
import { hashOf } from "./token.ts";

/** @returns whose device it is that sent an Authorization header */
export async function deviceIn(store: Store, authorization: string | undefined): Promise<Holder | undefined> {
  const token = /^Bearer ([\w-]{43})$/i.exec(authorization ?? "")?.[1];
  return token === undefined ? undefined : await store.deviceByToken(hashOf(token));
}
