// What answers a press, a pick or a filled form.

import type { ZodType } from "zod";
import type { Outcome } from "./command.ts";
import type { Form, Said, Visibility } from "./reply.ts";

/** What the member pressed: the subject of the action, the revision shown, and what was picked or filled in. */
export type Pressed = { readonly subject: string; readonly rev: number; readonly values: readonly string[]; readonly fields: Readonly<Record<string, string>> };

/** How a form is opened: from the facts as they are, by a read and no more, since the platform wants it at once. */
type Opens<Ctx, W, R> = {
  readonly kind: "form";
  readonly open: (ctx: Ctx, pressed: Pick<Pressed, "subject" | "rev">, words: W) => Promise<Outcome<Form, R>>;
};

/** One action's work and words. What is filled into a form comes back to `run`, which answers with a Reply, never another form. */
export type Handler<Ctx, W, R, Out = unknown> = ({ readonly kind: "press" | "pick" } | Opens<Ctx, W, R>) & {
  readonly visibility: Visibility;
  /** With it the message that it was pressed on is settled: the answer takes its place where the member alone sees it. */
  readonly settles?: true;
  /** The answer is walked through over days: a message that stays. */
  readonly lasting?: true;
  readonly data: ZodType<Out>;
  readonly run: (ctx: Ctx, pressed: Pressed) => Promise<Outcome<Out, R>>;
  readonly say: (out: Out, words: W) => Said;
};

/** A handler of any outcome, as the list holds it. */
export type AnyHandler<Ctx, W, R> = ({ readonly kind: "press" | "pick" } | Opens<Ctx, W, R>) & {
  readonly visibility: Visibility;
  readonly settles?: true;
  /** The answer is walked through over days: a message that stays. */
  readonly lasting?: true;
  readonly data: ZodType<unknown>;
  readonly run: (ctx: Ctx, pressed: Pressed) => Promise<Outcome<unknown, R>>;
  readonly say: (out: never, words: W) => Said;
};
