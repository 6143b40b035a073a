// The practice room as somebody sits before it: typed lines in, printed lines out.

import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import { typed } from "../support/practice.ts";

const ADD = "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi";

test("a newcomer is told how to begin, adds a bike and answers its form a question at a time", async () => {
  const [welcome, added, first, ...rest] = await typed([ADD, "1", "", "spring 2023", "at 12,000, last May, receipt", "don't know", "", "/due", ":quit"]);
  expect(welcome).toContain("Begin with: /bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  expect(added).toMatch(/^Heron is here at 14,210 mi/);
  expect(added).toContain("[1] Fill in what you know");
  expect(first).toBe("(:leave lets it go, sending nothing)\nFront tyre age + Rear tyre age; such as spring 2023 at 9,800, receipt; Enter leaves it out:\n");
  expect(rest[4]).toContain("Recorded: Brake fluid (spring 2023) and Engine oil and filter (May 2026).");
  expect(rest[5]).toContain("Brake fluid: was due spring 2025");
  expect(rest.at(-1)).toBe("All is kept. See you next time.\n");
});

test("a reminder arrives with time, is put off by number, and a number with no button says so", async () => {
  const shown = await typed([ADD, "1", "", "spring 2023", "", "", "", ":advance 8d", "2", "4", "9", ":advance 20d"]);
  expect(shown[8]).toContain("A message for you:\nFor Heron\n- Brake fluid: was due spring 2025, last done spring 2023. Overdue.");
  expect(shown[8]).toContain("  [2] Put off on Heron");
  expect(shown[8]).toMatch(/It is now 3 December 2026, 10:00\.\n$/);
  expect(shown[9]).toContain("4. for a month");
  expect(shown[10]).toMatch(/^Heron: Brake fluid put off until 3 January/);
  expect(shown[11]).toContain("I found no reading");
  expect(shown[12]).toBe("It is now 23 December 2026, 10:00.\n");
});

test("an edit amends the last message, a delete asks about it", async () => {
  const shown = await typed([ADD, "14,802 mi on Heron", ":edit 14,820 mi on Heron", ":delete", "1", "/reading"]);
  expect(shown[2]).toContain("Heron: odometer 14,802 mi, today. Logged.");
  expect(shown[3]).toContain("14,820 mi");
  expect(shown[4]).toContain("was deleted. The record stands unless you withdraw it");
  expect(shown[6]).toContain("14,210 mi");
  expect(shown[6]).not.toContain("14,8");
});

test("a drawing is kept beside the database, named with what it shows, and asking again leaves one file", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const ask = "/torque set target:65 Nm adapter:50 mm lever:400 mm angle:0";
  const [, shown] = await typed([ask, ask], file);
  const kept = /\(a drawing, in (.*\.png): A torque wrench seen from above, L = 400 mm/u.exec(shown ?? "")?.[1] ?? "";
  expect(path.dirname(kept)).toBe(`${file}.files`);
  expect(await readdir(`${file}.files`)).toEqual([path.basename(kept)]);
  await rm(folder, { recursive: true });
});

test("members and places are changed by word; in a group's channel a log is only marked", async () => {
  const shown = await typed([
    ":as Tomasz",
    ":in g1",
    ADD,
    "14,820 mi on Heron",
    "nice day for it",
    ":in the moon",
    ":as ???",
    ":advance soon",
    ":fly",
    ":press 7",
    ":edit x",
  ]);
  expect(shown[2]).toBe("You are Tomasz, in g1.\n");
  expect(shown[4]).toBe("(marked as logged)\n");
  expect(shown[5]).toBe("(no answer: the bot keeps out of small talk)\n");
  expect(shown[6]).toBe("“the moon” is no place. Try dm, g1 or g1/other.\n");
  expect(shown[7]).toBe("“???” cannot be a member's name here. Use letters, digits and dashes.\n");
  expect(shown[8]).toBe("I cannot read “soon” as a time span. Try 60d, 2w, 3m or P30D.\n");
  expect(shown[9]).toBe("The room does not know :fly. :help lists its words.\n");
  expect(shown[10]).toBe("There is no button 7 in the last answer.\n");
});

test("the demo can be looked around in, added once however often it is asked for", async () => {
  const shown = await typed([":demo", ":as Ines", "/due", ":demo", "/bike list"]);
  expect(shown[1]).toBe("Added. Look around with /due, and speak as Ines or Tomasz with :as.\n");
  expect(shown[3]).toContain("Heron at 14,390 mi");
  expect(shown[3]).toContain("Bramble at 8,640 km");
  expect(shown[5]?.match(/Heron/gu)).toHaveLength(1);
});

test("all is kept when it is left and opened again", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  await typed([ADD, "14,820 mi on Heron", ":quit"], file);
  const shown = await typed(["/bike list"], file, false);
  expect(shown[0]).toContain("Practice room, 25 November 2026. You are you.");
  expect(shown[1]).toContain("14,820 mi");
  await rm(folder, { recursive: true });
});

test("several lines of a form are typed in one", async () => {
  const shown = await typed(["/bike add name:Heron kind:chain-drive twin odometer:14,210 mi", "/plan read-chart", "1", "item;4,000 mi;8,000\\nSpark plugs;;R"]);
  expect(shown.at(-3)).toContain("several lines are typed in one, with \\n between them");
  expect(shown.at(-2)).toContain("Heron: a chart of 1 line and 2 services, 4,000 mi to 8,000 mi.");
});

test("a command lets a form or a choice go, and nothing of it is sent", async () => {
  const add = "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi";
  const [, , asked, due, again, left, none] = await typed([add, "1", "/due", add.replace("Heron", "Wren"), ":leave", ":leave"]);
  expect(asked).toContain(":leave lets it go");
  expect(due).toContain("Left; nothing of it was sent.\nHeron at 14,210 mi");
  expect(again).toContain("Wren is here");
  expect(left).toContain("No form and no choice is open.");
  expect(none).toContain("No form");
  const [, , , out, next] = await typed([add, "1", ":leave", "Heron 14,300 mi"]);
  expect(out).toBe("Left; nothing of it was sent.\n");
  expect(next).toContain("Heron: odometer 14,300 mi, today. Logged.");
});
