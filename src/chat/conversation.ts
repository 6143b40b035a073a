// The conversation: one input in, its answers out, the same for every face.
// Not here: what is answered (commands/), and how it is shown (discord/, terminal/).

import type { MemberId } from "../core/ids.ts";
import { type ActionName, parseAction } from "./action-names.ts";
import type { AnyCommand, Option, Outcome } from "./command.ts";
import type { AnyHandler, Pressed } from "./handler.ts";
import type { Answer, Conversation, From, Inbound, Opened } from "./inbound.ts";
import { type OptionProblem, parseOptions } from "./options.ts";
import type { MessageAnswer, Reply, Said, Visibility } from "./reply.ts";

/** What the conversation is made of. `Ctx` is handed to the work; `W` are the words of the speaker's language. */
export type Parts<Ctx, W, R> = {
  readonly commands: readonly AnyCommand<Ctx, W, R>[];
  readonly handlers: Readonly<Record<ActionName, AnyHandler<Ctx, W, R>>>;
  readonly messages: {
    readonly say: (ctx: Ctx, words: W, input: Extract<Inbound, { kind: "say" | "edit" }>) => Promise<MessageAnswer | null>;
    readonly deleted: (ctx: Ctx, words: W, input: Extract<Inbound, { kind: "delete" }>) => Promise<(Said & { readonly data: unknown }) | null>;
    readonly menu: (ctx: Ctx, words: W, input: Extract<Inbound, { kind: "menu" }>) => Promise<MessageAnswer | null>;
  };
  /** Words for whoever cannot be looked up, since the records cannot be read. */
  readonly usualWords: () => W;
  /** Settles who is speaking, in which words. */
  readonly enter: (from: From) => Promise<{ readonly ctx: Ctx; readonly words: W; readonly admin: boolean }>;
  readonly complete: (ctx: Ctx, option: Option, typed: string) => Promise<readonly string[]>;
  readonly refuse: (why: R, words: W) => Said;
  readonly problem: (problem: OptionProblem, words: W) => R;
  readonly unknownCommand: (typed: string, nearest: readonly string[]) => R;
  readonly gone: () => R;
  readonly isRepeat: (why: R) => boolean;
  readonly adminsOnly: () => R;
  /** Another write came between, and all of this input was undone: it may be tried again. */
  readonly crossed: (error: unknown) => boolean;
  /** A fault of ours: logged with an id, and the member hears one plain line. */
  readonly fault: (error: unknown, input: Inbound, words: W) => Said;
};

/** Inputs of one member are taken one after another, so that two quick messages cannot cross. */
export function conversationOf<Ctx, W, R>(parts: Parts<Ctx, W, R>): Conversation {
  const last = new Map<MemberId, Promise<unknown>>();
  return {
    open: (press) => opened(parts, press),
    visibilityOf: (inbound) => visibilityOf(parts, inbound),
    lasts: (inbound) => lasts(parts, inbound),
    settles: (inbound) => handlerOf(parts, inbound)?.settles === true,
    hear(inbound) {
      const before = last.get(inbound.member) ?? Promise.resolve();
      const now = before.then(() => answer(parts, inbound));
      const settled = now
        .then(
          () => undefined,
          () => undefined,
        )
        .then(() => {
          if (last.get(inbound.member) === settled) last.delete(inbound.member);
        });
      last.set(inbound.member, settled);
      return now;
    },
  };
}

/** Before the work: a command by its options, an action by its handler; whatever is wrong with either is private. */
function visibilityOf<Ctx, W, R>(parts: Parts<Ctx, W, R>, inbound: Inbound): Visibility {
  if (inbound.kind === "run") {
    const command = commandOf(parts, inbound);
    const parsed = command === undefined ? null : parseOptions(command.options, inbound.options);
    return command === undefined || parsed?.is !== "parsed" ? "private" : command.visibility(parsed.input as never);
  }
  return handlerOf(parts, inbound)?.visibility ?? "private";
}

function lasts<Ctx, W, R>(parts: Parts<Ctx, W, R>, inbound: Inbound): boolean {
  if (inbound.kind !== "run") return handlerOf(parts, inbound)?.lasting === true;
  const command = commandOf(parts, inbound);
  const parsed = command === undefined ? null : parseOptions(command.options, inbound.options);
  return parsed?.is === "parsed" && command?.lasting?.(parsed.input as never) === true;
}

function handlerOf<Ctx, W, R>(parts: Parts<Ctx, W, R>, inbound: Inbound): AnyHandler<Ctx, W, R> | null {
  const action = inbound.kind === "press" || inbound.kind === "pick" || inbound.kind === "fill" ? parseAction(inbound.action) : null;
  return action === null ? null : parts.handlers[action.action];
}

async function opened<Ctx, W, R>(parts: Parts<Ctx, W, R>, press: From & { readonly action: string }): Promise<Opened> {
  const action = parseAction(press.action);
  const handler = action === null ? null : parts.handlers[action.action];
  if (action === null || handler?.kind !== "form") return null;
  let said = parts.usualWords();
  try {
    const { ctx, words } = await parts.enter(press);
    said = words;
    const outcome = await handler.open(ctx, action, words);
    if (outcome.is === "done") return { form: outcome.value };
    return { refused: answersOf(press, { ...parts.refuse(outcome.why, words), visibility: "private", data: { refused: outcome.why }, refused: true }) };
  } catch (error) {
    const input: Inbound = { ...press, kind: "press" };
    return { refused: answersOf(press, { ...parts.fault(error, input, said), visibility: "private", data: { fault: true }, refused: true }) };
  }
}

const commandOf = <Ctx, W, R>(parts: Parts<Ctx, W, R>, run: { readonly command: string; readonly sub: string | null }) =>
  parts.commands.find((each) => each.name === run.command && each.sub === run.sub);

/** An input that crossed with another write is taken once more, from the facts as they are now; a second time it is a fault. */
async function answer<Ctx, W, R>(parts: Parts<Ctx, W, R>, inbound: Inbound, tries = 2): Promise<readonly Answer[]> {
  let words: W | null = null;
  try {
    const entered = await parts.enter(inbound);
    words = entered.words;
    return await answered(parts, inbound, entered);
  } catch (error) {
    if (tries > 1 && parts.crossed(error)) return answer(parts, inbound, tries - 1);
    const said = parts.fault(error, inbound, words ?? parts.usualWords());
    // Who knows nobody cannot tell a reading from small talk, and does not answer all of it.
    return words === null && isOverheard(inbound) ? [] : answersOf(inbound, { ...said, visibility: "private", data: { fault: true } });
  }
}

/** Said where others talk too, and not to the bot; or nothing that waits for an answer. */
const isOverheard = (inbound: Inbound): boolean =>
  inbound.kind === "delete" ||
  inbound.kind === "complete" ||
  ((inbound.kind === "say" || inbound.kind === "edit") && !inbound.addressed && inbound.where.channel !== "dm");

function answersOf(inbound: From, reply: Reply | null, react: Answer["react"] = null, data: unknown = reply?.data ?? null): readonly Answer[] {
  return reply === null && react === null
    ? []
    : [{ to: reply?.visibility === "private" ? inbound.member : null, where: inbound.where, react, reply, data, suggestions: null }];
}

async function answered<Ctx, W, R>(
  parts: Parts<Ctx, W, R>,
  inbound: Inbound,
  { ctx, words, admin }: { readonly ctx: Ctx; readonly words: W; readonly admin: boolean },
): Promise<readonly Answer[]> {
  const to = (reply: Reply | null, react: Answer["react"] = null, data: unknown = reply?.data ?? null) => answersOf(inbound, reply, react, data);
  const refusal = (why: R): Reply => ({
    ...{ ...parts.refuse(why, words), visibility: "private", data: { refused: why }, refused: true },
    ...(parts.isRepeat(why) ? { repeated: true } : {}),
  });
  switch (inbound.kind) {
    case "say":
    case "edit": {
      const heard = await parts.messages.say(ctx, words, inbound);
      return heard === null ? [] : to(heard.reply, heard.react, heard.data);
    }
    case "menu": {
      const heard = await parts.messages.menu(ctx, words, inbound);
      return heard === null ? [] : to(heard.reply, heard.react, heard.data);
    }
    case "delete": {
      const said = await parts.messages.deleted(ctx, words, inbound);
      return said === null ? [] : to({ ...said, visibility: "private" });
    }
    case "run": {
      const command = commandOf(parts, inbound);
      if (command === undefined)
        return to(
          refusal(parts.unknownCommand(`/${inbound.command}${inbound.sub === null ? "" : ` ${inbound.sub}`}`, nearest(parts.commands, inbound.command))),
        );
      if (command.adminOnly && !admin) return to(refusal(parts.adminsOnly()));
      if (inbound.unread !== undefined) return to(refusal(parts.problem({ ...inbound.unread, choices: [] }, words)));
      const parsed = parseOptions(command.options, inbound.options);
      if (parsed.is === "problem") return to(refusal(parts.problem(parsed.why, words)));
      const visibility = command.visibility(parsed.input as never);
      const outcome = await command.run(ctx, parsed.input as never);
      const reply = replyOf(outcome, visibility, (out) => command.say(out as never, words), refusal);
      const { draw } = command;
      if (outcome.is === "refused" || draw === undefined) return to(reply);
      // A picture that fails is a fault of ours, logged; the words are no worse for it.
      const files = await draw(outcome.value as never, words).catch((error: unknown) => {
        parts.fault(error, inbound, words);
        return [];
      });
      return to({ ...reply, files: [...reply.files, ...files] });
    }
    case "press":
      return to(await pressed(parts, ctx, words, inbound.action, { values: [], fields: {} }, refusal));
    case "pick":
      return to(await pressed(parts, ctx, words, inbound.action, { values: inbound.values, fields: {} }, refusal));
    case "fill":
      return to(await pressed(parts, ctx, words, inbound.action, { values: [], fields: inbound.fields }, refusal));
    case "complete": {
      const option = commandOf(parts, inbound)?.options[inbound.option];
      const suggestions = option === undefined ? [] : await parts.complete(ctx, option, inbound.typed);
      return [{ to: inbound.member, where: inbound.where, react: null, reply: null, data: { suggestions }, suggestions }];
    }
  }
}

function replyOf<R>(outcome: Outcome<unknown, R>, visibility: Visibility, say: (out: unknown) => Said, refusal: (why: R) => Reply): Reply {
  return outcome.is === "refused" ? refusal(outcome.why) : { ...say(outcome.value), visibility, data: outcome.value };
}

async function pressed<Ctx, W, R>(
  parts: Parts<Ctx, W, R>,
  ctx: Ctx,
  words: W,
  id: string,
  given: Pick<Pressed, "values" | "fields">,
  refusal: (why: R) => Reply,
): Promise<Reply> {
  const action = parseAction(id);
  if (action === null) return refusal(parts.gone());
  const handler = parts.handlers[action.action];
  const outcome = await handler.run(ctx, { subject: action.subject, rev: action.rev, ...given });
  return replyOf(outcome, handler.visibility, (out) => handler.say(out as never, words), refusal);
}

/** Command names that begin alike or differ by little, for "did you mean". */
function nearest(commands: readonly { readonly name: string; readonly sub: string | null }[], typed: string): string[] {
  const names = [...new Set(commands.map((command) => (command.sub === null ? command.name : `${command.name} ${command.sub}`)))];
  const alike = names.filter((name) => name.startsWith(typed.slice(0, 2)) || name.split(" ")[0] === typed);
  const close = names.filter((name) => name[0] === typed[0] && Math.abs(name.length - typed.length) < 2);
  return [...new Set([...alike, ...close])].slice(0, 4);
}
