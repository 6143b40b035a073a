// The only place that makes identities: UUID version 7 (RFC 9562), time first and random after.

import { randomBytes } from "node:crypto";
import { realClock } from "./clock.ts";
import { millisOf } from "./core/calendar/zones.ts";

export function newId(): string {
  const bytes = randomBytes(16);
  bytes.writeUIntBE(millisOf(realClock.now()), 0, 6);
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x70;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = bytes.toString("hex");
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}
