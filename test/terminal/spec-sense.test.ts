// Specs that no manual prints are refused kindly, with what may have been meant; a tyre's pressure is right again by a reading alone.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
const run = (line: string) => t.one({ as: "Ines", in: "dm", run: line });
beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
});
afterEach(() => t.close());

test("a point too many in a pressure: what was meant is named", async () => {
  const slip = await run("/spec what:front tyre pressure value:3.6 psi");
  expect(slip.data.refused.why).toBe("spec out of range");
  expect(slip.text).toContain("perhaps 36 psi or 3.6 bar?");
  expect((await run("/spec what:front tyre pressure value:36 psi")).text).toContain("Front tyre pressure: 36 psi.");
});

// 49 CFR 571.116 has DOT 3, 4 and 5; 5.1 is the label of one without silicone. SAE J300:2015 has 0W to 25W, and 8 to 60.
test("a class of fluid and a grade of oil that no standard knows", async () => {
  for (const value of ["DOT 9", "dot6", "DOT 4.1"]) {
    const refused = await run(`/spec what:brake fluid value:${value}`);
    expect(refused.data.refused).toMatchObject({ why: "not a spec", because: "no such class" });
    expect(refused.text).toContain("DOT 3, DOT 4, DOT 5.1, DOT 5 (silicone) or mineral oil");
  }
  for (const value of ["DOT 4", "DOT 5.1", "dot4 from a sealed bottle", "mineral oil"])
    expect((await run(`/spec what:brake fluid value:${value}`)).data.refused).toBeUndefined();
  for (const value of ["10W-400", "100W-40", "11W-40"])
    expect((await run(`/spec what:engine oil grade value:${value}`)).data.refused).toMatchObject({ because: "no such class" });
  for (const value of ["10W-40", "20w50", "0W-8", "SAE 30", "maker's own oil"])
    expect((await run(`/spec what:engine oil grade value:${value}`)).data.refused).toBeUndefined();
});

test("a new tyre closes no pressure that was found wrong; the next right reading does", async () => {
  await run("/spec what:rear tyre pressure value:38 psi source:manual, p. 12");
  await t.one({ as: "Ines", in: "dm", say: "rear 20 psi on Heron" });
  const fitted = await run("/work did:rear tyre outcome:replaced");
  expect(fitted.data.closed).toEqual([]);
  expect((await run("/due")).data.bikes[0].defects).toMatchObject([{ kind: "wrong rear pressure", state: "open" }]);
  const right = await t.one({ as: "Ines", in: "dm", say: "rear 38 psi on Heron" });
  expect((right.data.closed as object[]).length).toBe(1);
});

test("a value is shown with the digits that were typed, and with one sign for its unit", async () => {
  for (const [what, value, shown] of [
    ["intake valve clearance", "0.10 mm", "0.10 mm"],
    ["exhaust valve clearance", "0.20-0.30 mm", "0.20 to 0.30 mm"],
    ["front pad limit", "1.50 mm", "at least 1.50 mm"],
    ["oil drain plug torque", "24.0 Nm", "24.0 N·m"],
    ["front tyre pressure", "2.50 bar", "2.50 bar"],
    ["rear axle torque", "98 Nm", "98 N·m"],
    ["spark plug gap", "0.8 mm", "0.8 mm"],
  ])
    expect((await run(`/spec what:${what} value:${value}`)).text).toContain(`: ${shown}. `);
  const sheet = await run("/plan sheet");
  expect(sheet.text).toContain("Oil drain plug torque: 24.0 N·m");
  expect(sheet.text).not.toMatch(/\dNm|\d Nm/u);
});
