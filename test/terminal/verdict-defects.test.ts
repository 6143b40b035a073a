// What must not be ridden on by a measured value stands while its figures do, and no longer.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return {
    t,
    run: (line: string) => t.one({ ...dm, run: line }),
    say: (line: string, id?: string) => t.one({ ...dm, say: line, ...(id === undefined ? {} : { id }) }),
    due: async () => (await t.one({ ...dm, run: "/due" })).text ?? "",
  };
}

test("a limit taken back takes its do-not-ride with it; entered again it stands again", async () => {
  const { t, run, say, due } = await heron();
  await say("front disc 4.4 mm");
  const entered = await run("/spec what:front disc limit value:4.5 mm");
  expect(entered.data.defects).toMatchObject([{ kind: "worn disc", grade: "do not ride" }]);
  expect(await due()).toContain("Do not ride: “front disc thickness 4.4 mm”");
  const back = await t.one({ ...dm, press: button(entered, "Undo") });
  expect(back.text).toContain("“front disc thickness 4.4 mm” stands no longer");
  expect(await due()).not.toContain("Do not ride");
  expect((await run("/spec what:front disc limit value:4.5 mm")).data.defects).toMatchObject([{ kind: "worn disc" }]);
  expect(await due()).toContain("Do not ride: “front disc thickness 4.4 mm”");
  await t.close();
});

test("a limit put right takes the do-not-ride of the slip with it", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:rear pad limit value:2.5 mm");
  await say("rear pads 2.2 mm");
  expect(await due()).toContain("Do not ride: “rear pad thickness 2.2 mm”");
  expect((await run("/spec what:rear pad limit value:1.5 mm")).text).toContain("“rear pad thickness 2.2 mm” stands no longer");
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("what else was read keeps it standing: the other pads, and the day before", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:front pad limit value:2.5 mm");
  const first = await say("front left pads 2 mm");
  expect(first.data.defects).toMatchObject([{ kind: "worn front pads" }]);
  await say("front right pads 1.8 mm");
  // The first message is taken back with what it noted; the second still says the same of these pads.
  await t.one({ ...dm, press: button(first, "Undo") });
  expect(await due()).toContain("Do not ride: “front right pad thickness 1.8 mm”");
  await run("/spec what:front pad limit value:1.9 mm");
  expect(await due()).toContain("Do not ride");
  await run("/spec what:front pad limit value:1.5 mm");
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("an edited message keeps what must not be ridden on, and drops it when the figure was a slip", async () => {
  const { t, say, due } = await heron();
  const said = await say("tread 0.5 mm rear", "msg-1");
  expect(said.data.defects).toMatchObject([{ kind: "worn rear tyre" }]);
  await t.one({ ...dm, edit: "msg-1", say: "tread 0.4 mm rear" });
  expect(await due()).toContain("Do not ride: “rear tread 0.4 mm”");
  await t.one({ ...dm, edit: "msg-1", say: "tread 5.4 mm rear" });
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("one reading taken back on its own takes what it noted with it", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:front disc limit value:4.5 mm");
  await say("tread 5 mm rear, front disc 4.4 mm");
  expect(await due()).toContain("Do not ride: “front disc thickness 4.4 mm”");
  const listed = await run("/reading");
  const undone = await t.one({ ...dm, press: button(listed, "Undo front disc thickness 4.4 mm of Heron") });
  expect(undone.text).toContain("“front disc thickness 4.4 mm” stands no longer");
  expect(undone.data).toMatchObject({ lapsed: [{ kind: "worn disc" }], noted: [] });
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("what was closed by its rider stays closed when something else is taken back", async () => {
  const { t, say, due } = await heron();
  const worn = await say("tread 0.5 mm rear");
  const nothing = worn.actions.find(({ label }) => label.startsWith("It was nothing"))?.id ?? "";
  await t.one({ ...dm, fill: nothing, fields: { why: "read on a bar" } });
  expect(await due()).not.toContain("Do not ride: “");
  const other = await say("front pads 5 mm");
  await t.one({ ...dm, press: button(other, "Undo") });
  expect(await due()).not.toContain("Do not ride: “");
  await t.close();
});
