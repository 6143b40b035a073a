// What a use case comes to: a value, or a refusal as data.

import type { Refusal } from "../core/refusal.ts";

/** What a use case comes to. */
export type Result<T> = { readonly is: "done"; readonly value: T } | { readonly is: "refused"; readonly why: Refusal };

export const done = <T>(value: T): Result<T> => ({ is: "done", value });
/** What the first hearing of an event came to; heard again, it changes nothing. */
export const onceHeard = <T>(acted: { readonly first: true; readonly value: Result<T> } | { readonly first: false }): Result<T> =>
  acted.first ? acted.value : refused({ why: "heard already" });
export const refused = (why: Refusal): { readonly is: "refused"; readonly why: Refusal } => ({ is: "refused", why });
