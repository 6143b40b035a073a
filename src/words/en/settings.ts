// A member's and a group's settings in English.

import type { DistanceUnit } from "../../core/quantity/distance.ts";
import type { UnitId } from "../../core/quantity/units.ts";
import type { Printer } from "../printer.ts";

export const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

type Reminders = { readonly by: string; readonly weekday: number; readonly time: string; readonly quiet: { readonly from: string; readonly to: string } };

export const settingsWords = (p: Printer) => ({
  reminders: (r: Reminders): string =>
    r.by === "off"
      ? "Reminders are off. /due still answers."
      : `Reminders come by ${r.by === "channel" ? "the group's channel" : "direct message"}, ${WEEKDAYS[r.weekday - 1]} at ${r.time}, and never between ${r.quiet.from} and ${r.quiet.to}.`,
  zone: (zone: string, own: boolean): string => `Time zone: ${zone}${own ? "" : " (the group's; set your own with zone:)"}.`,
  units: (distance: DistanceUnit | null, pressure: UnitId | null, depth: UnitId | null): string =>
    `Units: distance ${distance ?? "as each dial counts"}, pressure ${pressure ?? "asked when you type none"}, tread ${depth ?? "asked when you type none"}.`,
  saved: (): string => "Saved.",
  group: (g: { readonly zone: string; readonly distance: DistanceUnit | null; readonly pressure: UnitId | null }): readonly string[] => [
    `Time zone: ${g.zone}.`,
    `Units: distance ${g.distance ?? "as each dial counts"}, pressure ${g.pressure ?? "asked when none is typed"}.`,
  ],
  reads: (reads: boolean): string =>
    reads
      ? "Plain messages in the reading channel are read. Elsewhere: mention me, write to me directly, or use “Log this message”."
      : "Plain messages in the channel are not read. Mention me, write to me directly, or use “Log this message”.",
  list: p.list,
});
