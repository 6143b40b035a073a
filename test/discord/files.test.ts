// Files sent with a command on the group's server: fetched, read as if pasted, and refused in a sentence where they cannot be.

import { afterEach, beforeEach, expect, test } from "vitest";
import { LARGEST_FILE } from "../../src/chat/files.ts";
import { isPrivate, type OnStandIn, onStandIn, saidBy } from "./server.ts";

let on: OnStandIn;
beforeEach(async () => {
  on = await onStandIn({ announceAfter: null });
  await on.answerTo(on.platform.run(ines(), "bike", "add", { name: "Heron", kind: "chain-drive twin", odometer: "14,210 mi" }));
});
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
  expect(on.faults).toEqual([]);
});

const ines = () => ({ member: "200000000000000001", channel: on.platform.garage });
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const PLAN = JSON.stringify({
  ...{ format: "tappet-plan", version: 1, name: "Heron by the manual", source: "workshop manual" },
  items: [{ item: "valve-clearance.adjust", repeat: { by: "interval", every: { miles: 12_000, km: null, months: null, hours: null } } }],
});
const imported = async (file: Parameters<typeof on.platform.send>[4]) => on.answerTo(on.platform.send(ines(), "plan", "import", "file", file));

test("a plan file is shown beside the plan, to its sender alone, and nothing is saved by it", async () => {
  const answer = await imported({ name: "heron.json", bytes: bytes(PLAN) });
  expect(isPrivate(answer)).toBe(true);
  expect(answer.content).toContain("Heron by the manual");
  expect(answer.content).toContain("Valve clearance");
  expect((await on.answerTo(on.platform.run(ines(), "plan", "history"))).content).not.toContain("Heron by the manual");
});

test("a chart as a file is read like a pasted one", async () => {
  const file = { name: "chart.csv", bytes: bytes("item,4000 mi,8000\nAir filter,,R\n") };
  const answer = await on.answerTo(on.platform.send(ines(), "plan", "read-chart", "file", file));
  expect(answer.content).toContain("a chart of 1 line and 2 services, 4,000 mi to 8,000 mi");
});

test("what cannot be taken is said: too large by its word or by its bytes, no text, gone", async () => {
  expect((await imported({ name: "a.json", bytes: bytes("{}"), size: LARGEST_FILE + 1 })).content).toContain("larger than I read");
  expect((await imported({ name: "a.json", bytes: bytes("x".repeat(LARGEST_FILE + 1)), size: 2 })).content).toContain("larger than I read");
  expect((await imported({ name: "a.png", bytes: Uint8Array.of(0x89, 0x50, 0xff, 0x00) })).content).toContain("is no text");
  expect((await imported({ name: "a.json", bytes: bytes("{ nothing") })).content).toContain("That plan cannot be read. Line 1");
  on.platform.fault(/uploads/u, "500");
  expect((await imported({ name: "a.json", bytes: bytes(PLAN) })).content).toContain("could not get that file");
});

test("a file on a plain message to the bot is answered with the command that takes it", async () => {
  const attachments = [
    { id: "900000000000000001", filename: "chart.csv", size: 20, url: "https://example.invalid/chart.csv", proxy_url: "https://example.invalid/chart.csv" },
  ];
  on.platform.say({ member: "200000000000000001", channel: on.platform.directChannel("200000000000000001") }, "", { more: { attachments } });
  expect((await on.until("an answer", () => saidBy(on)[0])).content).toContain("/plan read-chart");
});
