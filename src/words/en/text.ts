// Small turns of English that every subject shares.

import type { Condition } from "../../core/plan/plan.ts";

/** A sentence begins with a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Texts beside a picture hold at most so many characters on the platform. */
const ALT = 1000;
/** What a picture shows in words, no longer than may stand beside it. */
export const altOf = (text: string): string => ([...text].length > ALT ? `${[...text].slice(0, ALT - 1).join("")}…` : text);

/** Uses of a bike that shorten an interval. */
export const CONDITION_WORDS = {
  dust: "dust",
  wet: "wet roads",
  "short cold trips": "short cold trips",
  track: "track days",
  "two-up": "two-up riding",
} as const satisfies Record<Condition, string>;
/** Item names begin with a capital; inside a sentence they do not, unless the word is an abbreviation. */
export const lowered = (name: string): string => (/^\p{Lu}{2}/u.test(name) ? name : name.charAt(0).toLowerCase() + name.slice(1));
