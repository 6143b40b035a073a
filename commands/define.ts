// The types of this house's commands, once: what they work with, in which words, and how they refuse.

import type { ZodType } from "zod";
import { type AnyCommand, defineFor } from "../src/chat/command.ts";
import type { AnyHandler, Handler } from "../src/chat/handler.ts";
import type { Refusal } from "../src/core/refusal.ts";
import type { Ctx } from "../src/usecases/context.ts";
import type { Words } from "../src/words/en/english.ts";

/** Types a command's options, work and words together. */
export const define = defineFor<Ctx, Words, Refusal>();
export type BotCommand = AnyCommand<Ctx, Words, Refusal>;
export type BotHandler = AnyHandler<Ctx, Words, Refusal>;

/** Types a handler's work and words together. */
export const handler = <Out>(each: Handler<Ctx, Words, Refusal, Out>): BotHandler => each;

/** A schema as the shape of `Out`: brands and readonly marks exist in the types only, so the schema cannot name them. */
export const shapeOf = <Out>(schema: ZodType): ZodType<Out> => schema as unknown as ZodType<Out>;
