// What reaches the bot from any face: one event, said or pressed by one member in one place.

import type { EventId, GroupId, MemberId } from "../core/ids.ts";
import type { FileTrouble } from "./files.ts";
import type { Form, Reply, Visibility } from "./reply.ts";

/** Where it happened. `id` is the platform's name of the channel; `reading` is where plain messages are read while the group has named no channel of its own. */
export type Where = { readonly group: GroupId | null; readonly channel: "reading" | "other" | "dm"; readonly id: string };

/** `event` makes it act once: a second arrival does nothing. `admin`: the platform's manage-server permission. */
export type From = {
  readonly member: MemberId;
  readonly name: string | null;
  readonly where: Where;
  readonly event: EventId;
  readonly admin: boolean;
  readonly language: string | null;
};

/** A message, and what it replies to: another message, with the ids of what can be pressed in it. `files`: the names of those that came with it. */
export type Spoken = {
  readonly files?: readonly string[];
  readonly message: string;
  readonly text: string;
  readonly addressed: boolean;
  readonly answers: { readonly message: string; readonly actions: readonly string[] } | null;
};

export type Inbound = From &
  (
    | ({ readonly kind: "say" } & Spoken)
    | ({ readonly kind: "edit" } & Spoken)
    | { readonly kind: "delete"; readonly message: string }
    /** "Log this message" on a message. */
    | { readonly kind: "menu"; readonly message: string; readonly text: string; readonly author: MemberId; readonly edited: boolean }
    /** `options` as typed, unparsed, of a file its text; `sub` null for a command without one. `unread`: a file that could not be taken. */
    | {
        readonly kind: "run";
        readonly command: string;
        readonly sub: string | null;
        readonly options: Readonly<Record<string, string>>;
        readonly unread?: { readonly option: string; readonly problem: FileTrouble };
      }
    | { readonly kind: "press"; readonly action: string }
    | { readonly kind: "pick"; readonly action: string; readonly values: readonly string[] }
    | { readonly kind: "fill"; readonly action: string; readonly fields: Readonly<Record<string, string>> }
    | { readonly kind: "complete"; readonly command: string; readonly sub: string | null; readonly option: string; readonly typed: string }
  );

/** One answer, as a face shows it. `to` null: everyone in the place. */
export type Answer = {
  readonly to: MemberId | null;
  readonly where: Where;
  readonly react: "logged" | "asked" | null;
  readonly reply: Reply | null /** the outcome as data, even where nothing is said */;
  readonly data: unknown;
  readonly suggestions: readonly string[] | null;
};

/** What a press comes to where forms are opened by the face: the form to show, or null when the press is to be heard. */
export type Opened = { readonly form: Form } | { readonly refused: readonly Answer[] } | null;

/** The bot as a face sees it. */
export type Conversation = {
  readonly hear: (inbound: Inbound) => Promise<readonly Answer[]>;
  /** The form that a press opens. Nothing is written by it. */
  readonly open: (press: From & { readonly action: string }) => Promise<Opened>;
  /** Who will see the answer, known before the work: a deferred reply cannot change it. */
  readonly visibilityOf: (inbound: Inbound) => Visibility;
  /** Will the answer be walked through over days? Then it is a message that stays, to the member alone, never an answer that dies. */
  readonly lasts: (inbound: Inbound) => boolean;
  /** Does the answer take the place of the message that was pressed? A refusal never does. */
  readonly settles: (inbound: Inbound) => boolean;
};
