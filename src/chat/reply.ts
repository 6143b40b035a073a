// What a conversation answers with, free of any platform.

import type { Brand } from "../core/brand.ts";

/** `1.<action>.<subject>.<rev>`, at most 100 characters; never authority: a press runs the same permission check as the command. */
export type ActionId = Brand<string, "action id">;

/** Read before the work, since a deferred reply cannot change it. */
export type Visibility = "private" | "shared";

export type Choice = { readonly value: string; readonly label: string };

/** One field of a form. `value` is what it is filled with when opened. */
export type Field = {
  readonly name: string;
  readonly label: string;
  readonly kind: "line" | "paragraph" | "choice";
  readonly required: boolean;
  readonly value: string | null;
  readonly hint: string | null;
  readonly options: readonly Choice[];
};

export type Form = { readonly title: string; readonly fields: readonly Field[] };

/** A button, a pick list, or a button that opens a form. What a filled form answers is a Reply, never a form. */
export type Action = { readonly id: ActionId; readonly label: string } & (
  | { readonly kind: "press" }
  | { readonly kind: "pick"; readonly options: readonly Choice[]; readonly min: number; readonly max: number }
  | { readonly kind: "form"; readonly form: Form }
);

/** A file that goes with the words: a drawing with what it shows in words, or a table to open elsewhere with what it holds. */
export type Attached = {
  readonly name: string;
  readonly type: "image/png" | "text/csv" | "application/json";
  readonly bytes: Uint8Array;
  readonly alt: string;
};

/** Words ready to show: answer first, reasoning after, one caution line where the work can hurt. */
export type Said = {
  readonly title: string | null;
  readonly lines: readonly string[];
  readonly caution: string | null;
  readonly actions: readonly Action[];
  readonly files: readonly Attached[];
};

/** Said, who may see it, and the same outcome as data for scripts and tests. */
export type Reply = Said & {
  readonly visibility: Visibility;
  readonly data: unknown;
  readonly refused?: true;
  /** The same input was heard before, here or by another process, which answers it. */
  readonly repeated?: true;
};

/** What a message gets: at most a reaction, and a reply only when the member would want one. */
export type MessageAnswer = {
  readonly react: "logged" | "asked" | null;
  readonly reply: Reply | null /** the outcome, whether or not anything is said */;
  readonly data: unknown;
};
