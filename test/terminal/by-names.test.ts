// What a member calls a bike beside its nickname: asked once, remembered, seen and forgotten.

import { afterEach, beforeEach, expect, test } from "vitest";
import type { Shown, Talk } from "../support/talk.ts";
import { talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk();
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ as: "Ines", run: "/bike add name:Bramble kind:dual-purpose single odometer:8,640 mi" });
});
afterEach(() => t.close());

const press = (shown: Shown, label: string): string => shown.actions.find((each) => each.label === label)?.id ?? `no ${label}`;
type Row = { readonly nickname: string; readonly kind: string; readonly value: number };
const loggedOf = (shown: Shown): readonly (string | number)[] => shown.data.logged.flatMap(({ nickname, kind, value }: Row) => [nickname, kind, value]);

test.each([
  ["the big one", "14,820 mi on the big one", "The big one is at 14,900 mi", "big one"],
  ["the old lady", "33 front 36 rear on the old lady, 14,820 mi", "my old lady: 14,900 mi", "old lady"],
  ["my scrambler", "14,820 mi on my scrambler", "14,900 mi on the scrambler", "scrambler"],
  ["a name of their own", "14,820 mi on the Duchess", "Duchess 14,900 mi", "Duchess"],
  ["a name with no article", "14,820 mi on Blub", "14,900 mi on Blub", "Blub"],
])("%s is asked about once", async (_called, first, second, name) => {
  const asked = await t.one({ as: "Ines", in: "dm", say: first });
  expect([asked.react, asked.data.asked[0].need]).toEqual(["asked", "bike"]);
  const answered = await t.one({ as: "Ines", in: "dm", press: press(asked, "Heron") });
  expect(answered.text).toContain(`From now on I take “${name}” for Heron.`);
  expect(answered.data.learnt).toEqual({ name, nickname: "Heron" });
  const again = await t.one({ as: "Ines", in: "dm", say: second });
  expect([again.react, loggedOf(again)]).toEqual(["logged", ["Heron", "odometer", 14_900]]);
});

test("a plain reply teaches as a press does, and in a channel one line says so", async () => {
  await t.one({ as: "Ines", say: "14,820 mi on the big one" });
  const answered = await t.one({ as: "Ines", say: "Heron", mention: true });
  expect([answered.react, answered.visibility]).toEqual(["logged", "shared"]);
  expect(answered.text).toBe("From now on I take “big one” for Heron. If that is wrong, /bike change bike:Heron not-called:big one takes it back.");
  expect((await t.one({ as: "Ines", say: "14,860 mi on the big one" })).react).toBe("logged");
});

test("what a bike is called is listed with it, serves in commands, and is forgotten as said", async () => {
  await t.one({ as: "Ines", run: "/bike change bike:Heron called:the big one" });
  await t.one({ as: "Ines", run: "/bike change bike:Heron called:old lady" });
  expect((await t.one({ as: "Ines", run: "/bike list" })).text).toContain("Also called: “big one” and “old lady”.");
  expect((await t.one({ as: "Ines", run: "/due bike:big one" })).text).toContain("Heron");
  const forgotten = await t.one({ as: "Ines", run: "/bike change bike:Heron not-called:the big one" });
  expect(forgotten.data.byNames).toEqual(["old lady"]);
  const refused = await t.one({ as: "Ines", run: "/bike change bike:Heron not-called:the big one" });
  expect(refused.text).toBe("Heron is not called “big one”. It is also called “old lady”.");
  expect((await t.one({ as: "Ines", in: "dm", say: "14,820 mi on the big one" })).react).toBe("asked");
});

test("a name said of another bike moves there; a nickname stays whose it is", async () => {
  await t.one({ as: "Ines", run: "/bike change bike:Heron called:big one" });
  await t.one({ as: "Ines", run: "/bike change bike:Bramble called:big one" });
  expect(loggedOf(await t.one({ as: "Ines", in: "dm", say: "8,700 mi on the big one" }))).toEqual(["Bramble", "odometer", 8700]);
  expect((await t.one({ as: "Ines", run: "/bike change bike:Heron called:Bramble" })).text).toContain("Bramble");
  expect((await t.one({ as: "Ines", run: "/bike change bike:Heron called:rear" })).data.refused).toMatchObject({ why: "nickname unusable" });
  expect(loggedOf(await t.one({ as: "Ines", in: "dm", say: "8,720 mi on Bramble" }))).toEqual(["Bramble", "odometer", 8720]);
});

test("what means another bike each time, or fits two, is asked each time", async () => {
  for (const say of ["14,820 mi on the other one", "14,840 mi on the other bike"]) {
    const asked = await t.one({ as: "Ines", in: "dm", say });
    expect(asked.react).toBe("asked");
    expect((await t.one({ as: "Ines", in: "dm", press: press(asked, "Heron") })).data.learnt).toBeUndefined();
  }
});

test("of a bike that was sold a name means nothing any more, and can be learned anew", async () => {
  await t.one({ as: "Ines", run: "/bike change bike:Heron called:big one" });
  await t.one({ as: "Ines", run: "/bike add name:Otter kind:belt-drive cruiser odometer:20,450 mi" });
  await t.one({ as: "Ines", run: "/bike change bike:Heron state:sold" });
  const asked = await t.one({ as: "Ines", in: "dm", say: "20,500 mi on the big one" });
  expect(asked.react).toBe("asked");
  expect((await t.one({ as: "Ines", in: "dm", press: press(asked, "Otter") })).data.learnt).toEqual({ name: "big one", nickname: "Otter" });
});

test("the names are a member's own", async () => {
  await t.one({ as: "Ines", run: "/bike change bike:Heron called:big one" });
  await t.one({ as: "Marek", run: "/bike add name:Otter kind:belt-drive cruiser odometer:20,450 mi" });
  await t.one({ as: "Marek", run: "/bike add name:Finch kind:small commuter odometer:2,000 mi" });
  expect((await t.one({ as: "Marek", in: "dm", say: "20,500 mi on the big one" })).react).toBe("asked");
});

test("talk that only holds such words says nothing of a bike", async () => {
  await t.one({ as: "Ines", run: "/bike change bike:Heron called:big one" });
  for (const say of ["that was a big one in 2019", "big one for Tess next week, she turns 40"]) expect(await t.send({ as: "Ines", say })).toEqual([]);
});
