// A drawing on the group's server: sent with the words, with its alternative text, to the one who asked.

import { afterEach, expect, test } from "vitest";
import { isPrivate, type OnStandIn, onStandIn } from "./server.ts";

let on: OnStandIn;
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
  expect(on.faults).toEqual([]);
});

test("an adapter's drawing goes with the answer", async () => {
  on = await onStandIn({ announceAfter: null });
  const ines = { member: "200000000000000001", channel: on.platform.garage };
  const answer = await on.answerTo(on.platform.run(ines, "torque", "set", { target: "65 Nm", adapter: "50 mm", lever: "400 mm", angle: "0" }));
  expect(isPrivate(answer)).toBe(true);
  expect(answer.content).toContain("65 N·m × 400 / (400 + 50) = 57.8 N·m on the wrench.");
  const call = on.platform.calls.find(({ method, path }) => method === "POST" && path.endsWith("/callback"));
  const body = call?.body as { data: { attachments: readonly { description: string }[] } } | undefined;
  expect(body?.data.attachments.map(({ description }) => description)).toEqual([
    "A torque wrench seen from above, L = 400 mm from the middle of the grip to its square, with an adapter of E = 50 mm in line. The wrench is set to 57.8 N·m; T = 65 N·m reaches the fastener.",
  ]);
});
