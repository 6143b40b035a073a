// Readings and work as rows (id, rev): nothing is overwritten, and of two editors one is refused.

import { expect, test } from "vitest";
import type { BikeId } from "../../src/core/ids.ts";
import type { ReadingRecord } from "../../src/store/readings.ts";
import { Conflict } from "../../src/store/store.ts";
import { talk } from "../support/talk.ts";

async function withReading(use: (store: Awaited<ReturnType<typeof talk>>["open"]["store"], reading: ReadingRecord) => Promise<void>): Promise<void> {
  const t = await talk();
  const { data } = await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const { store } = t.open;
  const [reading] = await store.read((q) => q.readings.recent(data.bike as BikeId, 5));
  if (reading === undefined) throw new Error("no reading");
  await use(store, reading);
  await t.close();
}

test("an amendment is a new revision, and the first stays as it was logged", async () => {
  await withReading(async (store, reading) => {
    expect(await store.change((q) => q.readings.revise({ ...reading, rev: 2, typed: "14,201 mi", why: "slip" }))).toBe(true);
    const history = await store.read((q) => q.readings.history(reading.id));
    expect(history.map(({ rev, typed, why }) => [rev, typed, why])).toEqual([
      [1, "14,210 mi", null],
      [2, "14,201 mi", "slip"],
    ]);
    expect((await store.read((q) => q.readings.byId(reading.id)))?.rev).toBe(2);
  });
});

test("two editors of one revision: the second is refused, and what it wrote beside is taken back", async () => {
  await withReading(async (store, reading) => {
    const edit = (typed: string) =>
      store.change(async (q) => {
        await q.room.setMeta("note", typed);
        if (!(await q.readings.revise({ ...reading, rev: 2, typed }))) throw new Conflict("somebody else's came first");
      });
    await edit("14,201 mi");
    await expect(edit("14,120 mi")).rejects.toThrow(Conflict);
    expect(await store.read((q) => q.room.meta("note"))).toBe("14,201 mi");
  });
});

test("the same source and place in it cannot be logged twice, nor one revision written twice", async () => {
  await withReading(async (store, reading) => {
    await expect(store.change((q) => q.readings.log([reading]))).rejects.toThrow(/unique/i);
    const other = { ...reading, id: "another", message: "m-1", ordinal: 0 };
    await store.change((q) => q.readings.log([other]));
    await expect(store.change((q) => q.readings.log([{ ...other, id: "a third" }]))).rejects.toThrow(/unique/i);
  });
});

test("an event that failed may come again; one that acted does nothing more", async () => {
  await withReading(async (store, reading) => {
    const event = "e-1" as Parameters<typeof store.act>[0];
    const act = (fail: boolean) =>
      store.act(event, reading.at, async (q) => {
        await q.room.setMeta("acted", "yes");
        if (fail) throw new Conflict("crossed");
      });
    await expect(act(true)).rejects.toThrow(Conflict);
    expect(await store.read((q) => q.room.meta("acted"))).toBeNull();
    expect((await act(false)).first).toBe(true);
    expect((await act(false)).first).toBe(false);
  });
});
