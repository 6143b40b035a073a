// A member's and a group's settings in English.

import { isQuiet } from "../../core/bike.ts";
import type { LocalDate } from "../../core/calendar/dates.ts";
import type { DistanceUnit } from "../../core/quantity/distance.ts";
import type { UnitId } from "../../core/quantity/units.ts";
import type { SeasonWindow } from "../../core/season/season.ts";
import type { TreadLaw, TreadLawPlace } from "../../trade/tread-law.ts";
import type { Printer } from "../printer.ts";
import { WEEKDAYS } from "./weekdays.ts";

/** "15 March": a day of any year. */
const monthDay = (p: Printer, day: string): string => p.date(`2027-${day}` as LocalDate, `2027-${day}` as LocalDate);

type GroupSettings = {
  readonly zone: string;
  readonly south: boolean;
  readonly riding: SeasonWindow | null;
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  readonly place: TreadLawPlace | null;
  readonly law: TreadLaw | null;
  readonly reads: boolean;
  readonly reading: "here" | "elsewhere" | "nowhere";
  readonly hearsChannels: boolean;
};

const BANDS = {
  "three quarters of the breadth": "over three quarters of the breadth, all the way round",
  "main grooves of the middle": "in the main grooves of the middle three quarters, all the way round",
  "middle three quarters": "over the middle three quarters, all the way round",
  "moulded bar": "the moulded bar of 1/32 in reached means change the tyre; each state has its own law",
} as const satisfies Record<TreadLaw["band"], string>;

type Reminders = { readonly by: string; readonly weekday: number; readonly time: string; readonly quiet: { readonly from: string; readonly to: string } };

/** Why a reminder did not arrive, and what the member can do, by what the face says of it. */
const WHY_NOT: Readonly<Record<string, readonly [why: string, next: string]>> = {
  "direct messages closed": ["your direct messages are closed to me", "open them, or choose by:channel"],
  "channel gone": ["the channel is gone", "choose by:direct message, or have /group reading:here typed in another"],
  "not allowed": ["I may not write in the channel", "choose by:direct message, or have my permissions looked at"],
  "member left": ["we share no server any more", ""],
  refused: ["the platform would not take it", "whoever runs me finds why in my log"],
  "went wrong": ["that was my own fault", "whoever runs me finds why in my log"],
  "not allowed to read back": ["I may not read what I wrote there, so I cannot look", ""],
  "too much was said since": ["so much was said since that I cannot find it", ""],
};

export const settingsWords = (p: Printer) => ({
  reminders: (r: Reminders): string =>
    r.by === "off"
      ? "Reminders are off. /due still answers."
      : `Reminders come by ${r.by === "channel" ? "the group's reading channel (by direct message while the group has named none)" : "direct message"}, ${WEEKDAYS[r.weekday - 1]} at ${r.time}${r.quiet.from === r.quiet.to ? "; no hour is quiet" : isQuiet(r.quiet, r.time) ? `, held until ${r.quiet.to} since that is in your quiet hours, ${r.quiet.from} to ${r.quiet.to}` : `, and never between ${r.quiet.from} and ${r.quiet.to}`}.`,
  /** Matters that are switched off. */
  off: (topics: readonly string[], command: "/remind" | "/group"): readonly string[] =>
    topics.length === 0 ? [] : [`Not told of: ${p.list(topics)}. To hear of it again: ${topics.map((topic) => `${command} on:${topic}`).join(", ")}.`],
  zone: (zone: string, own: boolean): string => `Time zone: ${zone}${own ? "" : " (the group's; set your own with zone:)"}.`,
  units: (distance: DistanceUnit | null, pressure: UnitId | null, depth: UnitId | null): string =>
    `Units: distance ${distance ?? "as each dial counts"}, pressure ${pressure ?? "asked when you type none"}, tread ${depth ?? "asked when you type none"}.`,
  saved: (): string => "Saved.",
  trouble: (on: LocalDate, state: "failed" | "unconfirmed", why: string | null): string => {
    // Of two ways that were closed, the first is the one that the member chose.
    const [said, next] = WHY_NOT[why?.split(", ")[0] ?? ""] ?? [null, ""];
    const because = said === null ? "" : `: ${said}`;
    return `A reminder of ${p.date(on)} ${state === "failed" ? "could not reach you" : "may not have reached you"}${because}. See /due${next === "" ? "" : `; ${next}`}.`;
  },
  group: (g: GroupSettings): readonly string[] => [
    `Time zone: ${g.zone}. Spring is in ${g.south ? "September" : "March"}.`,
    g.riding === null
      ? "Riding season: none set; set one with /group riding:1 April to 15 October."
      : `Riding season: ${monthDay(p, g.riding.from)} to ${monthDay(p, g.riding.to)}.`,
    `Units: distance ${g.distance ?? "as each dial counts"}, pressure ${g.pressure ?? "asked when none is typed"}.`,
    g.place === null
      ? "Tread law: no place chosen; the moulded bar reached means change the tyre."
      : `Tread law, ${g.place}: ${g.law === null || g.law.millimetres === null ? "" : `at least ${p.figure(g.law.millimetres, 1)} mm `}${g.law === null ? "" : BANDS[g.law.band]}.${g.law?.lightest === undefined || g.law.lightestAre === undefined ? "" : ` Of ${g.law.lightestAre} at least ${p.figure(g.law.lightest, 1)} mm: if your papers say it is one, enter it as your own limit.`} Local law has the last word.`,
  ],
  /** After a change of the place, of bikes that are not the speaker's. */
  treadOfOthers: (bikes: number): string =>
    `By that law the tread of ${bikes === 1 ? "another rider's bike" : `${bikes} bikes of other riders`} stands otherwise than before: ${bikes === 1 ? "its owner sees" : "their owners see"} it in /due.`,
  reads: (g: Pick<GroupSettings, "reads" | "reading" | "hearsChannels">): string => {
    const channel =
      g.reading === "here"
        ? " Reminders wished in a channel come into this one."
        : g.reading === "elsewhere"
          ? " Reminders wished in a channel come into the reading channel."
          : "";
    const always = "mention me, reply to me, write to me directly, or use “Log this message”.";
    if (!g.hearsChannels) return `Plain messages in channels cannot be heard here, since whoever runs the bot has not switched that on: ${always}${channel}`;
    if (!g.reads) return `Plain messages are not read: ${always}`;
    switch (g.reading) {
      case "here":
        return `Plain messages in this channel are read. Elsewhere: ${always}`;
      case "elsewhere":
        return `Plain messages are read in the reading channel, which is another one. Here: ${always}`;
      case "nowhere":
        return `No reading channel is named yet: type /group reading:here in the channel where readings belong. Until then, ${always}`;
    }
  },
  setUp: {
    title: "Setting up for your group",
    lines: (hearsChannels: boolean): readonly string[] => [
      "Members log what they read off their bikes as plain messages; I say what falls due and remind in time. A few choices for the whole group, each changed later with /group:",
      hearsChannels
        ? "In the channel where readings belong, type /group reading:here: plain messages there are read, and reminders that are wished in a channel come there."
        : "Members mention me, reply to me, write to me directly, or use “Log this message”. Whole channels are read only if whoever runs me switches that on. Type /group reading:here in the channel where reminders that are wished in a channel shall come.",
      "Seasons follow the time zone, unless you choose the hemisphere. Every member begins with /bike add, or simply by mentioning me with a reading.",
    ],
    place: "Whose tread law is told",
    distance: "Unit for distances, if not as each dial counts",
    pressure: "Unit of a pressure typed without one",
    season: "Whose seasons, if not the time zone's",
    zone: "Set the time zone",
    zoneField: "Time zone of the group",
    zoneHint: "Europe/Lisbon",
  },
  list: p.list,
});
