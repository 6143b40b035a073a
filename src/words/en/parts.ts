// Parts fitted and what to buy, in English.

import type { LocalDate, VagueDate } from "../../core/calendar/dates.ts";
import type { DistanceUnit, Stretch } from "../../core/quantity/distance.ts";
import { symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { Printer } from "../printer.ts";
import type { OnBike } from "./due.ts";
import { pieceNamed } from "./refit.ts";
import { capital, lowered } from "./text.ts";

type Part = {
  readonly part: string;
  readonly on: VagueDate | null;
  readonly ridden: Stretch | null;
  readonly kit: readonly string[];
  readonly words: string | null;
  readonly made: string | null;
  readonly again: { readonly label: string; readonly since: LocalDate } | null;
  readonly resting: readonly { readonly label: string; readonly ridden: Stretch }[];
};
type Later = { readonly name: string; readonly usual: { readonly miles: number | null; readonly km: number | null }; readonly never: boolean };
type Recheck = {
  readonly name: string;
  readonly distance: { readonly miles: number | null; readonly km: number | null };
  readonly changed: boolean;
  readonly dropped: boolean;
};
type Amount = { readonly nickname: string; readonly count: number | null; readonly amount: string | null; readonly kind: string | null };

/** How people name what belongs to a kit. */
const KIT_NAMES: Readonly<Record<string, RegExp>> = {
  chain: /\bchain\b/iu,
  "front sprocket": /(?<!rear )\bsprockets?\b/iu,
  "rear sprocket": /(?<!front )\bsprockets?\b/iu,
};
const WHOLE_KIT = /\b(?:kit|set)\b/iu;

type For = {
  readonly nickname: string;
  readonly items: readonly string[];
  readonly next: readonly string[];
  readonly worn: readonly string[];
  readonly wrong: readonly string[];
};

export const partsWords = (p: Printer) => ({
  title: (nickname: string): string => `${nickname}, parts fitted`,
  /** "- Rear tyre: fitted 3 May at ..., 2,310 mi on it". */
  part: ({ part, on, ridden, words, made, again }: Part, b: OnBike): string => {
    if (again !== null)
      return `- ${capital(part)} (${pieceNamed(again.label)}): back on since ${p.date(again.since, b.today)}, ${p.onDial(ridden ?? (0 as Stretch), b.unit)} on it in all${again.label === "" ? " while it was yours" : ""}`;
    const noted = [words, made === null ? null : `made ${made}`].filter((each) => each !== null);
    const gone = ridden === null ? "how far it has gone is not known" : `${p.onDial(ridden, b.unit)} on it`;
    return `- ${capital(part)}${noted.length === 0 ? "" : ` (${noted.join(", ")})`}: since ${on === null ? "" : p.vague(on, b.today)}, ${gone}`;
  },
  /** What lies by and may go on again. */
  resting: ({ resting }: Part, b: OnBike): readonly string[] =>
    resting.map(({ label, ridden }) => `  Lies by: ${pieceNamed(label)}, ${p.onDial(ridden, b.unit)} on it.`),
  kit: (part: string, kit: readonly string[]): string => `  ${capital(part)} are changed as one: ${p.list(kit)}.`,
  /** Of a kit that was changed only in part. */
  kitPart: (changed: readonly string[], stayed: readonly string[]): string =>
    `  Only ${p.list(changed)} ${changed.length === 1 ? "was" : "were"} changed; ${p.list(stayed)} stayed on: look at ${stayed.length === 1 ? "it" : "them"} at each check.`,
  /** Which of a kit the words of a job name; all of them where they name it whole, or none. */
  kitNamed: (kit: readonly string[], said: string): readonly string[] => {
    const named = kit.filter((part) => KIT_NAMES[part]?.test(said) === true);
    return named.length === 0 || WHOLE_KIT.test(said) ? kit : named;
  },
  kitAsk: (changed: readonly string[], others: readonly string[]): string => {
    const one = others.length === 1;
    return `${capital(p.list(others))} too? ${one ? "It is" : "They are"} changed with the ${p.list(changed)}, since what is worn wears the new fast. If ${one ? "it" : "they"} stayed on, press that below.`;
  },
  kept: (nickname: string, changed: readonly string[], stayed: readonly string[], counts: boolean): string =>
    counts
      ? `${nickname}: only ${p.list(changed)} changed; ${p.list(stayed)} stayed on. Noted: look at ${stayed.length === 1 ? "it" : "them"} at each chain check.`
      : `${nickname}: only ${p.list(changed)} changed. Noted; the ${p.list(stayed)} ${stayed.length === 1 ? "goes" : "go"} on as before, and what the plan counts of it too.`,
  labels: { stayed: (others: readonly string[]): string => `${capital(p.list(others))} stayed on` },
  unknown: (parts: readonly string[]): string =>
    `Nothing on record of: ${p.list(parts)}. Record when it was fitted, such as /work did:rear tyre on:spring 2024 outcome:replaced.`,
  rechecksTitle: (nickname: string): string => `${nickname}, looked at again after work:`,
  recheck: ({ name, distance, changed, dropped }: Recheck, column: DistanceUnit): string => {
    const own = column === "mi" ? distance.miles : distance.km;
    const far =
      own === null ? `${p.figure((column === "mi" ? distance.km : distance.miles) ?? 0, 0)} ${column === "mi" ? "km" : "mi"}` : `${p.figure(own, 0)} ${column}`;
    return `- ${name}: ${dropped ? "never" : `${far} after it`}${changed || dropped ? " (yours)" : ""}`;
  },
  /** What is let go of, before nobody looks any more. */
  recheckLater: ({ name, usual, never }: Later, column: DistanceUnit): string => {
    const far = `${p.figure((column === "mi" ? usual.miles : usual.km) ?? 0, 0)} ${column}`;
    const [told, back] = never ? ["I remind of it no more", "every:again"] : ["I remind of it only so far on", `every:${far}`];
    return `${name}: common practice looks ${far} after the work. ${told}, so look at it yourself, as the maker's manual says. ${back} brings it back.`;
  },
  rechecksHow: (): string =>
    "Common practice; your manual has the last word. Change one with item: and every:, such as every:200 mi, or every:never and every:again.",
  shoppingTitle: (until: LocalDate, today: LocalDate, bikes: number, far: string | null): string =>
    `To buy for what falls due ${far === null ? `by ${p.date(until, today)}` : `until “${far}”`}${bikes > 1 ? ` on ${bikes} bikes` : ""}:`,
  nothing: (until: LocalDate, today: LocalDate, far: string | null): string =>
    `Nothing falls due ${far === null ? `by ${p.date(until, today)}` : `until “${far}”`} that something has to be bought for.`,
  /** "- Engine oil, 7.2 L in all: Heron 3.2 L 20W-50; Otter 4 L 20W-50". */
  wanted: (what: string, amounts: readonly Amount[], total: { readonly value: number; readonly unit: UnitId | null } | null): string => {
    const each = amounts.map(({ nickname, count, amount, kind }) => {
      const much = [count === null ? null : `${count} ×`, amount, kind].filter((part) => part !== null);
      return `${nickname}${much.length === 0 ? "" : ` ${much.join(" ")}`}`;
    });
    const inAll =
      total === null
        ? ""
        : `, ${p.figure(total.value, (String(total.value).split(".")[1] ?? "").length)}${total.unit === null ? "" : ` ${symbolOf(total.unit)}`} in all`;
    return `- ${capital(what)}${inAll}: ${each.join("; ")}`;
  },
  atHand: (names: readonly string[]): string => `Look on the shelf first: ${p.list(names)}.`,
  because: ({ nickname, items, next, worn, wrong }: For): string => {
    const parts = [
      items.length === 0 ? null : p.list(items.map(lowered)),
      next.length === 0 ? null : `of the next service, near enough to do together: ${p.list(next.map(lowered))}`,
      worn.length === 0 ? null : `at its limit by then, as measured: ${p.list(worn.map(lowered))}`,
      wrong.length === 0 ? null : `found wrong: ${p.list(wrong.map((each) => `“${each}”`))}`,
    ];
    return `For ${nickname}: ${parts.filter((part) => part !== null).join("; ")}.`;
  },
  ofBike: (nickname: string, sentence: string): string => `${nickname}: ${lowered(sentence)}`,
  /** "Nothing is on record of Heron's front tyre age and coolant: look first. If they are wanted: front tyre; coolant." */
  perhaps: ({ nickname, items, uses }: { readonly nickname: string; readonly items: readonly string[]; readonly uses: readonly string[] }): string =>
    `Nothing on record on ${nickname} of ${p.list(items.map(lowered))}: look first, and buy only what is wanted: ${uses.join("; ")}.`,
  check: (): string => "Check sizes, grades and part numbers against your manual before you buy; what is entered with /spec stands beside the bike.",
});
