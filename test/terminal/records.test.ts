// Looking back at work. What an entry must hold is what 14 CFR 43.9 (a) asks of a maintenance record: a description of the work,
// the date of its completion, the name of whoever did it; a correction leaves the old entry readable.

import { readFile } from "node:fs/promises";
import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const DM = { as: "Ines", in: "dm" };

test("an entry says what was done, when, at what odometer, by whom, with what and how we know; costs are summed by currency; what is taken back stays readable", async () => {
  const t = await talk();
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...DM, say: "did the oil and filter at 14,820, 3.2 L 20W-50, 48.60 EUR" });
  await t.one({ ...DM, run: "/work did:coolant on:spring 2025 how:receipt by:Fernlea Motors cost:31.40 EUR note:=old hose clips" });
  await t.send({ advance: "PT1M" });
  const slip = await t.one({ ...DM, run: "/work did:brake fluid cost:12 GBP" });
  await t.one({ ...DM, press: button(slip, "Undo") });
  await t.one({ ...DM, say: "front brake feels spongy" });
  const back = await t.one({ ...DM, run: "/records" });
  expect(back.text?.split("\n")).toEqual([
    "Heron: 3 records",
    "- 25 November: Brake fluid (done). 12 GBP; by Ines. Taken back: it does not count.",
    "- 25 November, 14,820 mi: Engine oil and filter (done). 3.2 L 20W-50; 48.60 EUR; by Ines.",
    "- spring 2025: Coolant (done). 31.40 EUR; by Fernlea Motors; receipt; “=old hose clips”.",
    expect.stringContaining("- Heron, do not ride: “front brake feels spongy”, found today."),
    "Cost in all: 80 EUR.",
  ]);
  const table = (await readFile(back.files[0]?.path ?? "", "utf8")).split("\r\n");
  expect(table[0]).toBe("bike,date from,date to,odometer,unit,work,outcome,found,left,with,cost,currency,done by,how we know,note,state,entered");
  expect(table[2]).toBe(
    "Heron,2026-11-25,2026-11-25,14820,mi,Engine oil and filter,done,,,3.2 L 20W-50,48.60,EUR,Ines,did it,,stands,2026-11-25T10:00:00.000Z",
  );
  // A note that a spreadsheet would take for a formula stays words.
  expect(table[3]).toContain(", =old hose clips,");
  const some = await t.one({ ...DM, run: "/records item:coolant since:2025" });
  expect(some.data.bikes[0].work.map(({ words }: { words: string }) => words)).toEqual(["coolant"]);
  expect((await t.one({ ...DM, run: "/records since:2026" })).data.bikes[0].work).toHaveLength(2);
  // Shared, what is wrong with the bike stays the owner's.
  expect((await t.one({ as: "Ines", run: "/records share:yes" })).text).not.toContain("spongy");
  await t.close();
});
