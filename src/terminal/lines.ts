// JSON lines: one object a line in, one or more out, then a line that says it is done. For scripts and tests.

import { createInterface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import { z } from "zod";
import { parseCommandLine, parseSoFar } from "../chat/command-line.ts";
import type { Answer, From, Inbound } from "../chat/inbound.ts";
import type { Action } from "../chat/reply.ts";
import { withFiles } from "./file-options.ts";
import { type Arrived, eventOf, memberOf, placeOf, type Room, textOf, whereOf } from "./room.ts";

const id = z.string().min(1).max(60);
const speaker = {
  as: id,
  in: z.string().default("g1"),
  id: id.optional(),
  mention: z.boolean().default(false),
  admin: z.boolean().default(false),
  lang: z.string().nullable().default(null),
};
const input = z.union([
  z.strictObject({ ...speaker, say: z.string(), reply: id.optional(), files: z.array(z.string().max(200)).max(10).default([]) }),
  z.strictObject({ ...speaker, run: z.string() }),
  z.strictObject({ ...speaker, press: z.string() }),
  z.strictObject({ ...speaker, pick: z.string(), values: z.array(z.string()) }),
  z.strictObject({ ...speaker, fill: z.string(), fields: z.record(z.string(), z.string()) }),
  z.strictObject({ ...speaker, edit: id, say: z.string() }),
  z.strictObject({ ...speaker, delete: id }),
  z.strictObject({ ...speaker, menu: id }),
  z.strictObject({ ...speaker, complete: z.string() }),
  z.strictObject({ advance: z.string(), asleep: z.boolean().default(false) }),
]);
type Input = z.infer<typeof input>;

/** Reads lines until the input ends. Lines are answered in order, one after another. */
export async function runLines(room: Room, from: Readable, to: Writable): Promise<void> {
  let line = 0;
  const write = (answer: object): void => void to.write(`${JSON.stringify({ line, ...answer })}\n`);
  for await (const text of createInterface({ input: from, crlfDelay: Number.POSITIVE_INFINITY })) {
    line++;
    if (text.trim() !== "") {
      try {
        for (const answer of await answered(room, text)) write(answer);
      } catch (error) {
        write({ error: error instanceof Error ? error.message : String(error) });
      }
    }
    write({ done: true });
  }
}

async function answered(room: Room, text: string): Promise<readonly object[]> {
  const read = input.safeParse(parsed(text));
  if (!read.success) throw new Error(`not an input: ${z.prettifyError(read.error).split("\n")[0] ?? ""}`);
  const given = read.data;
  if ("advance" in given) return Promise.all((await room.advance(given.advance, given.asleep)).map((arrived) => arrivedLine(room, arrived)));
  const inbound = await inboundOf(room, given);
  return Promise.all((await room.hear(inbound)).map((answer) => answerLine(room, answer)));
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new Error("not a JSON object", { cause });
  }
}

async function inboundOf(room: Room, given: Exclude<Input, { advance: string }>): Promise<Inbound> {
  const where = whereOf(given.in);
  if (where === null) throw new Error(`no such place: ${given.in}`);
  const said = given.id ?? room.newId();
  const from: From = { member: memberOf(given.as), name: given.as, where, event: eventOf(said), admin: given.admin, language: given.lang };
  const addressed = given.mention;
  if ("edit" in given) {
    await remember(room, given.as, given.edit, given.in, given.say);
    return { ...from, event: eventOf(given.id ?? room.newId()), kind: "edit", message: given.edit, text: given.say, addressed, answers: null };
  }
  if ("say" in given) {
    await remember(room, given.as, said, given.in, given.say);
    const answers = given.reply === undefined ? null : { message: given.reply, actions: [] };
    return { ...from, kind: "say", message: said, text: given.say, addressed, answers, files: given.files };
  }
  if ("run" in given) return { ...from, kind: "run", ...(await withFiles(room.commands, parseCommandLine(given.run, room.commands))) };
  if ("press" in given) return { ...from, kind: "press", action: given.press };
  if ("pick" in given) return { ...from, kind: "pick", action: given.pick, values: given.values };
  if ("fill" in given) return { ...from, kind: "fill", action: given.fill, fields: given.fields };
  if ("delete" in given) return { ...from, kind: "delete", message: given.delete };
  if ("menu" in given) {
    const message = await room.said(given.menu);
    if (message === null) throw new Error(`no such message: ${given.menu}`);
    return { ...from, kind: "menu", message: message.id, text: message.text, author: memberOf(message.author), edited: false };
  }
  const soFar = parseSoFar(given.complete, room.commands);
  return { ...from, kind: "complete", command: soFar.command, sub: soFar.sub, option: soFar.option ?? "", typed: soFar.typed };
}

async function remember(room: Room, author: string, id: string, place: string, text: string): Promise<void> {
  const before = await room.said(id);
  if (before !== null && before.author !== author) throw new Error(`message ${id} is somebody else's`);
  await room.remember({ id, author, place, text });
}

async function answerLine(room: Room, answer: Answer): Promise<object> {
  const { reply } = answer;
  return {
    to: answer.to,
    in: placeOf(answer.where),
    visibility: reply?.visibility ?? (answer.suggestions === null ? "shared" : "private"),
    text: reply === null ? null : textOf(reply),
    react: answer.react,
    actions: (reply?.actions ?? []).map(actionLine),
    files: await Promise.all((reply?.files ?? []).map(async (file) => ({ name: file.name, type: file.type, path: await room.keep(file), alt: file.alt }))),
    data: answer.data,
  };
}

const arrivedLine = (room: Room, arrived: Arrived): Promise<object> =>
  answerLine(room, {
    to: arrived.reply.visibility === "shared" ? null : arrived.to,
    where: arrived.where,
    react: null,
    reply: arrived.reply,
    data: arrived.reply.data,
    suggestions: null,
  });

function actionLine(action: Action): object {
  const { id: actionId, label, kind } = action;
  if (action.kind === "pick") return { id: actionId, label, kind, options: action.options };
  return action.kind === "form" ? { id: actionId, label, kind, fields: action.form.fields } : { id: actionId, label, kind };
}
