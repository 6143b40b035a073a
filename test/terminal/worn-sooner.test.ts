// What comes next where the plan says one thing and the wear another: the earlier of the two, in the list, the picture, the look ahead, the sheet, the trip and what is bought.

import { afterEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const say = (line: string) => t.one({ ...dm, say: line });
const lineOf = (text: string | null, name: string): string => (text ?? "").split("\n").find((line) => line.startsWith(`- ${name}`)) ?? "";

/** A chain and tyres fitted at 9,000 mi and read three times; the chain is near its limit long before the 18,000 mi that the plan gives it. */
async function ridden(): Promise<void> {
  t = await talk("2026-05-02T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:9,000 mi");
  await say("new front tyre, rear tyre and chain today at 9,000 mi");
  await t.send({ advance: "P49D" });
  await say("11,000 mi, tread 4.1 mm front 5.6 mm rear, chain 318.5 mm over 20 pitches");
  await t.send({ advance: "P61D" });
  await say("13,000 mi, tread 3.5 mm front 4.1 mm rear, chain 319.6 mm over 20 pitches");
  await t.send({ advance: "P61D" });
  await say("14,500 mi, tread 3.2 mm front 2.6 mm rear, chain 320.3 mm over 20 pitches");
  await t.send({ advance: "P36D" });
  await say("14,700 mi");
}

test("each item goes by the earlier of its plan and its wear, and says which", async () => {
  await ridden();
  const due = await run("/due picture:yes");
  // 550 mi left by its line against 12,300 mi by the plan, 9,000 + 18,000 − 14,700.
  expect(lineOf(due.text, "New chain and sprockets")).toBe(
    "- New chain and sprockets: chain length 320.3 mm, read on 20 October: near limit, 320.7 mm; look again at about 14,800 mi, by its wear; by wear at about 15,250 mi, about 550 mi left.",
  );
  // To be measured again by plan before the tyre is worn.
  expect(lineOf(due.text, "Rear tread depth")).toBe(
    "- Rear tread depth: due by plan on 20 April, last done 20 October; in 5 months; by plan at 16,500 mi, 1,800 mi to go; by wear at about 16,800 mi, about 2,100 mi left.",
  );
  const [picture] = due.data.next as { rows: { items: { item: string }[]; by: string | null; on: string; status: string }[]; near: string[] }[];
  const rowOf = (item: string) => picture?.rows.find(({ items }) => items.some((each) => each.item === item));
  expect(rowOf("chain.replace")).toMatchObject({ by: "wear", status: "soon", on: "2027-02-18" });
  expect(rowOf("rear-tread.measure")).toMatchObject({ by: "plan", on: "2027-04-20" });
  expect(picture?.near).toEqual([]);
  expect(due.files[0]?.alt).toContain("New chain and sprockets: coming up, about 15,250 mi by wear, 18 February.");
});

test("looking ahead, the list of a winter, and what is bought for it go by the same", async () => {
  await ridden();
  const ahead = await run("/due until:1 March");
  expect(ahead.text).toContain("About 18 February, at about 15,250 mi (about 2 h):\n- New chain and sprockets");
  expect((await run("/plan sheet until:1 March")).text).toContain("done with new chain and sprockets.");
  const bought = await run("/plan shopping until:1 August");
  const wanted = (bought.data.wanted as { what: string }[]).map(({ what }) => what);
  expect(wanted).toEqual(expect.arrayContaining(["chain", "rear tyre"]));
  expect(wanted).not.toContain("front tyre");
  expect(bought.text).toContain("at its limit by then, as measured: rear tread depth.");
  // The tyre that is worn by then is had ready beside the line that measures it.
  const sheet = await run("/plan sheet until:1 August");
  expect(/^To have ready: .*$/mu.exec(sheet.text ?? "")?.[0]).toContain("rear tyre");
  expect(/^To have ready: .*$/mu.exec((await run("/plan sheet until:1 March")).text ?? "")?.[0]).not.toContain("rear tyre");
});

test("a trip is held against the chain's wear too, by the low end of its range, and against nothing twice", async () => {
  await ridden();
  const trip = await run("/trip plan:900 mi from 10 December to 14 December");
  expect(lineOf(trip.text, "Chain:")).toMatch(/^- Chain: not enough\. 320\.3 mm, limit 320\.7 mm; about \d+ mi left .* Fit a new one before 10 December\.$/u);
  expect(lineOf(trip.text, "Rear tyre")).toContain("Rear tyre: enough.");
  expect(trip.text).not.toContain("New chain and sprockets");
});

test("a new chain ends it, and with one reading the plan tells alone; what is near its limit is named in the picture all the same", async () => {
  await ridden();
  await say("new chain at 14,700 mi");
  expect(lineOf((await run("/due")).text, "New chain and sprockets")).not.toContain("by wear");
  await t.close();
  t = await talk("2026-05-02T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:9,000 mi");
  await t.send({ advance: "P49D" });
  await say("9,300 mi, chain 320.3 mm over 20 pitches");
  const due = await run("/due picture:yes");
  expect(lineOf(due.text, "New chain and sprockets")).not.toMatch(/by wear|by plan/u);
  expect(lineOf(due.text, "New chain and sprockets")).toContain("near limit");
  expect(due.files[0]?.alt).toContain("Near the limit by what was measured: new chain and sprockets. /due says what is known of when.");
});

test("it is told once when it is coming up by wear, and once more when it is reached, though nothing was read of it since", async () => {
  await ridden();
  const told = async (odometer: string): Promise<string[]> => {
    await say(odometer);
    const sent = await t.send({ advance: "P8D" });
    return sent.flatMap(({ text }) => (text ?? "").split("\n").filter((line) => line.includes("ear tread depth")));
  };
  // Its range begins at 16,220 mi: 500 mi before that.
  expect(await told("15,650 mi")).toEqual([]);
  expect(await told("15,750 mi")).toEqual([
    expect.stringMatching(/Rear tread depth: by wear at its limit at about 16,800 mi; about 1,\d00 mi left \(at least \d+ mi with nine chances in ten\)/u),
  ]);
  expect(await told("15,800 mi")).toEqual([]);
  expect(await told("16,850 mi")).toEqual([
    expect.stringContaining("by wear it has reached its limit since it was last read, at about 16,800 mi; measure it before you ride on"),
  ]);
});
