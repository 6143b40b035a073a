// The bot put together: store, words, conversation and reminders. Wiring without decisions.

import type { ActionName } from "./chat/action-names.ts";
import type { AnyCommand } from "./chat/command.ts";
import { conversationOf } from "./chat/conversation.ts";
import type { AnyHandler } from "./chat/handler.ts";
import type { Conversation, From, Inbound } from "./chat/inbound.ts";
import type { MessageAnswer, Said } from "./chat/reply.ts";
import type { Clock } from "./clock.ts";
import { localDateAt, zone } from "./core/calendar/zones.ts";
import type { GroupId } from "./core/ids.ts";
import type { Spoken } from "./core/reading/vocabulary.ts";
import type { Refusal } from "./core/refusal.ts";
import type { Log } from "./log.ts";
import type { Deliver } from "./reminders/deliver.ts";
import { type Reminders, remindersOf } from "./reminders/tick.ts";
import { Conflict, type Store } from "./store/store.ts";
import { writeTrouble } from "./store/trouble.ts";
import { completions } from "./usecases/complete.ts";
import { actorOf, type Ctx, isSouth, todayOf, zoneOfBike } from "./usecases/context.ts";
import { GERMAN_VOCABULARY } from "./words/de/vocabulary.ts";
import { english, type Words } from "./words/en/english.ts";
import { englishItemName, englishWorkName } from "./words/en/item-names.ts";
import { ENGLISH_VOCABULARY } from "./words/en/vocabulary.ts";

/** What commands/ supplies. */
export type Supplied = {
  /** The message that leads a new server's admin through set-up. */
  readonly saySetUp: (group: string, hearsChannels: boolean, words: Words) => Said;
  readonly commands: readonly AnyCommand<Ctx, Words, Refusal>[];
  readonly handlers: Readonly<Record<ActionName, AnyHandler<Ctx, Words, Refusal>>>;
  readonly messages: {
    readonly say: (ctx: Ctx, words: Words, input: Extract<Inbound, { kind: "say" | "edit" }>) => Promise<MessageAnswer | null>;
    readonly deleted: (ctx: Ctx, words: Words, input: Extract<Inbound, { kind: "delete" }>) => Promise<(Said & { readonly data: unknown }) | null>;
    readonly menu: (ctx: Ctx, words: Words, input: Extract<Inbound, { kind: "menu" }>) => Promise<MessageAnswer | null>;
  };
};

export type Bot = { readonly conversation: Conversation; readonly reminders: Reminders; readonly now: Clock["now"] };
/** What the bot must ask of the face it speaks through. */
export type FacePowers = {
  /** Does the face hear whole channels, or only what is addressed to the bot? */
  readonly hearsChannels: () => boolean;
  readonly mayManage: (from: From, group: GroupId) => Promise<boolean>;
};
export type BotParts = Supplied & {
  readonly store: Store;
  readonly clock: Clock;
  readonly newId: () => string;
  readonly log: Log;
  readonly deliver: Deliver;
} & FacePowers;

const LOCALE = "en-GB";

/** Puts the bot together on an open store. */
/** Languages that messages are read in beside English; answers are English. */
const ALSO_READ: readonly Spoken[] = [{ vocabulary: GERMAN_VOCABULARY, numbers: { decimal: ",", group: "." } }];

export function botOf(parts: BotParts): Bot {
  const { store, clock, newId, log } = parts;
  const plain = (line: string): Said => ({ title: null, lines: [line], caution: null, actions: [], files: [] });
  const conversation = conversationOf<Ctx, Words, Refusal>({
    ...parts,
    usualWords: () => english({ locale: LOCALE, distance: null }, localDateAt(clock.now(), zone("UTC"))),
    async enter(from: From) {
      const stored = await store.one((q) => q.members.speaker(from.member, from.where.group));
      const who = actorOf(
        { member: from.member, name: from.name, group: from.where.group, channel: from.where.channel, place: from.where.id, admin: from.admin },
        stored,
      );
      const ctx: Ctx = {
        store,
        now: clock.now(),
        newId,
        who,
        event: from.event,
        hearsChannels: parts.hearsChannels(),
        mayManage: (group) => parts.mayManage(from, group),
        vocabulary: ENGLISH_VOCABULARY,
        also: ALSO_READ,
        itemName: englishItemName,
        workName: englishWorkName,
      };
      return { ctx, words: english({ locale: LOCALE, distance: who.distance, south: who.south }, todayOf(ctx)), admin: who.admin };
    },
    complete: async (ctx, option, typed) => {
      if (option.takes === "choice") return option.choices.filter((choice) => choice.toLowerCase().startsWith(typed.toLowerCase()));
      return option.takes === "text" && option.complete !== undefined ? completions(ctx, option.complete, typed) : [];
    },
    refuse: (why, words) => plain(words.refusal(why)),
    problem: (problem) => ({ why: "option", ...problem }),
    unknownCommand: (typed, nearest) => ({ why: "unknown command", typed, nearest }),
    gone: () => ({ why: "gone" }),
    isRepeat: ({ why }) => why === "heard already",
    adminsOnly: () => ({ why: "admins only" }),
    crossed: (error) => error instanceof Conflict,
    fault(error, input, words) {
      const id = newId();
      const trouble = writeTrouble(error);
      log.error({ id, kind: input.kind, err: error, trouble }, "an input failed");
      return plain(trouble === null ? words.fault(id) : words.cannotWrite(trouble));
    },
  });
  const reminders = remindersOf(
    store,
    {
      deliver: parts.deliver,
      clock: clock.now,
      log,
      itemName: englishItemName,
      wordsFor: (member, home, today) =>
        english({ locale: LOCALE, distance: member?.distance ?? home?.distance ?? null, south: isSouth(home, zoneOfBike(member, home)) }, today),
    },
    newId,
  );
  return { conversation, reminders, now: clock.now };
}
