// A plain message as it was heard, and what came of it, as data.

import type { BikeId, ItemKey } from "../core/ids.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { ReadingKind, ReadingUnit } from "../core/reading/kinds.ts";
import type { Refusal } from "../core/refusal.ts";
import type { Status } from "../core/schedule/facts.ts";
import type { Taken } from "../core/schedule/measured.ts";
import type { ForCommand } from "../message/for-a-command.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { WorkRecord } from "../store/work.ts";
import type { LookedUp } from "../trade/looked-up.ts";
import type { BatteryPut } from "./battery-put.ts";
import type { Counted } from "./checked.ts";
import type { ConvertAnswer } from "./convert.ts";
import type { DefectShown } from "./defect-shown.ts";
import type { TyreAged } from "./fitted.ts";
import type { FluidPut, FluidUnknown } from "./fluids.ts";
import type { FuelShown } from "./fuel.ts";
import type { SetIndoors } from "./judge-tyres.ts";
import type { JudgedOn } from "./judged.ts";
import type { LeakOn } from "./leaks.ts";
import type { LimitSaid } from "./limits-said.ts";
import type { NotFitted } from "./not-fitted.ts";
import type { Question } from "./question.ts";
import type { SpecAnswer } from "./spec-ask.ts";
import type { TyreMarkSaid } from "./tyre-marks-heard.ts";
import type { TyresBuilt } from "./tyres-built.ts";

/** `again`: the message was heard before, so that records of it may be there, withdrawn ones included. */
export type Heard = {
  readonly message: string;
  readonly text: string;
  readonly addressed: boolean;
  readonly again?: true;
  /** What came with it as a file. */
  readonly file?: SentFile;
  /** What it replies to: the message, and the subjects of what can be pressed there. Null: it replies to nothing. */
  readonly answers: { readonly message: string; readonly subjects: readonly string[] } | null;
};

/** What a file is by its name. */
export type SentFile = "plan" | "table" | "picture" | "other";

/** An item that this message made more urgent. */
export type News = { readonly bike: BikeId; readonly nickname: string; readonly item: ItemKey; readonly called: string; readonly status: Status };

/** A bike as an answer names it. */
export type NamedBike = { readonly id: BikeId; readonly nickname: string; readonly unit: DistanceUnit };

/** A nickname and an odometer, as typed. */
export type FirstSeen = { readonly name: string | null; readonly odometer: string | null };

/** A name beside the nickname, just learned, with the bike that it means. */
export type Learned = { readonly name: string; readonly nickname: string };

export type MessageOutcome =
  | { readonly is: "silence" }
  /** `gone`: bikes there were, now sold or retired. `seen`: what the message says of the first ones. */
  | { readonly is: "no bikes"; readonly gone: readonly string[]; readonly seen: readonly FirstSeen[] }
  | { readonly is: "too long" }
  /** A file, and nothing to log beside it, or a whole chart as a message: only a command takes one. */
  | { readonly is: "file sent"; readonly file: SentFile | "chart" }
  /** `otherwise`: it names work at what none of the bikes has. `command`: what it tells is a command's. */
  | { readonly is: "not understood"; readonly bikes: readonly string[]; readonly otherwise?: NotFitted; readonly command?: ForCommand }
  | { readonly is: "seen before" }
  /** What was asked is of a bike sold or retired since. */
  | { readonly is: "bike gone" }
  /** An edit without anything to log; what the message logged before still stands. */
  | {
      readonly is: "stands";
      readonly source: string;
      readonly readings: readonly ReadingRecord[];
      readonly work: readonly WorkRecord[];
      readonly defects: readonly DefectShown[];
      readonly bikes: readonly NamedBike[];
    }
  /** An edit of a message whose log was taken back. */
  | { readonly is: "taken back" }
  /** Another member's message. */
  | { readonly is: "not yours" }
  | {
      readonly is: "logged";
      readonly source: string;
      readonly readings: readonly ReadingRecord[];
      readonly work: readonly WorkRecord[];
      readonly defects: readonly DefectShown[];
      /** Open defects that the work closed, and those that it may have. */
      readonly closed: readonly DefectShown[];
      readonly mayClose: readonly { readonly defect: DefectShown; readonly work: string }[];
      /** Open defects of what was read now, of which it could not be told whether it is right. */
      readonly staying?: readonly DefectShown[];
      readonly bikes: readonly NamedBike[];
      readonly news: readonly News[];
      /** What came of judging these readings. */
      readonly judged?: readonly JudgedOn[];
      /** Items that the readings count for as looked at, and what is lacking of others. */
      readonly counted?: readonly Counted[];
      /** How old the tyres are of which it says the date code: of those fitted with it only where that calls for something. */
      readonly aged?: readonly TyreAged[];
      /** Readings among them of a part that came off since, or of a set of tyres that is off: kept, and not judged as of the one that is on. */
      readonly ofPartsOff?: readonly Pick<Taken, "id" | "kind" | "place" | "value" | "unit" | "typed">[];
      /** Fluids put into brakes that are fitted with another. */
      readonly fluids?: readonly FluidPut[];
      /** Fluids that are said to have gone into the brakes or the clutch, and that nobody here knows. */
      readonly unknownFluids?: readonly FluidUnknown[];
      /** New batteries of another kind than their bike is entered with, to be entered with a press. */
      readonly batteries?: readonly BatteryPut[];
      /** How both ends are built, of bikes that got one new tyre, or two that do not match. */
      readonly built?: readonly TyresBuilt[];
      /** What the fills of fuel among them come to. */
      readonly fuel?: readonly FuelShown[];
      /** Tyres among those read that leak, and the unit of the reading that shows it. */
      readonly leaks?: readonly (LeakOn & { readonly bike: BikeId; readonly unit: ReadingUnit | null })[];
      /** Earlier readings that were withdrawn as slips for this one's sake. */
      readonly withdrawn: readonly ReadingRecord[];
      /** Bikes that were at home in no group, and go by the speaker's from now on. */
      readonly home?: readonly string[];
      /** What an answer taught: which bike a word means. */
      readonly learnt?: Learned;
      /** What the message says of a bike beside that and nobody understood, as typed. */
      readonly unread?: readonly string[];
      /** What of that is the limit of a reading that was logged, to be saved with a press. */
      readonly limits?: readonly LimitSaid[];
    }
  /** `several`: so many open questions could be answered by what was typed. */
  | { readonly is: "asked"; readonly question: Question; readonly learnt?: Learned; readonly several?: number; readonly unread?: readonly string[] }
  /** A spec asked for, of the bot by name: one answer for each bike meant. */
  | { readonly is: "specs"; readonly answers: readonly SpecAnswer[] }
  /** What to set in a warm garage before a cold road, asked for likewise. */
  | { readonly is: "indoors"; readonly answer: SetIndoors }
  /** Told what kind its battery is: as it is entered, or `other`, which one press enters. */
  | { readonly is: "battery told"; readonly bikes: readonly (BatteryPut & { readonly other: boolean })[] }
  | { readonly is: "not indoors"; readonly why: Refusal }
  /** How something is measured, asked of the bot by name. */
  | { readonly is: "how to"; readonly kinds: readonly ReadingKind[] }
  /** What is moulded on a sidewall, said to the bot by itself: what it means, and what could be saved of it as the size of a bike's tyre. */
  | { readonly is: "tyre marks"; readonly tyres: readonly TyreMarkSaid[] }
  /** A row of an open table, asked for likewise. */
  | { readonly is: "looked up"; readonly table: LookedUp }
  /** A question about units, asked of the bot by name. */
  | { readonly is: "converted"; readonly conversion: ConvertAnswer }
  /** A question about units that has no answer as it was put. */
  | { readonly is: "cannot convert"; readonly why: Refusal };
