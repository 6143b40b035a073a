// What answers a press, a pick or a filled form.

import type { ZodType } from "zod";
import type { Outcome } from "./command.ts";
import type { Said, Visibility } from "./reply.ts";

/** What the member pressed: the subject of the action, the revision shown, and what was picked or filled in. */
export type Pressed = { readonly subject: string; readonly rev: number; readonly values: readonly string[]; readonly fields: Readonly<Record<string, string>> };

/** One action's work and words. A form is opened by the press and without prior work; what is filled in comes back here. */
export type Handler<Ctx, W, R, Out = unknown> = {
  readonly kind: "press" | "pick" | "form";
  readonly visibility: Visibility;
  readonly data: ZodType<Out>;
  readonly run: (ctx: Ctx, pressed: Pressed) => Promise<Outcome<Out, R>>;
  readonly say: (out: Out, words: W) => Said;
};

/** A handler of any outcome, as the list holds it. */
export type AnyHandler<Ctx, W, R> = Omit<Handler<Ctx, W, R>, "say" | "run" | "data"> & {
  readonly data: ZodType<unknown>;
  readonly run: (ctx: Ctx, pressed: Pressed) => Promise<Outcome<unknown, R>>;
  readonly say: (out: never, words: W) => Said;
};
