import { describe, expect, test } from "vitest";
import type { OpenPlace } from "./contract.ts";
import type { Store } from "./store.ts";

const P = "ropewalk";

/** What every store must do with links, devices and sessions. Stores that it opens are closed by the caller. */
export function tokenContract(name: string, fresh: () => Promise<Store>, newPlace: () => Promise<OpenPlace>): void {
  describe(`links on ${name}`, () => {
    const link = { token: "token-hash", person: "ana", expires: 2000 };
    const ANA = { practice: P, person: "ana" };

    test("a link opens once, for the device that came first, even if its answer was lost", async () => {
      const store = await fresh();
      await store.putLink(P, link);
      expect(await store.deviceByToken("device-a")).toBeUndefined();
      expect(await store.takeLink("token-hash", "device-a", 1999)).toEqual(ANA);
      expect(await store.takeLink("token-hash", "device-b", 1999)).toBeUndefined();
      expect(await store.takeLink("token-hash", "device-a", 3000)).toEqual(ANA);
      expect(await store.deviceByToken("device-a")).toEqual(ANA);
      expect(await store.deviceByToken("device-b")).toBeUndefined();
    });

    test("an expired or unknown one opens nothing", async () => {
      const store = await fresh();
      await store.putLink(P, link);
      expect(await store.takeLink("token-hash", "device-a", 2000)).toBeUndefined();
      expect(await store.takeLink("other", "device-a", 0)).toBeUndefined();
      expect(await store.deviceByToken("device-a")).toBeUndefined();
    });

    test("a device token comes in by one link only", async () => {
      const store = await fresh();
      await store.putLink(P, link);
      await store.putLink(P, { ...link, token: "second", person: "ben" });
      expect(await store.takeLink("token-hash", "device-a", 1)).toEqual(ANA);
      expect(await store.takeLink("second", "device-a", 1)).toBeUndefined();
      expect(await store.takeLink("second", "device-b", 1)).toEqual({ practice: P, person: "ben" });
      expect(await store.deviceByToken("device-a")).toEqual(ANA);
    });

    test("of twelve devices at once over two connections exactly one gets in", async () => {
      const place = await newPlace();
      const stores = [await place(), await place()];
      await stores[0]!.putLink(P, link);
      const devices = Array.from({ length: 12 }, (_, i) => `device-${i}`);
      const got = await Promise.all(devices.map((device, i) => stores[i % 2]!.takeLink("token-hash", device, 1)));
      expect(got.filter((holder) => holder !== undefined)).toEqual([ANA]);
      const known = await Promise.all(devices.map((device) => stores[0]!.deviceByToken(device)));
      expect(known).toEqual(got);
    });

    test("an instant is kept to the millisecond, to the end of time; a part of one is refused", async () => {
      const store = await fresh();
      const end = 8_640_000_000_000_000;
      await store.putLink(P, { ...link, expires: end });
      await expect(store.putLink(P, { ...link, token: "t2", expires: 0.5 })).rejects.toThrow(RangeError);
      expect(await store.takeLink("token-hash", "device-a", end)).toBeUndefined();
      expect(await store.takeLink("token-hash", "device-a", end - 1)).toEqual(ANA);
    });

    test("a token tells its practice; a device comes into one practice only", async () => {
      const store = await fresh();
      await store.putLink(P, link);
      await store.putLink("other", { ...link, token: "others" });
      expect(await store.takeLink("others", "device-a", 1)).toEqual({ practice: "other", person: "ana" });
      expect(await store.takeLink("token-hash", "device-a", 1)).toBeUndefined();
      expect(await store.takeLink("token-hash", "device-b", 1)).toEqual(ANA);
      expect(await store.deviceByToken("device-a")).toEqual({ practice: "other", person: "ana" });
      expect(await store.deviceByToken("token-hash")).toBeUndefined();
    });

    test("a token that two practices hold opens neither", async () => {
      const store = await fresh();
      await store.putLink(P, link);
      await store.putLink("other", link);
      expect(await store.takeLink("token-hash", "device-a", 1)).toBeUndefined();
    });
  });

  describe(`sessions on ${name}`, () => {
    test("a session opens its practice until it is over", async () => {
      const store = await fresh();
      await store.putSession(P, { token: "s1", expires: 2000 }, 1000);
      await store.putSession("other", { token: "s2", expires: 3000 }, 1000);
      expect(await store.sessionByToken("s1", 1999)).toBe(P);
      expect(await store.sessionByToken("s1", 2000)).toBeUndefined();
      expect(await store.sessionByToken("s2", 1999)).toBe("other");
      expect(await store.sessionByToken("s3", 1999)).toBeUndefined();
    });

    test("those that are over go when another begins, in that practice alone", async () => {
      const store = await fresh();
      await store.putSession(P, { token: "s1", expires: 2000 }, 1000);
      await store.putSession("other", { token: "s2", expires: 2000 }, 1000);
      await store.putSession(P, { token: "s3", expires: 9000 }, 2000);
      expect(await store.sessionByToken("s1", 1500)).toBeUndefined();
      expect(await store.sessionByToken("s2", 1500)).toBe("other");
      expect(await store.sessionByToken("s3", 1500)).toBe(P);
    });
  });
}
