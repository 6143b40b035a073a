// A member who writes German: read, asked and answered; the answers are English.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const DM = { as: "Jonas", in: "dm" };

test("German readings and work are logged, a question is answered in German, and talk is left alone", async () => {
  const t = await talk();
  await t.one({ as: "Jonas", run: "/bike add name:Bramble kind:dual-purpose single odometer:8,640 km" });
  const logged = await t.one({ ...DM, say: "Bramble steht bei 9.050, Luftdruck vorne 2,3 hinten 2,5, Kette gestern geschmiert" });
  expect(logged.data.logged).toMatchObject([
    { kind: "odometer", value: 9050, unit: "km", on: "2026-11-25" },
    { kind: "cold pressure", place: "front", value: 2.3, unit: "bar" },
    { kind: "cold pressure", place: "rear", value: 2.5, unit: "bar" },
  ]);
  expect(logged.data.work).toMatchObject([{ items: [{ item: "chain.lubricate" }], on: { from: "2026-11-24" } }]);
  const asked = await t.one({ ...DM, say: "Luftdruck 2,4 bar" });
  expect(asked.data.asked).toMatchObject([{ need: "place" }]);
  const answered = await t.one({ ...DM, say: "hinten" });
  expect(answered.data.logged).toMatchObject([{ place: "rear", value: 2.4 }]);
  expect(await t.send({ as: "Jonas", in: "g1", say: "heute 210 km gefahren, schöne Tour" })).toEqual([]);
  await t.close();
});
