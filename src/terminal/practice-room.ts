// The practice room: type as a member would, press numbered buttons, move the clock forward.

import { createInterface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import { parseCommandLine } from "../chat/command-line.ts";
import type { Answer, From, Inbound, Where } from "../chat/inbound.ts";
import type { Action, Field } from "../chat/reply.ts";
import { DEMO, DEMO_MEMBERS } from "./demo.ts";
import { withFiles } from "./file-options.ts";
import { type Arrived, eventOf, memberOf, placeOf, type Room, textOf, whereOf } from "./room.ts";

/** The room's sentences, from words/. */
export type RoomWords = typeof import("../words/en/room.ts").roomWords;
type Waiting =
  | { readonly for: "line" }
  | { readonly for: "choice"; readonly action: Extract<Action, { kind: "pick" }> }
  | { readonly for: "field"; readonly action: Extract<Action, { kind: "form" }>; readonly at: number; readonly filled: Readonly<Record<string, string>> };

/** Lets go of what was begun to be filled in or chosen. */
const LEAVE = ":leave";

export type RoomStart = {
  readonly words: RoomWords;
  readonly file: string;
  readonly fresh: boolean;
  readonly today: () => { readonly day: string; readonly time: string };
};

/** Runs until :quit or the input ends. */
export async function runPracticeRoom(room: Room, start: RoomStart, from: Readable, to: Writable): Promise<void> {
  const { words } = start;
  const print = (...lines: readonly string[]): void => void to.write(`${lines.join("\n")}\n`);
  let member = "you";
  let where: Where = { group: null, channel: "dm", id: "dm" };
  let buttons: readonly Action[] = [];
  let waiting = { for: "line" } as Waiting;
  let last: { readonly id: string; readonly text: string } | null = null;

  const origin = (): From => ({ member: memberOf(member), name: member, where, event: eventOf(room.newId()), admin: true, language: null });
  const show = async (answers: readonly Answer[]): Promise<void> => {
    if (answers.length === 0) print(words.silence);
    for (const { react, reply, to: only } of answers) {
      if (react !== null && reply === null) print(words.reactions[react]);
      if (reply === null) continue;
      if (only === null && where.channel !== "dm") print(words.toEveryone);
      print(textOf(reply));
      for (const file of reply.files) print(words.file(file.type, file.alt, await room.keep(file)));
      buttons = reply.actions;
      reply.actions.forEach((action, n) => {
        print(`  [${n + 1}] ${action.label}`);
      });
    }
  };
  const arrive = async (arrived: readonly Arrived[]): Promise<void> => {
    for (const each of arrived) {
      print("", words.arrived(each.to, placeOf(each.where)));
      await show([{ to: each.to, where: each.where, react: null, reply: each.reply, data: null, suggestions: null }]);
    }
  };
  const hear = async (inbound: Inbound): Promise<void> => show(await room.hear(inbound));

  const press = async (n: string): Promise<void> => {
    const action = buttons[Number(n) - 1];
    if (action === undefined) return print(words.noButton(n));
    switch (action.kind) {
      case "press":
        return hear({ ...origin(), kind: "press", action: action.id });
      case "pick":
        waiting = { for: "choice", action };
        return print(words.pick, ...action.options.map((option, at) => `  ${at + 1}. ${option.label}`));
      case "form":
        waiting = { for: "field", action, at: 0, filled: {} };
        print(words.wayOut);
        return ask(action.form.fields[0]);
    }
  };
  const ask = (field: Field | undefined): void => {
    if (field === undefined) return;
    print(
      words.field(field.label, field.hint, field.required, field.kind === "paragraph"),
      ...field.options.map((option, at) => `  ${at + 1}. ${option.label}`),
    );
  };
  const choose = async (line: string, action: Extract<Action, { kind: "pick" }>): Promise<void> => {
    waiting = { for: "line" };
    const option = action.options[Number(line) - 1];
    if (option === undefined) return print(words.noButton(line));
    return hear({ ...origin(), kind: "pick", action: action.id, values: [option.value] });
  };
  const fill = async (line: string, state: Extract<Waiting, { for: "field" }>): Promise<void> => {
    const field = state.action.form.fields[state.at];
    if (field === undefined) return;
    const option = field.options[Number(line) - 1] ?? field.options.find((each) => each.label.toLowerCase() === line.toLowerCase());
    if (field.options.length > 0 && option === undefined && (line !== "" || field.required)) return ask(field);
    const chosen = field.options.length > 0 ? (option?.value ?? "") : field.kind === "paragraph" ? line.replaceAll("\\n", "\n") : line;
    const filled = { ...state.filled, [field.name]: chosen };
    const next = state.action.form.fields[state.at + 1];
    waiting = next === undefined ? { for: "line" } : { ...state, at: state.at + 1, filled };
    return next === undefined ? hear({ ...origin(), kind: "fill", action: state.action.id, fields: filled }) : ask(next);
  };

  const own = async (line: string): Promise<boolean> => {
    const [word = "", ...rest] = line.slice(1).trim().split(/\s+/u);
    const given = rest.join(" ");
    switch (word.toLowerCase()) {
      case "quit":
      case "q":
        return false;
      case "help":
        print(...words.help);
        break;
      case "press":
        await press(given);
        break;
      case "as":
        if (/^[\p{L}\p{N}_-]{1,32}$/u.test(given)) member = given;
        print(/^[\p{L}\p{N}_-]{1,32}$/u.test(given) ? words.speaking(member, placeOf(where)) : words.notAName(given));
        break;
      case "in": {
        const place = whereOf(given);
        if (place !== null) where = place;
        print(place === null ? words.notAPlace(given) : words.speaking(member, placeOf(where)));
        break;
      }
      case "advance":
        await advance(given);
        break;
      case "edit":
        if (last === null) print(words.nothingToEdit);
        else await hear({ ...origin(), kind: "edit", message: last.id, text: given, addressed: false, answers: null });
        break;
      case "delete":
        if (last === null) print(words.nothingToEdit);
        else await hear({ ...origin(), kind: "delete", message: last.id });
        break;
      case "demo":
        await demo();
        break;
      case "leave":
        print(words.nothingToLeave);
        break;
      default:
        print(words.unknown(`:${word}`));
    }
    return true;
  };
  const advance = async (given: string): Promise<void> => {
    const asleep = /\sasleep$/u.test(given);
    const span = given.replace(/\sasleep$/u, "");
    try {
      await arrive(await room.advance(span, asleep));
      const { day, time } = start.today();
      print(words.now(day, time));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      print(words.notADuration(span));
    }
  };
  const demo = async (): Promise<void> => {
    for (const step of DEMO) {
      const as = {
        member: memberOf(step.as),
        name: step.as,
        where: { group: null, channel: "dm", id: "dm" } as const,
        event: eventOf(`demo-${DEMO.indexOf(step)}`),
        admin: true,
        language: null,
      };
      if ("run" in step) await room.hear({ ...as, kind: "run", ...parseCommandLine(step.run, room.commands) });
      else await room.hear({ ...as, kind: "say", message: `demo-${DEMO.indexOf(step)}`, text: step.say, addressed: true, answers: null });
    }
    print(words.demoDone(DEMO_MEMBERS));
  };
  const spoken = async (line: string): Promise<void> => {
    if (line.startsWith("/")) return hear({ ...origin(), kind: "run", ...(await withFiles(room.commands, parseCommandLine(line, room.commands))) });
    if (/^\d{1,2}$/u.test(line) && buttons[Number(line) - 1] !== undefined) return press(line);
    const event = origin();
    last = { id: event.event, text: line };
    await room.remember({ id: event.event, author: member, place: placeOf(where), text: line });
    return hear({ ...event, kind: "say", message: event.event, text: line, addressed: false, answers: null });
  };

  const { day } = start.today();
  print(...(start.fresh ? words.welcome(member, start.file) : words.welcomeBack(member, day)));
  await arrive(await room.tick());
  const reader = createInterface({ input: from, output: to, terminal: false, prompt: "> " });
  reader.prompt();
  for await (const raw of reader) {
    const line = raw.trim();
    // A command, of the bot or of the room, is no answer to what it asks for: that is let go, and nothing of it sent.
    if (waiting.for !== "line" && /^[/:]\p{L}/u.test(line)) {
      waiting = { for: "line" };
      print(words.left);
      if (line.toLowerCase() === LEAVE) {
        reader.prompt();
        continue;
      }
    }
    if (waiting.for === "choice") await choose(line, waiting.action);
    else if (waiting.for === "field") await fill(line, waiting);
    else if (line.startsWith(":")) {
      if (!(await own(line))) break;
    } else if (line !== "") await spoken(line);
    reader.prompt();
  }
  reader.close();
  print(words.bye);
}
