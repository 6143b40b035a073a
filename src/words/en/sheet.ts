// The service sheet and the job that works through it, in English.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { WorkAction } from "../../core/plan/plan.ts";
import type { Dial, DistanceUnit, Ridden } from "../../core/quantity/distance.ts";
import { symbolOf } from "../../core/quantity/units.ts";
import type { ReadingKind } from "../../core/reading/kinds.ts";
import type { Outcome } from "../../core/schedule/facts.ts";
import { OUTCOMES } from "../../core/schedule/facts.ts";
import type { Apart } from "../../core/sheet/how.ts";
import type { SheetWhy } from "../../core/sheet/select.ts";
import type { ItemValue } from "../../core/work-detail.ts";
import type { Printer } from "../printer.ts";
import { dialPoint } from "./dial-point.ts";
import type { OnBike } from "./due.ts";
import { hours } from "./outlook.ts";
import { englishSpecName } from "./spec-names.ts";
import { capital, lowered } from "./text.ts";

type Spec = {
  readonly key: string;
  readonly is: "none" | "one" | "several";
  readonly typed: readonly string[];
  readonly from: { readonly manual: string; readonly page: string | null } | null;
};
type Use = { readonly what: string; readonly count: number | null; readonly amount: string | null; readonly kind: string | null };
type Ticked = {
  readonly outcome: Outcome;
  readonly on: LocalDate;
  readonly dial: Dial | null;
  readonly found: readonly ItemValue[];
  readonly left: readonly ItemValue[];
  readonly note: string | null;
};

/** A sheet of no service: of a day, or of a point. */
type Span = { readonly until: LocalDate | null; readonly upTo: Ridden | null };
type EngineRun = "ride" | "standing" | "not run";
const WARM: Readonly<Record<EngineRun, string>> = {
  ride: "engine warm from a ride",
  standing: "engine run warm where it stands, outdoors",
  "not run": "engine warm, once it may be run again",
};
const WHY: Readonly<Record<SheetWhy, string>> = {
  now: "due already",
  there: "",
  near: "soon after, so do it now",
  next: "of the next service",
  unknown: "nothing on record",
};
const DONE_WORDS: Readonly<Record<Outcome, string>> = {
  "inspected, within limits": "looked at, within limits",
  inspected: "looked at",
  "found wrong": "looked at and found wrong",
  adjusted: "adjusted",
  replaced: "replaced",
  "topped up": "topped up",
  done: "done",
  "could not do": "could not be done",
};
const OPEN: Readonly<Record<Apart, string>> = {
  seat: "Seat off",
  tank: "Tank off, engine cold",
  "air box": "Air box open",
  "valve cover": "Valve cover off",
  "sprocket cover": "Sprocket cover off",
  "drive cover": "Drive cover off",
  "front wheel": "Front wheel out, the bike held so that it cannot tip",
  "rear wheel": "Rear wheel out, the bike held so that it cannot tip",
  "front fork": "Fork legs out",
};
type Brake = "disc" | "drum";
type Brakes = { readonly front: Brake; readonly rear: Brake };
// A drum is worked by a rod or a cable, which never pump firm. Its shoes centre themselves while the brake is held on: common practice.
const WHEEL_IN: Readonly<Record<"front wheel" | "rear wheel", Readonly<Record<Brake, string>>>> = {
  "front wheel": {
    disc: "Front wheel in: axle and pinch bolts to their torque, the brake pumped",
    drum: "Front wheel in: torque arm fastened, the brake held on while the axle is tightened to its torque so that the shoes centre, pinch bolts likewise, the brake's free play set anew, split pins new",
  },
  "rear wheel": {
    disc: "Rear wheel in: axle to its torque, the brake pumped, a split pin new",
    drum: "Rear wheel in: torque arm fastened, the brake held on while the axle is tightened to its torque so that the shoes centre, the brake's free play set anew, split pins new",
  },
};
const CLOSE: Readonly<Record<Exclude<Apart, keyof typeof WHEEL_IN>, string>> = {
  seat: "Seat on",
  tank: "Tank on, fuel lines looked at for leaks",
  "air box": "Air box closed",
  "valve cover": "Valve cover on",
  "sprocket cover": "Sprocket cover on",
  "drive cover": "Drive cover on",
  "front fork": "Fork legs in, clamp bolts to their torque",
};
const FREE_PLAY = "set its free play, see that the wheel turns freely, and that the brake holds it";

export const sheetWords = (p: Printer) => {
  const time = (minutes: number, unsaid: number): string => `${unsaid > 0 ? "at least " : "about "}${hours(minutes)}`;
  const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? "" : "s"}`;
  const by = ({ until, upTo }: Span, b: OnBike): string | null => (until !== null ? p.date(until, b.today) : upTo !== null ? dialPoint(p, upTo, b) : null);
  const service = (mark: Ridden | null, on: LocalDate | null, span: Span, b: OnBike): string =>
    by(span, b) !== null
      ? `all that falls due by ${by(span, b)}, done now`
      : mark === null
        ? `the sheet for ${on === null ? "then" : p.date(on, b.today)}`
        : `the ${dialPoint(p, mark, b)} service`;
  const listed = (values: readonly ItemValue[]): string =>
    p.list(values.map(({ value, unit, place }) => `${p.figure(value, decimals(value))} ${symbolOf(unit)}${place === null ? "" : ` ${place}`}`));
  const use = ({ what, count, amount, kind }: Use): string => {
    const named = [amount, kind].filter((each) => each !== null).join(" ");
    return `${count !== null && count > 1 ? `${count} × ` : ""}${what}${named === "" ? "" : ` (${named})`}`;
  };
  /** "Adjusted, found 0.09 mm intake 1, left 0.15 mm intake 1, today at 14,820 mi". */
  const came = ({ outcome, on, dial, found, left, note }: Ticked, b: OnBike): string => {
    const values = [found.length === 0 ? null : `found ${listed(found)}`, left.length === 0 ? null : `left ${listed(left)}`, note].filter(
      (each) => each !== null,
    );
    const where = dial === null ? "" : ` at ${p.point(dial, b.unit)}`;
    return `${DONE_WORDS[outcome]}${values.length === 0 ? "" : `, ${values.join(", ")}`}, ${on === b.today ? "today" : p.date(on, b.today)}${where}`;
  };
  return {
    /** "Heron, the 12,000 mi service: 9 items, about 5 h 20 min, 3 evenings." */
    title: (
      nickname: string,
      mark: Ridden | null,
      on: LocalDate | null,
      span: Span,
      items: number,
      minutes: number,
      unsaid: number,
      evenings: number,
      b: OnBike,
    ): string =>
      `${nickname}, ${service(mark, on, span, b)}: ${counted(items, "item")}, ${time(minutes, unsaid)}${evenings > 1 ? `, best over ${evenings} evenings` : ""}.`,
    empty: (nickname: string, mark: Ridden | null, on: LocalDate | null, span: Span, b: OnBike): string =>
      by(span, b) === null ? `${nickname}, ${service(mark, on, span, b)}: nothing falls due there.` : `${nickname}: nothing falls due by ${by(span, b)}.`,
    nearest: (services: readonly { readonly at: number; readonly unit: DistanceUnit }[]): readonly string[] =>
      services.length === 0
        ? []
        : [
            `${services.length === 1 ? "The service nearest to it" : "The services nearest to it"}: ${p.list(services.map(({ at, unit }) => `${p.figure(at, 0)} ${unit}`))}.`,
          ],
    when: (on: LocalDate | null, today: LocalDate): string | null => (on === null || on <= today ? null : `Likely about ${p.date(on, today)}.`),
    adds: (at: number, ordinary: number, names: readonly string[], unit: DistanceUnit): string =>
      names.length === 0
        ? `By the plan ${p.figure(at, 0)} ${unit} is the ${p.figure(ordinary, 0)} ${unit} list and no more.`
        : `By the plan ${p.figure(at, 0)} ${unit} is the ${p.figure(ordinary, 0)} ${unit} list plus ${p.list(names.map(lowered))}.`,
    covered: (name: string, by: string): string => `${name}: done with ${lowered(by)}.`,
    meanwhile: (names: readonly string[]): string => `Falls due well before it, and is best done then: ${p.list(names.map(lowered))}.`,
    note: (note: string): string => `Noted last time: “${note}”`,
    evening: (n: number, of: number, starts: "warm" | "cold" | "any", run: EngineRun, minutes: number, unsaid: number, waits: boolean): string => {
      const engine = starts === "any" ? "" : `, ${starts === "warm" ? WARM[run] : waits ? "engine cold, after a night's standing" : "engine cold"}`;
      return `${of === 1 ? "In this order" : `Evening ${n} of ${of}`}${engine} (${time(minutes, unsaid)}):`;
    },
    item: (n: number, name: string, minutes: number | null, position: string, why: SheetWhy): string => {
      const notes = [minutes === null ? null : hours(minutes), position === "any" ? null : position, WHY[why] === "" ? null : WHY[why]].filter(
        (each) => each !== null,
      );
      return `${n}. ${name}${notes.length === 0 ? "" : ` (${notes.join(", ")})`}`;
    },
    /** "Oil drain plug: 24 N·m (Handbook, p. 12)". */
    spec: ({ key, typed, from }: Spec): string => {
      const name = specName(key);
      const page = from === null ? "" : ` (${[from.manual, from.page === null ? null : `p. ${from.page}`].filter((each) => each !== null).join(", ")})`;
      return typed.length > 1 ? `${name}: members differ, ${typed.map(asPrinted).join(" or ")}; see /spec` : `${name}: ${asPrinted(typed[0] ?? "")}${page}`;
    },
    look: (keys: readonly string[]): string =>
      `Not entered yet, so look it up in your manual: ${p.list(keys.map((key) => lowered(specName(key))))}. Enter it once with /spec and it stands here.`,
    measure: (kinds: readonly ReadingKind[]): string => `Note what you find and leave: ${p.list(kinds)}.`,
    open: (part: Apart): string => `${OPEN[part]}.`,
    close: (part: Apart, brakes: Brakes): string =>
      `${part === "front wheel" ? WHEEL_IN[part][brakes.front] : part === "rear wheel" ? WHEEL_IN[part][brakes.rear] : CLOSE[part]}.`,
    staysApart: (parts: readonly Apart[]): string => {
      const names = parts.map((part) => (part === "front fork" ? "fork legs" : part));
      const several = names.length > 1 || parts.includes("front fork");
      return `The ${p.list(names)} ${several ? "stay" : "stays"} out until another evening: leave the bike held so that it cannot tip, and do not move it.`;
    },
    warmUp: (run: EngineRun): string =>
      run === "not run"
        ? "What follows wants the engine warm: it waits until what keeps it from being run is closed."
        : "Run the engine warm, all of it closed and in fresh air: what follows wants it warm.",
    tension: (drive: "chain" | "belt"): string =>
      drive === "chain" ? "Chain slack again, now that the wheel was out." : "Belt tension again, now that the wheel was out.",
    /** What is done with the brakes before the bike moves. */
    brakes: ({ front, rear }: Brakes): readonly string[] => {
      if (front === "disc" && rear === "disc") return ["Pump the brake lever and pedal hard until they are firm, before the bike moves."];
      if (front === "drum" && rear === "drum") return [`Each drum brake, before the bike moves: ${FREE_PLAY}.`];
      const [disc, drum] = front === "disc" ? ["front", "rear"] : ["rear", "front"];
      return [`The ${disc} brake, before the bike moves: pump it hard until it is firm.`, `The ${drum} drum brake likewise: ${FREE_PLAY}.`];
    },
    lastLook: (habits: readonly string[]): string =>
      habits.length === 0
        ? "A last look round: nothing loose, nothing left open."
        : `A last look round: ${p.list(habits.map(lowered))}; nothing loose, nothing left open.`,
    testRide: (run: EngineRun): string =>
      `${run === "ride" ? "Last, a short test ride" : "No test ride before all that keeps it off the road is closed; then a short one, gently and close to home"}; then look for leaks, and feel that nothing is hot that should not be.`,
    /** Behind what stands open. */
    notRidden: (run: Exclude<EngineRun, "ride">, said: boolean): string => {
      const how =
        run === "standing"
          ? "It is not ridden, so warm it standing, outdoors: exhaust gas kills indoors."
          : "It is neither ridden nor run before it is put right.";
      return said ? `${how} What that takes is among what to have ready; record the work, and it is closed.` : how;
    },
    overnight: (): string => "Then let it stand overnight: the next evening wants the engine cold.",
    tools: (names: readonly string[]): string => `Tools: ${p.list(names)}.`,
    uses: (uses: readonly Use[]): string => `To have ready: ${uses.map(use).join("; ")}.`,
    lookFirst: (names: readonly string[]): string =>
      `Nothing is on record of ${p.list(names.map(lowered))}: look whether ${names.length === 1 ? "it is" : "they are"} wanted, and record since when ${names.length === 1 ? "it is" : "they are"} on.`,
    use,
    tableAlt: (nickname: string): string => `The whole sheet of ${nickname} as a table to print: item, time, values, and room for found, left and done.`,
    tableHead: (): readonly string[] => ["Evening", "No.", "What", "Minutes", "Values", "Found", "Left", "Done"],
    labels: {
      start: "Begin this job",
      go: "Go on with the job",
      evening: (n: number): string => `Evening ${n}`,
      tick: "Tick off or note an item",
      done: "Done",
      values: "Note found and left",
      finish: "Finish the job",
      shop: "A shop did it",
      leave: "Put the sheet away",
      reopen: "Open it again",
      bill: "Not on the bill",
      back: "Put it back",
      first: (name: string): string => `Take the first back: ${lowered(name)}`,
      undo: "Undo",
      sheet: "Show the job",
    },
    /** @param came how many items came to each outcome */
    jobTitle: (
      nickname: string,
      mark: Ridden | null,
      begun: LocalDate,
      { open, of, came }: { readonly open: number; readonly of: number; readonly came: ReadonlyMap<Outcome, number> },
      state: "open" | "finished" | "left",
      b: OnBike,
    ): string => {
      const what = `${nickname}, ${mark === null ? "the sheet" : `the ${dialPoint(p, mark, b)} service`}, begun ${begun === b.today ? "today" : p.date(begun, b.today)}`;
      const undone = came.get("could not do") ?? 0;
      switch (state) {
        case "open":
          return open === 0 ? `${what}: all ${of} items are ticked.` : `${what}: ${open} of ${counted(of, "item")} to go.`;
        case "finished":
          return [
            `${what}: finished${open === 0 && undone === 0 ? `, all ${of} items ticked` : ""}.`,
            ...(came.size === 0 ? [] : [`Of ${counted(of, "item")}: ${OUTCOMES.flatMap((each) => tally(came.get(each) ?? 0, DONE_WORDS[each])).join("; ")}.`]),
            ...(undone === 0 ? [] : [`What could not be done stays due as before.`]),
            ...(open === 0 ? [] : [`${counted(open, "item")} left, which ${open === 1 ? "stays" : "stay"} due as before.`]),
          ].join(" ");
        case "left":
          return `${what}: put away. What was ticked stays recorded.`;
      }
    },
    standOvernight: (): string => "The engine was worked at warm today: let it stand overnight before the next item, which wants it cold.",
    jobEvening: (n: number, of: number): string => (of === 1 ? "To do:" : `Evening ${n} of ${of}:`),
    jobOpen: (name: string, engine: "cold" | "warm" | "any"): string => `- ${name}${engine === "any" ? "" : `, engine ${engine}`}`,
    jobDone: (name: string, ticked: Ticked, b: OnBike): string => `- ${name}: ${came(ticked, b)}`,
    /** A record of the same item beside it. */
    jobEarlier: (ticked: Ticked, b: OnBike): string => `  Before that: ${came(ticked, b)}`,
    /** The same item a second time in one job. */
    twice: (name: string): string =>
      `${name} was ticked before, so it stands on record twice now. If this puts the first right, take the first back; if it was one too many, undo this one.`,
    /** "By Corner garage (not itemised; 380), today at 12,040 mi: fasteners and spark plugs". */
    jobTogether: (
      names: readonly string[],
      { on, dial, doneBy, note, cost }: Ticked & { readonly doneBy: string | null; readonly cost: string | null },
      b: OnBike,
    ): string =>
      `- By ${doneBy ?? "a shop"}${note === null && cost === null ? "" : ` (${[note, cost].filter((each) => each !== null).join("; ")})`}, ${on === b.today ? "today" : p.date(on, b.today)}${dial === null ? "" : ` at ${p.point(dial, b.unit)}`}: ${p.list(names.map(lowered))}`,
    jobGone: (name: string): string => `- ${name}: no longer in the plan`,
    later: (n: number): string => `${counted(n, "item")} on later evenings.`,
    ticked: (): string => "Ticked:",
    jobNote: (note: string): string => `Note for next time: “${note}”`,
    card: (name: string, action: WorkAction | null): string => `${name}: ${action === null ? "what came of it?" : `${CARD[action]} What came of it?`}`,
    itemForm: (name: string, today: string) => ({
      title: name.slice(0, 45),
      fields: [
        field(
          "outcome",
          "What came of it",
          "choice",
          false,
          OUTCOMES.map((value) => ({ value, label: capital(DONE_WORDS[value]) })),
        ),
        field("found", "Found", "line", false, [], "0.09 mm intake 1, 0.1 mm intake 2; or in words"),
        field("left", "Left", "line", false, [], "0.15 mm"),
        field("at", "Odometer", "line", false, [], "14,820 mi"),
        field("on", "Day, if not today", "line", false, [], today),
      ],
    }),
    finishForm: () => ({
      title: "Finish the job",
      fields: [field("note", "Note for next time", "paragraph", false, [], "Left cover gasket is worn; order one")],
    }),
    shopForm: () => ({
      title: "A shop did it",
      fields: [
        field("at", "Odometer", "line", false, [], "12,040 mi"),
        field("on", "Day, if not today", "line", false, [], "3 May"),
        field("cost", "What it cost, as on the bill", "line", false, [], "380"),
        field("shop", "Which shop", "line", false, [], null),
      ],
    }),
  };
};

const tally = (n: number, words: string): readonly string[] => (n === 0 ? [] : [`${n} ${words}`]);

/** As it was typed, with the sign of the unit as everywhere else. */
const asPrinted = (typed: string): string => typed.replace(/(?<=\d\s*)N\s?[.·*-]?\s?m\b/gu, "N·m");

/** "Rear axle torque" where the name alone would be a thing, not a value. */
function specName(key: string): string {
  const name = englishSpecName(key);
  return key.endsWith(" torque") && !/torque|tightening/iu.test(name) ? `${name} torque` : name;
}

/** As many as were typed. */
const decimals = (value: number): number => (String(value).split(".")[1] ?? "").length;

const CARD: Readonly<Record<WorkAction, string>> = {
  inspect: "look it over.",
  measure: "measure it.",
  adjust: "measure what you find, adjust it, note what you leave.",
  clean: "clean it.",
  lubricate: "grease or oil it.",
  "top up": "top it up; why did it fall?",
  bleed: "bleed it.",
  test: "try it.",
  "check tightness": "check that it is tight.",
  replace: "fit a new one.",
};

const field = (
  name: string,
  label: string,
  kind: "line" | "paragraph" | "choice",
  required: boolean,
  options: readonly { readonly value: string; readonly label: string }[] = [],
  hint: string | null = null,
) => ({ name, label, kind, required, value: null, hint, options });
