// The port through which a face sends what reminders have drawn.

import type { Where } from "../chat/inbound.ts";
import type { Reply } from "../chat/reply.ts";
import type { MemberId } from "../core/ids.ts";

/** Where a message goes: to one member alone, or to a place with the member named. */
export type Address = { readonly member: MemberId; readonly where: Where };

export type Sent =
  | { readonly is: "sent"; readonly message: string }
  | { readonly is: "failed"; readonly why: "direct messages closed" | "channel gone" | "not allowed" | "refused" }
  /** The platform was not there. */
  | { readonly is: "later"; readonly why: string };

/** `delivery` is the nonce: sending the same one again must not put a second message there. */
export type Deliver = { readonly send: (delivery: string, to: Address, reply: Reply) => Promise<Sent> };
