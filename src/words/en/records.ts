// The record of work, in English. What an entry holds follows 14 CFR 43.9: the work, the day it was completed, who did it; with the odometer, the outcome, the parts, and how we know.

import { isUndated } from "../../core/calendar/arithmetic.ts";
import type { LocalDate, VagueDate } from "../../core/calendar/dates.ts";
import type { Dial, DistanceUnit } from "../../core/quantity/distance.ts";
import { symbolOf } from "../../core/quantity/units.ts";
import type { HowWeKnow, Outcome } from "../../core/schedule/facts.ts";
import type { ItemValue, WorkDetail } from "../../core/work-detail.ts";
import type { Printer } from "../printer.ts";
import { capital } from "./text.ts";
import { workDetailWords } from "./work-detail.ts";

type SaidRecord = {
  readonly state: "live" | "withdrawn";
  readonly rev: number;
  readonly items: readonly { readonly called: string; readonly outcome: Outcome; readonly found: readonly ItemValue[]; readonly left: readonly ItemValue[] }[];
  readonly words: string;
  readonly on: VagueDate;
  readonly dial: Dial | null;
  readonly how: HowWeKnow;
  readonly doneBy: string;
  readonly note: string | null;
  readonly detail: WorkDetail;
  readonly loggedAt: string;
  readonly why: string | null;
};

export const recordWords = (p: Printer) => {
  const detail = workDetailWords(p);
  const values = (list: readonly ItemValue[]): string =>
    p.list(list.map(({ value, unit, place }) => `${place === null ? "" : `${place} `}${p.figure(value, 2)} ${symbolOf(unit)}`));
  const item = (each: SaidRecord["items"][number]): string => {
    const measured = [...(each.found.length === 0 ? [] : [`found ${values(each.found)}`]), ...(each.left.length === 0 ? [] : [`left ${values(each.left)}`])];
    return `${each.called} (${[each.outcome, ...measured].join("; ")})`;
  };
  const what = (r: SaidRecord): string => (r.items.length === 0 ? r.words : p.list(r.items.map(item)));
  const day = (on: VagueDate, today?: LocalDate): string => p.vague(on, today);
  return {
    heading: (nickname: string, n: number): string => `${nickname}: ${n === 0 ? "no work on record" : n === 1 ? "one record" : `${n} records`}`,
    line: (r: SaidRecord, unit: DistanceUnit, today: LocalDate): string => {
      const where = r.dial === null ? "" : `, ${p.point(r.dial, unit)}`;
      const used = detail.used(r.detail);
      const cost = r.detail.cost === null ? [] : [detail.cost(r.detail.cost.minor, r.detail.cost.currency)];
      const more = [...used, ...cost, `by ${r.doneBy}`, ...(r.how === "did it" ? [] : [r.how]), ...(r.note === null ? [] : [`“${r.note}”`])].join("; ");
      const changed =
        r.state === "withdrawn" ? ` Taken back${r.why === "amended" ? ", amended by a later entry" : ""}: it does not count.` : r.rev > 1 ? " Amended." : "";
      return `${day(r.on, today)}${where}: ${what(r)}. ${capital(more)}.${changed}`;
    },
    more: (n: number): string => `And ${n} older: the table holds them all.`,
    costs: (sums: readonly { readonly currency: string | null; readonly minor: number }[]): string =>
      `Cost in all: ${p.list(sums.map(({ currency, minor }) => `${detail.cost(minor, currency)}${currency === null ? " (no currency said)" : ""}`))}.`,
    tableAlt: (n: number): string => `A table of ${n} records, one a line.`,
    columns: [
      "bike",
      "date from",
      "date to",
      "odometer",
      "unit",
      "work",
      "outcome",
      "found",
      "left",
      "with",
      "cost",
      "currency",
      "done by",
      "how we know",
      "note",
      "state",
      "entered",
    ],
    /** One row an item; a record without items has one row. */
    rows: (nickname: string, unit: DistanceUnit, r: SaidRecord): readonly (readonly string[])[] => {
      const rows = r.items.length === 0 ? [{ called: r.words, outcome: "done" as Outcome, found: [], left: [] }] : r.items;
      return rows.map((each, n) => [
        ...[
          nickname,
          isUndated(r.on) ? "" : r.on.from,
          r.on.to,
          r.dial === null ? "" : p.point(r.dial, unit).replace(/[^\d.]/gu, ""),
          unit,
          each.called,
          each.outcome,
        ],
        // What was used and paid belongs to the record: it stands in its first row only, so that a column can be summed.
        ...[values(each.found), values(each.left), n === 0 ? detail.used(r.detail).join("; ") : ""],
        ...(n === 0 && r.detail.cost !== null ? [(r.detail.cost.minor / 100).toFixed(2), r.detail.cost.currency ?? ""] : ["", ""]),
        ...[r.doneBy, r.how, r.note ?? "", r.state === "withdrawn" ? "taken back" : r.rev > 1 ? "amended" : "stands", r.loggedAt],
      ]);
    },
  };
};
