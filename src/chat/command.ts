// A command is data: its options, who may run it, who sees the answer, and the work.
// One list of options gives the platform's registration, the parser and the help.

import type { ZodType } from "zod";
import type { Attached, Said, Visibility } from "./reply.ts";

/** What an option takes. "text" with `complete` offers suggestions while the member types; of a "file" the command gets the text. */
export type Option =
  | { readonly takes: "text"; readonly required: boolean; readonly complete?: Completion }
  /** `also`: what else people type for a choice, in lower case without full stops. */
  | {
      readonly takes: "choice";
      readonly required: boolean;
      readonly choices: readonly string[];
      readonly also?: Readonly<Record<string, readonly string[]>>;
    }
  | { readonly takes: "flag"; readonly required: false }
  | { readonly takes: "file"; readonly required: false };

/** What is suggested while a member types. */
export type Completion = "bike" | "item" | "unit" | "zone" | "spec" | "model";

export type Options = Readonly<Record<string, Option>>;

type ValueOf<O extends Option> = O extends { takes: "choice"; choices: readonly (infer C)[] } ? C : O extends { takes: "flag" } ? boolean : string;
/** The parsed input of a command with these options. */
export type InputOf<O extends Options> = {
  readonly [K in keyof O as O[K]["required"] extends true ? K : never]: ValueOf<O[K]>;
} & { readonly [K in keyof O as O[K]["required"] extends true ? never : K]?: ValueOf<O[K]> };

/** A member's mistake is a value: `refused` carries why, as data. */
export type Outcome<Out, Refusal> = { readonly is: "done"; readonly value: Out } | { readonly is: "refused"; readonly why: Refusal };

/**
 * One thing a member can ask for. `Ctx` is what the work needs (store, clock, actor), `W` the words of the member's language, `R` the refusals.
 * `sub` null: the command itself; else `/name sub`.
 */
export type Command<Ctx, W, R, O extends Options = Options, Out = unknown> = {
  readonly name: string;
  readonly sub: string | null;
  readonly options: O;
  /** Needs the platform's manage-server permission. */
  readonly adminOnly: boolean;
  readonly visibility: (input: InputOf<O>) => Visibility;
  /** The answer is walked through over days: a message that stays, to the member alone. */
  readonly lasting?: (input: InputOf<O>) => boolean;
  /** Shape of `data` in JSON lines. */
  readonly data: ZodType<Out>;
  readonly run: (ctx: Ctx, input: InputOf<O>) => Promise<Outcome<Out, R>>;
  readonly say: (out: Out, words: W) => Said;
  /** Files that go with the words. What cannot be drawn is left out; the words stand by themselves. */
  readonly draw?: (out: Out, words: W) => Promise<readonly Attached[]>;
};

/** A command of any options, as lists hold it. */
export type AnyCommand<Ctx, W, R> = Omit<Command<Ctx, W, R>, "visibility" | "lasting" | "run" | "say" | "draw" | "data"> & {
  readonly data: ZodType<unknown>;
  readonly visibility: (input: never) => Visibility;
  readonly lasting?: (input: never) => boolean;
  readonly run: (ctx: Ctx, input: never) => Promise<Outcome<unknown, R>>;
  readonly say: (out: never, words: W) => Said;
  readonly draw?: (out: never, words: W) => Promise<readonly Attached[]>;
};

/** Help texts of a command, from words/: what it does and what each option takes. */
export type CommandWords = { readonly does: string; readonly options: Readonly<Record<string, string>>; readonly example: string };

/** Types a command once for a house's context, words and refusals: `defineFor<Ctx, Words, Refusal>()({ ... })`. */
export const defineFor =
  <Ctx, W, R>() =>
  <const O extends Options, Out>(command: Command<Ctx, W, R, O, Out>): Command<Ctx, W, R, O, Out> =>
    command;
