// Inputs that cross, and faults of ours: the member hears one line, and nothing is answered twice.

import { expect, test } from "vitest";
import { z } from "zod";
import { conversationOf, type Parts } from "../../src/chat/conversation.ts";
import type { Answer, Inbound } from "../../src/chat/inbound.ts";
import type { Attached } from "../../src/chat/reply.ts";
import type { EventId, MemberId } from "../../src/core/ids.ts";

class Crossed extends Error {}
const from = {
  member: "m1" as MemberId,
  name: null,
  where: { group: null, channel: "dm", id: "dm" } as const,
  event: "e1" as EventId,
  admin: false,
  language: null,
};
const run = (command: string): Inbound => ({ ...from, kind: "run", command, sub: null, options: {} });

/** A bot of one command, which fails as often as told. */
function botThat(fails: readonly Error[], faults: unknown[] = [], draw?: () => Promise<readonly Attached[]>, away = false) {
  const left = [...fails];
  const entered: number[] = [];
  const line = (text: string) => ({ title: null, lines: [text], caution: null, actions: [], files: [] });
  const parts: Parts<number, null, string> = {
    commands: [
      {
        name: "count",
        sub: null,
        options: {},
        adminOnly: false,
        visibility: () => "private",
        data: z.number(),
        async run(ctx) {
          const error = left.shift();
          if (error !== undefined) throw error;
          return { is: "done", value: ctx };
        },
        say: (n: never) => line(`entered ${n} times`),
        ...(draw === undefined ? {} : { draw }),
      },
    ],
    handlers: {} as never,
    messages: { say: async () => null, deleted: async () => null, menu: async () => null },
    enter: async () => {
      if (away) throw new Error("away");
      return { ctx: entered.push(1), words: null, admin: false };
    },
    complete: async () => [],
    refuse: line,
    problem: () => "problem",
    unknownCommand: (typed, nearest) => `${typed}? ${nearest.join(", ")}`,
    isRepeat: () => false,
    usualWords: () => null,
    gone: () => "gone",
    adminsOnly: () => "admins only",
    crossed: (error) => error instanceof Crossed,
    fault: (error) => {
      faults.push(error);
      return line("my fault");
    },
  };
  return conversationOf(parts);
}
const text = (answers: readonly Answer[]): unknown => answers.map((answer) => answer.reply?.lines);

test("an input that crossed with another write is taken once more, from the facts as they are then", async () => {
  const faults: unknown[] = [];
  expect(text(await botThat([new Crossed()], faults).hear(run("count")))).toEqual([["entered 2 times"]]);
  expect(faults).toEqual([]);
});

test("one that crosses twice, and any other failure, is a fault: logged, and said in one private line", async () => {
  for (const fails of [[new Crossed(), new Crossed()], [new TypeError("ours")]]) {
    const faults: unknown[] = [];
    const answers = await botThat(fails, faults).hear(run("count"));
    expect(text(answers)).toEqual([["my fault"]]);
    expect(answers[0]).toMatchObject({ to: "m1", reply: { visibility: "private", data: { fault: true } } });
    expect(faults).toEqual([fails.at(-1)]);
  }
});

test("a failure does not stand in the way of the member's next input", async () => {
  const bot = botThat([new TypeError("ours")]);
  const both = await Promise.all([bot.hear(run("count")), bot.hear(run("count"))]);
  expect(both.map(text)).toEqual([[["my fault"]], [["entered 2 times"]]]);
});

test("a command that is not there is answered with those that are near", async () => {
  expect(text(await botThat([]).hear(run("cuont")))).toEqual([["/cuont? count"]]);
});

test("a picture goes with the words; one that cannot be drawn is logged, and the words are answered without it", async () => {
  const picture = { name: "a.png", type: "image/png" as const, bytes: new Uint8Array([1]), alt: "a line" };
  const [drawn] = await botThat([], [], async () => [picture]).hear(run("count"));
  expect(drawn?.reply).toMatchObject({ lines: ["entered 1 times"], files: [picture] });
  const faults: unknown[] = [];
  const lost = new Error("no ink");
  const [bare] = await botThat([], faults, () => Promise.reject(lost)).hear(run("count"));
  expect(bare?.reply).toMatchObject({ lines: ["entered 1 times"], files: [] });
  expect(faults).toEqual([lost]);
});

test("records that cannot be read are said to whoever asked, and not under everybody's small talk", async () => {
  const faults: unknown[] = [];
  const bot = botThat([], faults, undefined, true);
  expect(text(await bot.hear(run("count")))).toEqual([["my fault"]]);
  const say = (addressed: boolean, channel: "other" | "dm") => {
    const { member, name, event, admin, language } = run("count");
    const where = { group: channel === "dm" ? null : ("g1" as never), channel, id: "c" } as const;
    return bot.hear({ member, name, event, admin, language, where, kind: "say", message: "1", text: "lovely evening", addressed, answers: null });
  };
  expect([await say(false, "other"), text(await say(true, "other")), text(await say(false, "dm"))]).toEqual([[], [["my fault"]], [["my fault"]]]);
  expect(faults).toHaveLength(4);
});
