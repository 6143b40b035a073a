// A sheet for a bike that is not to be ridden: said first, warmed where it stands or not at all, ridden only once it is closed.

import { afterEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const press = (shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
const begun = async (): Promise<void> => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
};
/** Every evening of a sheet. */
const whole = async (first: Shown): Promise<string> => {
  const texts = [first.text ?? ""];
  for (const { label } of first.actions.filter((action) => action.label.startsWith("Evening "))) texts.push((await press(first, label)).text ?? "");
  return texts.join("\n");
};

test("a defect that stops the ride is said at the top; the engine is warmed standing, and the test ride waits until it is closed", async () => {
  await begun();
  expect(await whole(await run("/plan sheet"))).toContain("engine warm from a ride");
  await run("/work did:brake hoses found:cracked");
  const sheet = await run("/plan sheet");
  expect(sheet.text?.split("\n")[1]).toMatch(/^Do not ride: “Brake hoses: cracked”/u);
  const text = await whole(sheet);
  expect(text).not.toContain("warm from a ride");
  expect(text).toContain("engine run warm where it stands, outdoors");
  expect(text).not.toContain("Last, a short test ride");
  expect(text).toContain("No test ride before all that keeps it off the road is closed");
  // What it takes is had ready, and the job says it too.
  expect(sheet.text).toMatch(/To have ready: .*brake hose set/u);
  const job = await press(sheet, "Begin this job");
  expect(job.text).toContain("Do not ride: “Brake hoses: cracked”");
  // Closed, the sheet is as it was.
  await run("/work did:new brake hoses");
  expect(await whole(await run("/plan sheet"))).toContain("Last, a short test ride");
  expect((await run("/plan job")).text).not.toContain("Do not ride");
});

test("with petrol outside it is not run either", async () => {
  await begun();
  await run("/work did:fuel hoses found:leaking");
  const sheet = await run("/plan sheet");
  expect(sheet.data.engine).toBe("not run");
  expect(sheet.text).toContain("It is neither ridden nor run before it is put right.");
  expect(sheet.text).toContain("Fuel vapour burns");
  expect(await whole(sheet)).not.toContain("Run the engine warm");
});

test("what nobody has graded yet is taken as it usually is", async () => {
  await begun();
  await t.one({ ...dm, say: "fork seal is leaking on Heron" });
  expect((await run("/plan sheet")).data).toMatchObject({ engine: "standing", stops: [{ kind: "fork leak", grade: null }] });
});

test("what is only watched changes nothing; of a sheet that is shared nobody reads what was found wrong, and it is as careful", async () => {
  await begun();
  const watched = await run("/work did:brake hoses found:cracked");
  const shared = await run("/plan sheet share:yes");
  expect(shared.visibility).toBe("shared");
  expect(shared.text).not.toContain("cracked");
  expect(shared.data.stops).toEqual([]);
  expect(shared.text).toContain("It is not ridden, so warm it standing, outdoors");
  await press(watched, "Watch");
  expect((await run("/plan sheet")).data).toMatchObject({ stops: [], engine: "ride" });
});
