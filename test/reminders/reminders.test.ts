// What is told, when, and never twice: over undo, put-off, silence and other bikes.

import { describe, expect, test } from "vitest";
import type { MemberId } from "../../src/core/ids.ts";
import type { Notice } from "../../src/store/notices.ts";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
const told = (answers: readonly Shown[]): unknown[] =>
  answers.flatMap((each) =>
    each.data.told.flatMap((bike: { items: { item: string; status: string }[] }) => bike.items.map((item) => `${item.item} ${item.status}`)),
  );

/** Heron, whose brake fluid is known to be from 10 December 2024: due on 10 December 2026. */
async function withFluid(use: (t: Talk) => Promise<void>): Promise<void> {
  const t = await talk("2026-11-05T10:00:00Z");
  try {
    const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    await t.one({ ...dm, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "10 December 2024" } });
    await use(t);
  } finally {
    await t.close();
  }
}

describe("once only", () => {
  test("a job recorded and undone returns to what was told already", async () => {
    await withFluid(async (t) => {
      expect(told(await t.send({ advance: "P14D" }))).toEqual(["brake-fluid.replace soon"]);
      const done = await t.one({ ...dm, run: "/work did:brake fluid at:14,300 mi" });
      await t.send({ advance: "P1D" });
      await t.one({ ...dm, press: button(done, "Undo") });
      expect(told(await t.send({ advance: "P14D" }))).toEqual([]);
      // Its next stage is told: overdue from the day after, since brake fluid has no window behind it.
      expect(told(await t.send({ advance: "P14D" }))).toEqual(["brake-fluid.replace overdue"]);
    });
  });

  test("what was done before it was to be told is not told", async () => {
    await withFluid(async (t) => {
      await t.send({ advance: "P5DT13H" });
      await t.one({ ...dm, say: "did the brake fluid at 14,300 mi" });
      expect(await t.send({ advance: "P30D" })).toEqual([]);
    });
  });

  test("asleep through several stages, only the present one is told", async () => {
    await withFluid(async (t) => {
      expect(told(await t.send({ advance: "P60D", asleep: true }))).toEqual(["brake-fluid.replace overdue"]);
    });
  });

  test("ticks that find nothing new send nothing, however often they come", async () => {
    await withFluid(async (t) => {
      await t.send({ advance: "P14D" });
      for (let n = 0; n < 30; n++) expect(await t.send({ advance: "PT1M" })).toEqual([]);
    });
  });
});

describe("as the member wishes", () => {
  test("put off is quiet until then, and told once more", async () => {
    await withFluid(async (t) => {
      const [first] = await t.send({ advance: "P14D" });
      await t.one({ ...dm, pick: button(first as Shown, "Put off"), values: ["two weeks"] });
      expect(told(await t.send({ advance: "P13D" }))).toEqual([]);
      // From 3 December it is told once more, a week before it falls due.
      expect(told(await t.send({ advance: "P4D" }))).toEqual(["brake-fluid.replace soon"]);
      expect(told(await t.send({ advance: "P9D" }))).toEqual(["brake-fluid.replace overdue"]);
    });
  });

  test("off says nothing; on again tells what stands then", async () => {
    await withFluid(async (t) => {
      await t.one({ ...dm, run: "/remind by:off" });
      expect(await t.send({ advance: "P20D" })).toEqual([]);
      await t.one({ ...dm, run: "/remind by:direct message" });
      expect(told(await t.send({ advance: "P8D" }))).toEqual(["brake-fluid.replace soon"]);
    });
  });

  test("what is done between rides is never a reminder of its own", async () => {
    await withFluid(async (t) => {
      await t.one({ ...dm, say: "lubed the chain at 14,210 mi" });
      await t.one({ ...dm, say: "14,900 mi" });
      const due = await t.one({ ...dm, run: "/due" });
      const chain = due.data.bikes[0].dues.find((each: { item: string }) => each.item === "chain.lubricate");
      expect([chain.habit, chain.status]).toEqual([true, "overdue"]);
      expect(told(await t.send({ advance: "P8D" })).join()).not.toContain("chain.lubricate");
    });
  });

  test("a sold bike is not spoken of", async () => {
    await withFluid(async (t) => {
      await t.one({ ...dm, run: "/bike change bike:Heron state:sold" });
      expect(await t.send({ advance: "P60D" })).toEqual([]);
    });
  });

  test("two bikes of one member come in one message, each with its own buttons", async () => {
    await withFluid(async (t) => {
      const added = await t.one({ ...dm, run: "/bike add name:Otter kind:belt-drive cruiser odometer:20,450 mi" });
      await t.one({ ...dm, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "12 December 2024" } });
      const arrived = await t.send({ advance: "P14D" });
      expect(arrived).toHaveLength(1);
      expect(arrived[0]?.actions.map((action) => action.label)).toEqual([
        "Done on Heron",
        "Put off on Heron",
        "What is due on Heron",
        "Done on Otter",
        "Put off on Otter",
        "What is due on Otter",
        "Why did I get this",
      ]);
      const finished = await t.one({ ...dm, fill: button(arrived[0] as Shown, "Done on Otter"), fields: { at: "20,500 mi", on: "" } });
      expect(finished.text).toMatch(/^Otter: Brake fluid, done today at 20,500 mi/);
    });
  });
});

describe("the sweep", () => {
  test("reads only the bikes whose moment came", async () => {
    const t = await talk();
    for (let n = 0; n < 40; n++) await t.one({ as: `m${n}`, in: "dm", run: `/bike add name:Heron kind:chain-drive twin odometer:${1000 + n} mi` });
    // All are looked at once, and each says when to be looked at again.
    await t.send({ advance: "PT1M" });
    await t.one({ as: "m7", in: "dm", say: "1,020 mi" });
    await t.send({ advance: "PT1M" });
    const swept = t.statements().filter((sql) => /^select .* from "readings"/u.test(sql));
    expect(swept.length).toBeGreaterThan(0);
    const looked = await t.open.store.change((q) => q.bikes.toLookAt(t.open.clock.now(), 1000));
    expect(looked).toEqual([]);
    await t.one({ as: "m7", in: "dm", say: "1,040 mi" });
    const [only, ...others] = await t.open.store.read((q) => q.bikes.toLookAt(t.open.clock.now(), 1000));
    expect([only?.bike.owner, others]).toEqual(["m7", []]);
    await t.close();
  });

  test("thousands of things to tell, found at once, are each noted once", async () => {
    const t = await talk();
    const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:1,000 mi" });
    expect(added.error).toBeUndefined();
    const [bike] = await t.open.store.read((q) => q.bikes.ofOwner("Ines" as MemberId));
    if (bike === undefined) throw new Error("no bike");
    const notice = (n: number): Notice => ({
      ...{ id: `n${n}`, key: `k${n}`, member: bike.owner, bike: bike.id, kind: "item due", item: null, notBefore: t.open.clock.now(), state: "waiting" },
      ...{ delivery: null, why: null, at: t.open.clock.now() },
    });
    // A hundred bikes of a slice with forty things each.
    const all = Array.from({ length: 4000 }, (_, n) => notice(n));
    expect((await t.open.store.change((q) => q.notices.addNew(all, t.open.clock.now()))).length).toBe(4000);
    expect(
      await t.open.store.change((q) =>
        q.notices.addNew(
          all.map((each) => ({ ...each, id: `${each.id}again` })),
          t.open.clock.now(),
        ),
      ),
    ).toEqual([]);
    await t.close();
  });

  test("finding nothing to look at takes no more statements with forty bikes than with one", async () => {
    const cost = async (bikes: number): Promise<number> => {
      const t = await talk();
      for (let n = 0; n < bikes; n++) await t.one({ as: `m${n}`, in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:1,000 mi" });
      await t.send({ advance: "PT1M" });
      await t.send({ advance: "PT1M" });
      const n = t.statements().length;
      await t.close();
      return n;
    };
    expect(await cost(40)).toBe(await cost(1));
  });
});
