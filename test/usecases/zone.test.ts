// Which day it is for a member who set no zone: the group's where they speak in one, and in a direct message that of their bike's home.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

test("in a direct message a member without a zone is on their bike's day, in its group's units; by a zone of their own, on that", async () => {
  // 23:30 on 12 November in London is noon of the 13th in Auckland (IANA tz database: +13 in summer).
  const t = await talk("2027-11-12T23:30:00Z");
  await t.one({ as: "Mara", admin: true, in: "g1", run: "/group zone:Pacific/Auckland pressure:bar" });
  await t.one({ as: "Mara", in: "g1", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 km" });
  const dm = { as: "Mara", in: "dm" };
  await t.one({ ...dm, run: "/work did:brake fluid at:14,210 km" });
  const first = async () => (await t.one({ ...dm, run: "/records" })).text;
  expect(await first()).toContain("13 November");
  expect((await t.one({ ...dm, run: "/remind" })).text).toContain("Time zone: Pacific/Auckland (the group's");
  expect((await t.one({ ...dm, say: "front 2,4" })).text).not.toContain("Which unit");
  await t.one({ ...dm, run: "/remind zone:Europe/London" });
  await t.one({ ...dm, run: "/work did:coolant at:14,210 km" });
  expect(await first()).toContain("12 November");
  await t.close();
});

test("a member without a bike at home anywhere is told by UTC", async () => {
  const t = await talk("2027-11-12T23:30:00Z");
  await t.one({ as: "Odo", in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 km" });
  expect((await t.one({ as: "Odo", in: "dm", run: "/remind" })).text).toContain("Time zone: UTC");
  await t.close();
});
