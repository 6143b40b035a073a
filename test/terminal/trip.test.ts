// A trip planned, changed and called off, as a member meets it.

import { describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
type Item = { readonly item: string; readonly when: string; readonly into: number | null; readonly counts: boolean };
const run = (t: Talk, line: string) => t.one({ ...dm, run: line });
const itemsOf = (shown: Shown): readonly Item[] => shown.data.trips[0].items;
const MILE = 16_093_440;

/** Oil done at 12,000 mi; ridden and measured since. */
async function ridden(): Promise<Talk> {
  const t = await talk("2026-11-26T09:00:00Z");
  await run(t, "/bike add name:Heron kind:chain-drive twin odometer:12,000 mi");
  await run(t, "/work did:oil and filter at:12,000 mi on:today bike:Heron");
  await t.one({ ...dm, say: "tread 6 mm front 5.0 mm rear on Heron" });
  await t.send({ advance: "P60D", asleep: true });
  await t.one({ ...dm, say: "13,500 mi on Heron, tread 5 mm front 4.0 mm rear" });
  await t.send({ advance: "P60D", asleep: true });
  await t.one({ ...dm, say: "14,820 mi on Heron, tread 4.2 mm front 3.1 mm rear" });
  return t;
}

describe("a trip begun tomorrow from 14,820 mi", () => {
  test("says at which point oil falls due, and that it counts when it is done before; and which tyre does not last", async () => {
    const t = await ridden();
    const shown = await run(t, "/trip plan:2,800 mi from tomorrow for 19 days bike:Heron");
    const oil = itemsOf(shown).find(({ item }) => item === "engine-oil.replace");
    // Due at 16,000 mi (12,000 + 4,000): 1,180 mi from 14,820.
    expect(oil).toMatchObject({ when: "during", into: 1180 * MILE, counts: true });
    expect(shown.text).toMatch(/Engine oil and filter[^\n]* due 1,180 mi in: do (it|them) before you go, (it counts|they count)\./u);
    expect(shown.text).toMatch(
      /- Rear tyre: not enough\. 3\.1 mm, limit 0\.8 mm; about [\d,]+ mi left \([\d,]+ mi to [\d,]+ mi\), trip 2,800 mi\. Fit before 27 March\./u,
    );
    expect(shown.text).toContain("plug kit for tubeless tyres");
    expect(shown.text).not.toContain("spoke");
    await t.close();
  });

  test("under load it wears faster, and a longer one never has fewer items due", async () => {
    const t = await ridden();
    const left = async (load: string): Promise<number> =>
      (await run(t, `/trip plan:300 mi from tomorrow for 3 days load:${load}`)).data.trips[0].wear.find(({ part }: { part: string }) => part === "rear tread")
        .left.low;
    expect((await left("two-up")) * 1.2).toBeCloseTo(await left("solo"), -3);
    let before: readonly string[] = [];
    for (const distance of [100, 1179, 1180, 5000]) {
      const due = itemsOf(await run(t, `/trip plan:${distance} mi from tomorrow for 19 days`))
        .filter(({ when }) => when !== "after")
        .map(({ item }) => item);
      expect(before.filter((item) => !due.includes(item))).toEqual([]);
      expect(due.includes("engine-oil.replace")).toBe(distance >= 1180);
      before = due;
    }
    await t.close();
  });
});

test("a planned trip enters the forecast, makes a long day on it believable, gives way to a new plan and can be called off", async () => {
  const t = await ridden();
  const until = async (): Promise<number> => (await run(t, "/due bike:Heron until:30 June")).data.bikes[0].ridden.likely / MILE;
  const usual = await until();
  await run(t, "/trip plan:2,800 mi from 12 June to 30 June");
  expect((await until()) - usual).toBeGreaterThan(1500);
  const moved = await run(t, "/trip plan:500 mi from 14 June to 16 June");
  expect(moved.text).toContain("It takes the place of: “2,800 mi from 12 June to 30 June”.");
  expect((await run(t, "/trip")).data.trips).toHaveLength(1);
  expect((await t.one({ ...dm, press: button(moved, "Call it off") })).text).toContain("the trip from 14 June is called off");
  expect(await until()).toBeCloseTo(usual, 3);
  expect((await run(t, "/trip")).text).toContain("No trip is planned.");
  await run(t, "/trip plan:3,000 mi from today to tomorrow");
  await t.send({ advance: "P1D", asleep: true });
  expect((await t.one({ ...dm, say: "17,500 mi on Heron" })).react).toBe("logged");
  await t.close();
});

test("what cannot be planned says why; nobody else calls it off", async () => {
  const t = await ridden();
  const why = async (plan: string) => (await run(t, `/trip plan:${plan}`)).data.refused.because;
  expect(await why("soon")).toBe("not read");
  expect(await why("300 mi from 12 June to 2 May 2027")).toBe("backwards");
  for (const plan of ["300 mi from 30 June to 12 June", "300 mi from 12 June to 2 May"]) expect([plan, await why(plan)]).toEqual([plan, "backwards"]);
  expect(await why("300,000 mi from 12 June to 30 June")).toBe("too far");
  // A slip of a figure or of a day is not planned with.
  expect(await why("20,000 mi from 12 June to 14 June")).toBe("too far a day");
  expect(await why("7,300 km from 12 June to 14 June")).toBe("too far a day");
  expect((await run(t, "/trip plan:4,500 mi from 12 June to 14 June")).data.did).toBe("planned");
  const planned = await run(t, "/trip plan:300 mi on 4 April");
  expect((await t.one({ as: "Tom", in: "dm", press: button(planned, "Call it off") })).data.refused.why).toBe("gone");
  await t.close();
});

test("two-up, a pressure that is known for riding solo only is not said for two; it is asked for, and said back to normal once both are known", async () => {
  const t = await ridden();
  await run(t, "/spec what:front tyre pressure value:34 psi");
  await run(t, "/spec what:rear tyre pressure solo value:36 psi");
  await run(t, "/spec what:rear tyre pressure two-up value:42 psi");
  const plan = "/trip plan:300 mi on 4 April load:two-up";
  const asked = await run(t, plan);
  expect(asked.text).toContain("Pressures two-up: rear 42 psi.");
  expect(asked.text).toContain("Pressure two-up, front: not known.");
  expect(asked.text).toContain("Solo it is front 34 psi, which is not taken for this load.");
  expect(asked.text).toContain("Back to normal on return: rear 36 psi.");
  await t.one({ ...dm, fill: button(asked, "Enter front pressure two-up"), fields: { value: "36 psi" } });
  const known = await run(t, plan);
  expect(known.text).toContain("Pressures two-up: front 36 psi and rear 42 psi.");
  expect(known.text).toContain("Back to normal on return: front 34 psi and rear 36 psi.");
  expect(known.actions.map(({ label }) => label)).not.toContain("Enter front pressure two-up");
  await t.close();
});

describe("before a trip nothing is passed over:", () => {
  test("a used bike with no history is told what nobody knows, and never that nothing falls due", async () => {
    const t = await talk("2026-11-26T09:00:00Z");
    await run(t, "/bike add name:Wren kind:chain-drive twin odometer:23,000 km");
    const shown = await run(t, "/trip plan:300 km from tomorrow for 2 days");
    expect(shown.text).toMatch(/Nothing on record says when [^\n]*brake fluid[^\n]* were last done: look before you go/u);
    expect(shown.text).not.toContain("Nothing on record falls due before");
    expect(shown.text).toContain("measure twice, some hundred kilometres apart");
    await t.close();
  });

  test("a defect that nobody graded and a tyre near its limit with one reading are named", async () => {
    const t = await talk("2026-11-26T09:00:00Z");
    await run(t, "/bike add name:Heron kind:chain-drive twin odometer:12,000 mi");
    await t.one({ ...dm, say: "rear tread 1.1 mm on Heron" });
    await t.one({ ...dm, say: "Heron weeping oil at the left cover" });
    const shown = await run(t, "/trip plan:300 mi from tomorrow for 2 days");
    expect(shown.data.trips[0]).toMatchObject({ ungraded: 1, nearing: [{ part: "rear tread", value: 1.1 }], unmeasured: ["front tread"] });
    expect(shown.text).toContain("One defect is not graded yet: /due names it.");
    expect(shown.text).toMatch(/- Rear tyre: 1\.1 mm, limit 0\.8 mm, and nothing says how fast it wears\. Fit before 27 November/u);
    await t.close();
  });
});
