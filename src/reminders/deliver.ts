// The port through which a face sends what reminders have drawn.

import type { Where } from "../chat/inbound.ts";
import type { Reply } from "../chat/reply.ts";
import type { MemberId } from "../core/ids.ts";
import type { Trace } from "../store/notices.ts";

export type { Trace };

/** Where a message goes: to one member alone, to a place with the member named, or to a place and nobody in it. */
export type Address = { readonly member: MemberId | null; readonly where: Where };

export type Sent =
  | { readonly is: "sent"; readonly message: string }
  | { readonly is: "failed"; readonly why: "direct messages closed" | "channel gone" | "member left" | "not allowed" | "refused" }
  /** The platform was not there; whether it took the message is not known. */
  | { readonly is: "later"; readonly why: string }
  /** Another process has taken the delivery over; nothing was sent. */
  | { readonly is: "taken" };

/** What became of a delivery that was begun. A long one goes as several messages: `parts` of it that are there, though not the last. */
export type Found =
  | { readonly is: "there"; readonly message: string }
  | { readonly is: "not there"; readonly parts: readonly number[] }
  /** It cannot be looked for, now or later. */
  | { readonly is: "cannot tell"; readonly why: string }
  | { readonly is: "later"; readonly why: string };

/** What goes with one try at a delivery. */
export type Begin = {
  /** Parts that are there already and are not sent again. */
  readonly parts: readonly number[];
  /**
   * Awaited when the place is known, before anything is put there: keeps where to look should this process die. False: another process has taken over.
   * @param messages how many the delivery takes
   */
  readonly begun: (trace: Trace, messages: number) => Promise<boolean>;
};

export type Deliver = {
  /** `once` is the nonce: sending the same one again within minutes does not put a second message there. `delivery` marks the message, for `find`. */
  readonly send: (delivery: string, once: string, to: Address, reply: Reply, begin: Begin) => Promise<Sent>;
  /** Looks for a delivery where it was begun. */
  readonly find: (delivery: string, trace: Trace) => Promise<Found>;
};
