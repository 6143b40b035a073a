// Every way in which a member's request can be refused, as data; words/ has one sentence for each.

import type { LocalDate } from "./calendar/dates.ts";
import type { EquipmentPart } from "./equipment.ts";
import type { ItemKey } from "./ids.ts";
import type { WhyNot } from "./quantity/conversion.ts";
import type { DistanceUnit } from "./quantity/distance.ts";
import type { UnitId } from "./quantity/units.ts";

export type Refusal =
  | { readonly why: "no bikes yet" }
  | { readonly why: "unknown bike"; readonly named: string; readonly bikes: readonly string[] }
  | { readonly why: "which bike"; readonly bikes: readonly string[] }
  | { readonly why: "nickname taken"; readonly nickname: string }
  | { readonly why: "not called so"; readonly nickname: string; readonly name: string; readonly names: readonly string[] }
  | {
      readonly why: "nickname unusable";
      readonly because: "empty" | "too long" | "mentions everyone" | "looks like a reading" | "hidden marks" | "word of its own";
    }
  | { readonly why: "not a distance"; readonly typed: string; readonly unit: DistanceUnit | null }
  | { readonly why: "unit missing"; readonly typed: string }
  | { readonly why: "out of range"; readonly typed: string }
  | { readonly why: "future date"; readonly on: LocalDate /** The same day of last year, where no year was typed. */; readonly before?: LocalDate }
  | { readonly why: "not a date"; readonly typed: string }
  | { readonly why: "no such item"; readonly typed: string; readonly nearest: readonly string[] }
  /** Work at what this bike has not: `part` would have to be one of `wants`. */
  | {
      readonly why: "item not fitted";
      readonly item: ItemKey;
      readonly nickname: string;
      readonly part: EquipmentPart;
      readonly is: string;
      readonly wants: readonly string[];
    }
  | { readonly why: "which item"; readonly typed: string; readonly items: readonly string[] }
  | { readonly why: "runs backwards"; readonly typed: string; readonly last: { readonly figure: number; readonly unit: DistanceUnit } | null }
  | { readonly why: "implausible jump"; readonly typed: string; readonly last: { readonly figure: number; readonly unit: DistanceUnit } | null }
  /** Readings were logged since on the dial that is to be taken back. */
  | { readonly why: "later on that dial" }
  /** All the bikes are sold or retired. */
  | { readonly why: "all gone"; readonly bikes: readonly string[] }
  /** How far to look ahead. */
  | { readonly why: "not ahead"; readonly typed: string; readonly because: "over a year" | "not read" | "past" | "too far" | "no reading" }
  | { readonly why: "not an interval"; readonly typed: string }
  /** A distance in two units that are not the same distance. */
  | { readonly why: "two distances"; readonly miles: number; readonly km: number }
  /** A change of a plan line that does not say enough. */
  | {
      readonly why: "plan change";
      readonly because: "nothing said" | "no marks" | "counted from" | "no interval" | "marks and use" | "no list" | "marks from last" | "itself";
      readonly typed: string;
    }
  | { readonly why: "not a cost"; readonly typed: string }
  /** Sets of tyres: what is wrong with the one named. */
  | { readonly why: "tyres"; readonly because: "what came off" | "on already" | "other on" | "earlier" | "name" | "by set"; readonly set: string }
  /** Nothing of that part is on record as having come off. */
  | { readonly why: "nothing to put back"; readonly part: string; readonly nickname: string }
  | { readonly why: "belt width not kept" }
  /** What was read off a tyre's sidewall. */
  | {
      readonly why: "not a tyre code";
      readonly typed: string;
      readonly because: "no code" | "no such week" | "to come" | "no mark" | "several codes" | "several marks";
    }
  | { readonly why: "not a pressure"; readonly typed: string }
  | { readonly why: "not a temperature"; readonly typed: string }
  /** Beyond any motorcycle tyre, or beyond what a garage or a road is when somebody rides; `low` and `high` in `unit`. */
  | {
      readonly why: "no tyre so";
      readonly of: "pressure" | "temperature";
      readonly typed: string;
      readonly low: number;
      readonly high: number;
      readonly unit: UnitId;
    }
  /** Specs: `keys` and `nearest` are rows of trade/spec-keys. */
  | { readonly why: "no such spec"; readonly typed: string; readonly nearest: readonly string[] }
  /** `value` as typed, so that nothing of it is lost. */
  | { readonly why: "which spec"; readonly typed: string; readonly value: string; readonly keys: readonly string[] }
  | { readonly why: "not fitted"; readonly keys: readonly string[]; readonly nickname: string }
  | {
      readonly why: "not a spec";
      readonly key: string;
      readonly typed: string;
      readonly because:
        | "not read"
        | "unit missing"
        | "other dimension"
        | "two figures"
        | "no such share"
        | "no such class"
        | "less than none"
        | "volts at rest";
    }
  /** A limit typed as its other side, or as a window where it has one side alone; a value to set typed with one end open. `end`: what the key means; `alone`: its figure alone, canonical in `unit`. */
  | {
      readonly why: "wrong end";
      readonly key: string;
      readonly typed: string;
      readonly end: "value" | "least" | "most";
      readonly alone: number;
      readonly unit: UnitId;
    }
  /** A measured value where words belong. `meant`: what of the bike is measured so and can be that. */
  | { readonly why: "spec in words"; readonly key: string; readonly typed: string; readonly meant: readonly string[] }
  /** Beyond what any bike asks for; `low` and `high` are canonical, shown in `unit`. `fits`: what was meant, perhaps. */
  | {
      readonly why: "spec out of range";
      readonly key: string;
      readonly typed: string;
      readonly low: number;
      readonly high: number;
      readonly unit: UnitId;
      readonly fits: readonly { readonly value: number; readonly unit: UnitId }[];
    }
  /** How a reading was taken: an engine speed, or over how many pitches. */
  | { readonly why: "not how"; readonly how: "rpm" | "pitches"; readonly typed: string }
  /** A check: of which bike, a figure that was not read, or an answer that cannot be. */
  | {
      readonly why: "check";
      readonly because: "whose bike" | "not a temperature" | "not a figure" | "not a link" | "every bike has it" | "none finished" | "not a season";
      readonly typed?: string;
    }
  /** Nothing of the plan falls due that a sheet could be made of. */
  | { readonly why: "no sheet" }
  /** No service sheet is being worked through. */
  | { readonly why: "no job" }
  /** It was finished or put away. */
  | { readonly why: "job ended" }
  /** Another one is being worked through on the same bike. */
  | { readonly why: "job open" }
  | { readonly why: "no group plan"; readonly model: string | null }
  | { readonly why: "no model"; readonly nickname: string }
  | {
      readonly why: "bad plan file";
      readonly line: number;
      readonly at: string;
      readonly because: "not JSON" | "twice" | "no leg" | "type" | "two distances" | "choice" | "field" | "too much" | "too little" | "empty" | "format";
      readonly detail: string;
    }
  | { readonly why: "trip"; readonly because: "not read" | "backwards" | "past" | "too far" | "too far a day"; readonly typed: string }
  | { readonly why: "not yours" }
  | { readonly why: "gone" }
  | { readonly why: "changed meanwhile" }
  | { readonly why: "already done" }
  /** The same event, told of twice by the platform or to two processes. */
  | { readonly why: "heard already" }
  | { readonly why: "not in a group" }
  | { readonly why: "admins only" }
  | { readonly why: "not a zone"; readonly typed: string /** zones that may be meant */; readonly near: readonly string[] }
  | { readonly why: "not a time"; readonly typed: string }
  /** A time in the hours in which nothing is sent. */
  | { readonly why: "quiet time"; readonly typed: string; readonly from: string; readonly to: string }
  | { readonly why: "not a weekday"; readonly typed: string }
  | { readonly why: "nothing to change" }
  /** A form's field that must say something. */
  /** It may be right again by a new one or with the old one, and the words name neither. */
  | { readonly why: "new or mended"; readonly items: readonly string[] }
  | { readonly why: "left blank"; readonly field: "what was done" | "what it was" }
  | { readonly why: "already so"; readonly state: string }
  | {
      readonly why: "cannot convert";
      readonly typed: string;
      readonly because: WhyNot;
      readonly to: string | null;
      /** The word that was not understood, where it was one word. */
      readonly word: string | null;
      readonly candidates: readonly string[];
    }
  | { readonly why: "not a torque"; readonly typed: string }
  | { readonly why: "not a range"; readonly typed: string }
  | { readonly why: "not a step"; readonly typed: string; readonly unit: string }
  | { readonly why: "not an accuracy"; readonly typed: string }
  | { readonly why: "not an angle"; readonly typed: string }
  | { readonly why: "not a length"; readonly typed: string }
  | { readonly why: "no such wrench"; readonly typed: string; readonly wrenches: readonly string[] }
  | { readonly why: "one end only"; readonly typed: string }
  /** What is missing: both lengths, the angle, or an angle that can be; null: the lengths and the angle together leave no lever. */
  | { readonly why: "adapter geometry"; readonly missing: "lengths" | "angle" | "possible angle" | null }
  | { readonly why: "not a thread"; readonly typed: string }
  /** `listed`: the threads of that size, else every size of that system. */
  | { readonly why: "thread not listed"; readonly typed: string; readonly ofSize: boolean; readonly listed: readonly string[] }
  | { readonly why: "grade of the other system"; readonly grade: string; readonly thread: string; readonly grades: readonly string[] }
  /** `joint`: the kind it was known as, null for anything that is not named harmless; `estimated`: the kinds that are. */
  | { readonly why: "never estimated"; readonly joint: string | null; readonly estimated: readonly string[] }
  | { readonly why: "small screw in aluminium" }
  | { readonly why: "engagement missing" }
  /** `most` in millimetres. */
  | { readonly why: "engagement too long"; readonly typed: string; readonly thread: string; readonly most: number }
  | { readonly why: "not a hex size"; readonly typed: string }
  | { readonly why: "not a count"; readonly typed: string; readonly from: number; readonly to: number }
  | { readonly why: "too long"; readonly limit: number }
  | { readonly why: "unknown command"; readonly typed: string; readonly nearest: readonly string[] }
  | {
      readonly why: "option";
      readonly option: string;
      readonly problem: "missing" | "unknown" | "not a choice" | "too long" | "file too large" | "file not text" | "file not there";
      readonly choices: readonly string[];
    };
