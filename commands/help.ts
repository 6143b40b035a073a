// /help: what the bot can do, from the same data that registers and parses the commands; and how a thing is measured, with the commands that speak of it.

import { z } from "zod";
import type { Options } from "../src/chat/command.ts";
import { fullName } from "../src/chat/registration.ts";
import type { ReadingKind } from "../src/core/reading/kinds.ts";
import { kindsAsked } from "../src/usecases/kinds-asked.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { kind } from "./shapes.ts";

/** Commands told of beside how a thing is measured. */
const MOST_TOLD = 6;

type Listed = { readonly name: string; readonly sub: string | null; readonly options: Options };
type Help = {
  readonly commands: readonly string[];
  readonly one: string | null;
  readonly required: readonly string[];
  readonly optional: readonly string[];
  /** What was asked about instead of a command, and the kinds of reading that it names. */
  readonly about?: { readonly typed: string; readonly kinds: readonly ReadingKind[] };
};

/** Help over the other commands; it explains itself as well. */
export const helpOver = (others: readonly Listed[]) =>
  define({
    name: "help",
    sub: null,
    options: { command: { takes: "text", required: false } },
    adminOnly: false,
    visibility: () => "private",
    data: shapeOf<Help>(
      z.object({
        ...{ commands: z.array(z.string()), one: z.string().nullable(), required: z.array(z.string()), optional: z.array(z.string()) },
        about: z.object({ typed: z.string(), kinds: z.array(kind) }).optional(),
      }),
    ),
    run: async (ctx, { command }) => {
      const names = [...others.map(fullName), "help"];
      if (command === undefined) return { is: "done", value: { commands: names, one: null, required: [], optional: [] } };
      const typed = command.toLowerCase().replace(/^\//u, "").trim();
      const one = others.find((each) => fullName(each) === typed);
      // "/help bike": all that begins so.
      const below = names.filter((name) => name.startsWith(`${typed} `));
      if (one === undefined && below.length > 0) return { is: "done", value: { commands: below, one: null, required: [], optional: [] } };
      const kinds = one === undefined && typed !== "help" ? kindsAsked(ctx, typed) : [];
      if (kinds.length > 0) return { is: "done", value: { commands: names, one: null, required: [], optional: [], about: { typed, kinds } } };
      if (one === undefined && typed !== "help") {
        const under = names.filter((name) => name.startsWith(typed.slice(0, 2)));
        return { is: "refused", why: { why: "unknown command", typed: `/${typed}`, nearest: under.slice(0, 5) } };
      }
      const options = Object.entries(one?.options ?? {});
      return {
        is: "done",
        value: {
          commands: names,
          one: typed,
          required: options.filter(([, o]) => o.required).map(([n]) => n),
          optional: options.filter(([, o]) => !o.required).map(([n]) => n),
        },
      };
    },
    say: (help, words) => {
      const of = (name: string) =>
        words.commands[name as keyof typeof words.commands] as { does: string; options: Readonly<Record<string, string>>; example: string };
      if (help.about !== undefined) {
        const { typed, kinds } = help.about;
        const speaks = help.commands.filter((name) =>
          `${of(name).does} ${Object.values(of(name).options).join(" ")} ${of(name).example}`.toLowerCase().includes(typed),
        );
        return said([...kinds.map(words.judge.howToOf), ...speaks.slice(0, MOST_TOLD).map((name) => words.help.line(name, of(name).does))]);
      }
      if (help.one === null)
        return said([words.help.intro, ...help.commands.map((name) => words.help.line(name, of(name).does))], { caution: words.help.caution });
      const { does, options, example } = of(help.one);
      const lines = [...help.required, ...help.optional].map((option) => words.help.option(option, options[option] ?? "", help.required.includes(option)));
      return said([words.help.line(help.one, does), ...lines, words.help.example(example)]);
    },
  });
