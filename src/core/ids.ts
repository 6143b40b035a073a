// Identities. Made by the caller (UUIDv7) or given by the platform; text, and never an order.

import type { Brand } from "./brand.ts";

export type BikeId = Brand<string, "bike">;
export type MemberId = Brand<string, "member">;
export type GroupId = Brand<string, "group">;
/** The platform's message or interaction id: the key that makes an input act once. */
export type EventId = Brand<string, "event">;
/** Stable name of a plan item; never reused for another job. */
export type ItemKey = Brand<string, "item">;
