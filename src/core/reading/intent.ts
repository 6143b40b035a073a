// What a member meant, wherever it was said: a message, a command and a form all end in these.
// An intent with gaps is kept as a draft until its questions are answered; nothing with a gap is ever saved.

import type { LocalDate, VagueDate } from "../calendar/dates.ts";
import type { Grade } from "../defect.ts";
import type { BikeId, ItemKey } from "../ids.ts";
import type { DistanceUnit } from "../quantity/distance.ts";
import type { HowWeKnow, Outcome } from "../schedule/facts.ts";
import type { ItemValue, WorkDetail } from "../work-detail.ts";
import type { AirSaid, ReadingDetail } from "./detail.ts";
import type { Place, ReadingKind, ReadingUnit } from "./kinds.ts";

/** What the member typed, to the letter, and the unit word if there was one. */
export type Typed = { readonly text: string; readonly unit: string | null };

/** A value read off the bike. `value` is the figure as typed, in `unit`; it is converted when it is saved, never before. */
export type LogReading = {
  readonly do: "log reading";
  readonly bike: BikeId | null;
  readonly kind: ReadingKind;
  readonly place: Place | null;
  readonly value: number;
  readonly unit: ReadingUnit | null;
  readonly typed: Typed;
  readonly on: LocalDate;
  /** What was said beside the value. */
  readonly detail?: ReadingDetail;
  /** The member has said that a strange value is right. */
  readonly sure?: true;
  readonly gaps: readonly Gap[];
};

/** Work done. `items` empty while it is not known which plan items were meant. */
export type RecordWork = {
  readonly do: "record work";
  readonly bike: BikeId | null;
  readonly items: readonly ItemKey[];
  /** The words that named the work, as typed. */
  readonly words: string;
  readonly on: VagueDate;
  readonly odometer: { readonly value: number; readonly unit: DistanceUnit | null; readonly typed: Typed } | null;
  readonly outcome: Outcome;
  /** Nobody said the outcome: it is the usual one, unless what was found and left says otherwise. */
  readonly usual?: true;
  readonly how: HowWeKnow;
  /** What went into it; left out when nothing was said. */
  readonly detail?: WorkDetail;
  /** Values found and left, by item. */
  readonly values?: readonly { readonly item: ItemKey; readonly found: readonly ItemValue[]; readonly left: readonly ItemValue[] }[];
  readonly note?: string;
  /** Of a look, what was said beside it and says neither that all was well nor what was wrong. */
  readonly beside?: string;
  /** A fault that was found by it, to be noted on the bike. */
  readonly fault?: Fault;
  /** Open defects that the words name, which this closes. */
  readonly closes?: readonly string[];
  /** The member has said that a strange odometer figure is right. */
  readonly sure?: true;
  readonly gaps: readonly Gap[];
};

/** What was found wrong by looking at an item: noted with the record of the look. `kind` as in `NoteDefect`; `grade` null where nobody has said. */
export type Fault = { readonly kind: string | null; readonly words: string; readonly grade: Grade | null };

/** Something found wrong. */
export type NoteDefect = {
  readonly do: "note defect";
  readonly bike: BikeId | null;
  /** Key of a kind of defect; null when the words name none. */
  readonly kind: string | null;
  /** What was found, as typed. */
  readonly words: string;
  readonly on: LocalDate;
  readonly odometer: RecordWork["odometer"];
  /** The member has said that a strange odometer figure is right. */
  readonly sure?: true;
  readonly gaps: readonly Gap[];
};

export type Intent = LogReading | RecordWork | NoteDefect;

/** What is still to be asked, with the answers to offer. */
export type Gap =
  | {
      readonly need: "bike";
      readonly options: readonly BikeId[] /** the word that named no bike, or several; null when none was named */;
      readonly named: string | null;
      /** Nothing of theirs is called so: the answer is remembered. */
      readonly unheard?: true;
    }
  | { readonly need: "place"; readonly options: readonly Place[] }
  /** A figure that two kinds share: "sag 35" may be with the rider on or without. */
  | { readonly need: "kind"; readonly options: readonly ReadingKind[] }
  /** "Low" may be at the mark or below it: places in the list of levels. */
  | { readonly need: "level"; readonly options: readonly number[] }
  | { readonly need: "unit"; readonly options: readonly ReadingUnit[] }
  /** "14.820" may be fourteen thousand or fourteen and a bit. `share`: of two parts of a mix, which is the antifreeze. */
  | { readonly need: "number"; readonly options: readonly number[]; readonly share?: true }
  /** `end`: the only one that was named of what the plan has in one line for both ends. */
  | { readonly need: "item"; readonly options: readonly ItemKey[]; readonly end?: "front" | "rear" }
  /** The whole of a service, by the figure that names it: which one the plan has there, and that all of it was done. No figure: by that at which it was done, or where the bike stands. `own`: what the member ticked off in the job that is open. */
  | { readonly need: "service"; readonly figure: number | null; readonly unit: DistanceUnit | null; readonly own?: readonly ItemKey[] }
  | { readonly need: "date"; readonly options: readonly LocalDate[]; readonly typed: string }
  /** Do the words say that an item was found wrong, or are they a note? */
  | { readonly need: "found"; readonly options: readonly ["found wrong", "only a note"] }
  /** Is something wrong with the bike, or was it talk? */
  | { readonly need: "defect" }
  /** Strange beside the bike's history, as usecases find it; "warm", "trip" and what no tyre's date code can be are the reader's. */
  | {
      readonly need: "sure";
      readonly because:
        | "runs backwards"
        | "beyond a later one"
        | "implausible jump"
        | "moved while laid up"
        | "out of range"
        | "future date"
        | "warm"
        | "trip"
        | "grew"
        | "no such code"
        | "code to come"
        | "code after fitting"
        | "year alone"
        | "not fitted"
        | "two temperatures"
        | "which degrees"
        | "less than"
        | "more than";
      /** Of what grew: the reading before, in the canonical unit, with the unit it was read in. */
      readonly before?: { readonly value: number; readonly unit: ReadingUnit; readonly on: LocalDate };
      /** Of a tyre of which only the year or the age was said: so many years old it is at least. */
      readonly years?: number;
      /** Of a tyre's date code: as typed, and when that tyre was fitted. */
      readonly made?: { readonly code: string; readonly fitted: VagueDate };
    };

/** What a message came to. */
export type Meant = {
  /** In the order they were said. Empty: not a reading, nothing done. */
  readonly intents: readonly Intent[];
  /** Bikes that the message named, in order. */
  readonly bikes: readonly BikeId[];
  /** True when nothing was understood but a bike or a unit was named, so that someone who addressed the bot gets a useful answer. */
  readonly nearMiss: boolean;
  /** It came to nothing, and says that work was done at something that no plan of the bikes has. */
  readonly lacks?: true;
  /** What it says of a bike beside that, and came to nothing, as typed. */
  readonly unread: readonly string[];
  /** Longer than what is read: answered, not read. */
  readonly tooLong: boolean;
  /** What to set in a garage before a ride on a colder road, asked for: the pressure wanted as typed, and how warm both are. */
  readonly indoors: { readonly want: string; readonly air: AirSaid } | null;
};
