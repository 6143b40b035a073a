// Several bikes on one trip: who asks, who presses, what each sees, and that nothing else of a bike is told.

import { describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const add = (t: Talk, as: string, name: string, kind: string, odometer: string) =>
  t.one({ as, run: `/bike add name:${name} kind:${kind} odometer:${odometer}` });
const press = (t: Talk, as: string, shown: Shown, label: string, at = "g1") => t.one({ as, in: at, press: button(shown, label) });

async function asked(): Promise<{ readonly t: Talk; readonly planned: Shown; readonly post: Shown }> {
  const t = await talk("2026-11-26T09:00:00Z");
  await add(t, "Ines", "Heron", "chain-drive twin", "14,210 mi");
  await add(t, "Odo", "Bramble", "belt-drive cruiser", "41,950 km");
  await add(t, "Mara", "Wren", "dual-purpose single", "8,000 mi");
  await add(t, "Mara", "Otter", "small commuter", "3,000 mi");
  const planned = await t.one({ as: "Ines", run: "/trip plan:500 mi from 12 June to 14 June" });
  return { t, planned, post: await press(t, "Ines", planned, "Ask who rides along") };
}

describe("a ride together", () => {
  test("is posted by its rider, names whoever presses, each in its own unit, and who carries what", async () => {
    const { t, post } = await asked();
    expect([post.visibility, post.text?.split("\n").slice(0, 3)]).toEqual([
      "shared",
      ["Riding together, 12 June to 14 June", "- Heron (Ines): 500 mi", "Nobody else is on the list yet."],
    ]);
    const joined = await press(t, "Odo", post, "I ride along");
    expect(joined.visibility).toBe("private");
    expect(joined.text).toContain("Bramble is on the list.");
    // 500 miles are 804.672 kilometres.
    expect(joined.text).toContain("Bramble: 805 km, 12 June to 14 June, solo.");
    const who = await press(t, "Mara", post, "Who rides along");
    expect(who.text).toContain("- Heron (Ines): 500 mi\n- Bramble (Odo): 805 km\n");
    expect(who.text).toMatch(/chain link and splitter \(Heron\)/u);
    // What falls due, defects and odometers are nobody else's.
    expect(who.text).not.toMatch(/14,210|41,950|due|defect/u);
    await t.close();
  });

  test("asks which bike of several; pressed again it shows the same trip, and called off it is off the list", async () => {
    const { t, post } = await asked();
    const which = await press(t, "Mara", post, "I ride along");
    expect(which.actions.map(({ label }) => label)).toEqual(["With Wren", "With Otter"]);
    const joined = await press(t, "Mara", which, "With Wren");
    const again = await press(t, "Mara", post, "I ride along");
    expect(again.data.trip.trip).toBe(joined.data.trip.trip);
    expect((await press(t, "Ines", post, "Who rides along")).data.along).toHaveLength(2);
    // Not by another.
    expect((await press(t, "Odo", joined, "Call it off")).data.refused.why).toBe("gone");
    await press(t, "Mara", joined, "Call it off");
    expect((await press(t, "Ines", post, "Who rides along")).data.along).toHaveLength(1);
    await t.close();
  });

  test("its trip is like any other of the bike: it enters the forecast and takes the place of what overlaps, which can be undone", async () => {
    const { t, post } = await asked();
    await t.one({ as: "Odo", run: "/trip plan:100 km on 13 June" });
    const joined = await press(t, "Odo", post, "I ride along");
    expect(joined.text).toContain("It takes the place of: “100 km on 13 June”.");
    expect((await t.one({ as: "Odo", run: "/trip" })).data.trips).toMatchObject([{ from: "2027-06-12", to: "2027-06-14" }]);
    const back = await press(t, "Odo", joined, "Undo: the earlier plan");
    expect(back.text).toContain("The earlier plan stands again.");
    expect((await t.one({ as: "Odo", run: "/trip" })).data.trips).toMatchObject([{ from: "2027-06-13", typed: "100 km on 13 June" }]);
    expect((await press(t, "Ines", post, "Who rides along")).data.along).toHaveLength(1);
    expect((await press(t, "Odo", joined, "Undo: the earlier plan")).data.refused.why).toBe("gone");
    await t.close();
  });

  test("is known in its group and in no other, and not once it is over", async () => {
    const { t, planned, post } = await asked();
    expect((await press(t, "Odo", post, "I ride along", "g2")).data.refused.why).toBe("gone");
    expect((await press(t, "Odo", post, "Who rides along", "g2")).data.refused.why).toBe("gone");
    expect((await t.one({ as: "Ines", in: "dm", press: button(planned, "Ask who rides along") })).data.refused.why).toBe("not in a group");
    await t.send({ advance: "P250D", asleep: true });
    expect((await press(t, "Odo", post, "I ride along")).data.refused.why).toBe("gone");
    await t.close();
  });
});

test("of several plans that gave way one after the other, undoing brings back the last", async () => {
  const t = await talk("2026-11-26T09:00:00Z");
  await add(t, "Ines", "Heron", "chain-drive twin", "14,210 mi");
  await t.one({ as: "Ines", run: "/trip plan:100 mi on 12 June" });
  await t.one({ as: "Ines", run: "/trip plan:200 mi on 12 June" });
  const third = await t.one({ as: "Ines", run: "/trip plan:300 mi on 12 June" });
  const back = await press(t, "Ines", third, "Undo: the earlier plan");
  expect(back.data.trips.map(({ typed }: { typed: string }) => typed)).toEqual(["200 mi on 12 June"]);
  await t.close();
});
