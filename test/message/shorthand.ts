// What a message came to, in the shorthand of the corpora.

import type { Intent, LogReading, RecordWork } from "../../src/core/reading/intent.ts";
import { TODAY } from "./riders.ts";

const asked = ({ gaps }: Intent): string => gaps.map((gap) => ` ?${gap.need}`).join("");

/** `tread/rear 4.5 mm@Heron on 2026-11-24 {"points":[4.5,4.8]} ?unit`, `W chain.lubricate=done at 14820 (cost 4860)@Heron`, `D soft brake “...”@Heron`. */
export function shortOf(intent: Intent): string {
  const bike = `@${intent.bike ?? "?"}`;
  if (intent.do === "log reading") return `${reading(intent)}${asked(intent)}`;
  if (intent.do === "record work") return `${work(intent)}${asked(intent)}`;
  const at = intent.odometer === null ? "" : ` at ${intent.odometer.value}`;
  return `D ${intent.kind ?? "?"} “${intent.words}”${at}${intent.on === TODAY ? "" : ` on ${intent.on}`}${bike}${asked(intent)}`;
}

function reading({ kind, place, value, unit, bike, on, detail }: LogReading): string {
  const where = place === null ? "" : `/${place}`;
  const said = detail === undefined ? "" : ` ${JSON.stringify(detail)}`;
  return `${kind}${where} ${Number(value.toFixed(6))} ${unit ?? "?"}@${bike ?? "?"}${on === TODAY ? "" : ` on ${on}`}${said}`;
}

function work({ items, outcome, odometer, on, detail, bike }: RecordWork): string {
  const at = odometer === null ? "" : ` at ${odometer.value}`;
  const when = on.from === TODAY ? "" : ` on ${on.from}`;
  const parts = [
    ...(detail?.quantities ?? []).map(({ value, unit, of }) => `${value} ${unit}${of === null ? "" : ` ${of}`}`),
    ...(detail?.parts ?? []).map(({ words, made }) => `part ${words}${made === null ? "" : ` ${made}`}`),
    ...(detail?.cost == null ? [] : [`cost ${detail.cost.minor}${detail.cost.currency ?? ""}`]),
    ...(detail?.by == null ? [] : [`by ${detail.by}`]),
  ];
  return `W ${items.join(",") || "?"}=${outcome}${at}${when}${parts.length === 0 ? "" : ` (${parts.join("; ")})`}@${bike ?? "?"}`;
}

/** `14820mi@Heron`, `P front 33psi@Heron`, `T rear 4.5mm@Heron`; work as above without its details: the first corpus. */
export function shortOfFirst(intent: Intent): string {
  const asks = asked(intent);
  const bikeOf = `@${intent.bike ?? "?"}`;
  if (intent.do === "log reading") {
    const on = intent.on === TODAY ? "" : ` on ${intent.on}`;
    const value = `${Number(intent.value.toFixed(6))}${intent.unit ?? "?"}`;
    const what = intent.kind === "odometer" ? value : `${intent.kind === "tread" ? "T" : "P"} ${intent.place ?? "?"} ${value}`;
    return `${what}${bikeOf}${on}${asks}`;
  }
  if (intent.do === "note defect") return shortOf(intent);
  const at = intent.odometer === null ? "" : ` at ${intent.odometer.value}`;
  const on = intent.on.from === TODAY ? "" : ` on ${intent.on.from}`;
  return `W ${intent.items.join(",") || "?"}=${intent.outcome}${at}${on}${bikeOf}${asks}`;
}

/** Readings with their details, and only that something was done beside them: the corpus of measured values. */
export const shortOfMeasured = (intent: Intent): string => (intent.do === "log reading" ? shortOf(intent) : intent.do);
