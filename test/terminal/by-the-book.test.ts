// Kept by the book, for a warranty: marks never move, and dates run from the day of first registration once it is said.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

test("the day of first registration is said once, and kept until the book is closed", async () => {
  const t = await talk("2026-11-26T10:00:00Z");
  const run = async (line: string) => (await t.one({ as: "Ines", in: "dm", run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:10,000 mi");
  await run("/work did:oil and filter at:10,000 mi on:20 November 2026");
  expect(await run("/bike change registered:20 May 2024")).toContain(
    "Use: kept by the book (marks never move; dates run from first registration, 20 May 2024).",
  );
  const due = await run("/due");
  // Early by six months, it does not count for the anniversary; nor do 10,000 mi for 12,000.
  expect(due).toContain("Engine oil and filter: due on 20 May, counted from first registration, 20 May 2024");
  // An anniversary passed before the bike came, and nothing is known of it.
  expect(due.slice(due.indexOf("No record"))).toContain("brake fluid");
  expect(await run("/bike change book:yes used:wet")).toContain("dates run from first registration, 20 May 2024");
  expect(await run("/bike change registered:May 2024")).toContain("May 2024");
  expect(await run("/bike change registered:20 May 2030")).not.toContain("is changed");
  expect(await run("/bike change book:no")).not.toContain("by the book");
  expect(await run("/due")).toMatch(/Engine oil and filter: .*by date 20 November 2027\./u);
  await t.close();
});
