// Fills of fuel by plain message, and what the reply and /reading say was used.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const DM = { as: "Tess", in: "dm" };

test("a full tank after a full tank says what was used, part fills counted in; /reading says it again", async () => {
  const t = await talk();
  await t.one({ as: "Tess", run: "/bike add name:Bramble kind:dual-purpose single odometer:8,640 km" });
  const first = await t.one({ ...DM, say: "tank full, 10 L at 8,700" });
  expect(first.text).not.toContain("L/100 km");
  await t.send({ advance: "P1D" });
  await t.one({ ...DM, say: "fuel 4 L, partial, at 8,800" });
  await t.send({ advance: "P1D" });
  const second = await t.one({ ...DM, say: "filled up 8.4 L at 8,950 km, 15.90" });
  expect(second.text).toContain("Since the last full tank: 12.4 L over 250 km, 5 L/100 km.");
  expect(second.data.fuel).toMatchObject([{ litres: 12.4, by: "odometer", rates: [{ unit: "L/100 km", value: 4.96 }] }]);
  const list = await t.one({ ...DM, run: "/reading" });
  expect(list.text).toMatch(/- Fuel 8\.4 L.*\(5 L\/100 km\)/u);
  expect(list.data.bikes[0].fuel).toHaveLength(1);
  await t.close();
});

test("on miles it is in the gallon of the group's place, or in both where that is not known", async () => {
  const t = await talk();
  await t.one({ as: "Tess", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const both = await t.one({ ...DM, say: "filled up 15.2 L, 187 miles" });
  expect(both.text).toContain("By the trip meter: 15.2 L over 187 mi, 55.9 mpg (imperial) or 46.6 mpg (US).");
  await t.one({ as: "Tess", run: "/group place:United Kingdom", admin: true });
  const home = await t.one({ ...DM, say: "filled up 15.2 L, 187 miles" });
  expect(home.text).toContain("187 mi, 55.9 mpg (imperial).");
  await t.close();
});
