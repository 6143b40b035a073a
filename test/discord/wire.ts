// What goes over the wire between the bot and the stand-in: requests, answers of bad days, and moments to watch.

import type { IncomingMessage } from "node:http";
import type { RequestKind } from "./schemas.ts";

/** The bot, as a user and as an application. */
export const ME = "100000000000000001";

export type Json = Record<string, unknown>;
/** One request as it came, and what it was answered. */
export type Call = { readonly method: string; readonly path: string; readonly body: Json; readonly status: number; readonly at: number };
/** A message; what the stand-in keeps beside the platform's own fields begins with "$". */
export type Kept = Json & { readonly id: string; readonly channel_id: string; readonly content: string; deleted?: boolean };

/** A bad moment of a route. `times` of requests that match fail, before or after their work is done. */
export type Fault = {
  readonly route: RegExp;
  readonly how: keyof typeof BODIES;
  readonly when: "before" | "after";
  times: number;
  spared: number;
};

/** A moment of putting a message into a channel. */
export type Moment = "arrived" | "stored" | "half answered" | "answered";
/** @param size as the platform says it; that of the bytes unless said otherwise */
export type Upload = { readonly name: string; readonly bytes: Uint8Array; readonly size?: number };
/** Told of each moment; what arrived can be lost. */
export type Watcher = (moment: Moment) => "go on" | "lose";

/** What is answered on a bad day. */
export const BODIES = {
  "500": [500, { message: "500: Internal Server Error", code: 0 }],
  "429": [429, { message: "You are being rate limited.", retry_after: 0.3, global: false }],
  "401": [401, { message: "401: Unauthorized", code: 0 }],
  "404 unknown interaction": [404, { message: "Unknown interaction", code: 10_062 }],
  "403 closed": [403, { message: "Cannot send messages to this user", code: 50_007 }],
  "403 missing": [403, { message: "Missing Permissions", code: 50_013 }],
  "404 member": [404, { message: "Unknown Member", code: 10_007 }],
  "404 channel": [404, { message: "Unknown Channel", code: 10_003 }],
  "404 webhook": [404, { message: "Unknown Webhook", code: 10_015 }],
  "401 expired": [401, { message: "Invalid Webhook Token", code: 50_027 }],
  "403 history": [403, { message: "Cannot reply without permission to read message history", code: 160_002 }],
  "400 too fast": [400, { message: "You are opening direct messages too fast", code: 40_003 }],
  "400 form": [400, { message: "Invalid Form Body", code: 50_035 }],
  cut: [0, {}],
  slow: [0, {}],
  hang: [0, {}],
} as const satisfies Readonly<Record<string, readonly [number, Json]>>;

/** Under which shape the body of a callback is published, by its type. */
export const CALLBACKS: Readonly<Record<number, RequestKind>> = {
  4: "CreateMessageInteractionCallbackRequest",
  5: "CreateMessageInteractionCallbackRequest",
  6: "UpdateMessageInteractionCallbackRequest",
  7: "UpdateMessageInteractionCallbackRequest",
  8: "ApplicationCommandAutocompleteCallbackRequest",
  9: "ModalInteractionCallbackRequest",
};

/** The JSON of a request, of a form with files the part that says what they are for. */
export async function bodyOf(request: IncomingMessage): Promise<Json | Json[]> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const raw = Buffer.concat(chunks);
  if (raw.length === 0) return {};
  const type = request.headers["content-type"] ?? "";
  if (!type.startsWith("multipart/")) return JSON.parse(raw.toString("utf8")) as Json;
  const form = await new Response(raw, { headers: { "content-type": type } }).formData();
  return JSON.parse(String(form.get("payload_json"))) as Json;
}
