// The words people type, as data. Each language supplies one; the reader knows none by heart.

import type { LocalDate } from "../calendar/dates.ts";
import type { BikeId, ItemKey } from "../ids.ts";
import type { System, WorkAction } from "../plan/plan.ts";
import type { AskingWords } from "../quantity/asking.ts";
import type { DistanceUnit } from "../quantity/distance.ts";
import type { NumberStyle } from "../quantity/number.ts";
import type { UnitNames } from "../quantity/parse.ts";
import type { UnitId } from "../quantity/units.ts";
import type { HowWeKnow } from "../schedule/facts.ts";
import type { SpecWords } from "../spec/find.ts";
import type { ChartWords } from "./chart-words.ts";
import type { DefectWords } from "./defect-words.ts";
import type { DetailWords } from "./detail-words.ts";
import type { FoundWords } from "./found-words.ts";
import type { ReadingKind } from "./kinds.ts";
import type { MeasuringWords, PlaceWord } from "./measuring-words.ts";

/** A language that messages are read in. */
export type Language = "en" | "de";

export type Vocabulary = {
  readonly language: Language;
  readonly units: UnitNames;
  /** What stands around a question about units. */
  readonly asking: AskingWords;
  /** Words that name a kind of reading: "tread", "pressure", "odo". */
  readonly kinds: Readonly<Record<ReadingKind, readonly string[]>>;
  readonly places: Readonly<Record<PlaceWord, readonly string[]>>;
  /** What stands with a measured value: levels, conditions, sides. */
  readonly measuring: MeasuringWords;
  /** What people type for a standard item, by item key: "oil and filter". */
  readonly items: Readonly<Record<string, readonly string[]>>;
  /** Words that say work was done, with the actions each can mean; empty: any. */
  readonly workDone: Readonly<Record<string, readonly WorkAction[]>>;
  /** What may be said of a thing that is worn out or in order as well as of work on it. */
  readonly maybe: { readonly done: readonly string[]; readonly is: readonly string[]; readonly ok: readonly string[] };
  /** Words that may stand around a job without being one: "and", "the", "myself". */
  readonly around: readonly string[];
  /** Work that is told by its verb alone, with the item it means where the bike has it: "lubed". */
  readonly loneWork: Readonly<Record<string, string>>;
  /** What is tightened to a value and is no item by itself: "rear axle". */
  readonly joints: readonly string[];
  readonly articles: readonly string[];
  /** What joins two things said in one breath: "and", "n". */
  readonly and: readonly string[];
  /** Words that begin another thought: "and", "but". */
  readonly joins: readonly string[];
  /** Words that stand for "replaced" where a thing and nothing else is named: "new battery". */
  readonly renewed: readonly string[];
  /** Words that say a pressure was not read cold. */
  readonly warm: readonly string[];
  /** Words before a figure at which work was done, or that a dial shows: "at", "@". */
  readonly at: readonly string[];
  /** Before an at-word these make the figure behind it what the dial shows now: "is at 14,820". */
  readonly stands: readonly string[];
  /** Words before a bike's name: "on", "for". */
  readonly onBike: readonly string[];
  /** Words that may stand around a bare reading without changing it: "now", "just hit", "clock". */
  readonly beside: readonly string[];
  /** What is planned, wished or denied is not done: "need to", "should", "haven't". */
  readonly notDone: readonly string[];
  /** Of those, words that deny what was done and not what is wrong: "nearly worn out". */
  readonly almost: readonly string[];
  /** The same in several words: "is up". */
  readonly notDonePhrases: readonly string[];
  /** A day to come that is something else behind some words: "morgen", "heute Morgen". */
  readonly tomorrow: { readonly words: readonly string[]; readonly notBehind: readonly string[] };
  /** What heads a list of things that are not done. */
  readonly toDo: readonly string[];
  /** Of those, words that leave what stands before them done: "before". */
  readonly doneBefore: readonly string[];
  /** What is said of other people's bikes: "her", "has"; `own` begin a clause about one's own with a capital all the same. */
  readonly others: {
    /** Somebody else, where a word of work stands next: "she changed the oil". A bike is "she" too, and changes nothing. */
    readonly doers: readonly string[];
    /** What is done to another's bike: "helped Anna". */
    readonly helping: readonly string[];
    /** Things on wheels and with batteries that are no motorcycle. */
    readonly vehicles: readonly string[];
    /** Before one of those these leave the bike the bike: "with the car's pump". */
    readonly beside: readonly string[];
    /** What is done with a bike that is not kept, where one follows: "test rode a 900". */
    readonly tries: readonly string[];
    /** What people do to tyres that is no work of a plan. */
    readonly pumps: readonly string[];
    /** The speaker's bikes together, where there are two: "both bikes". */
    readonly allBikes: readonly string[];
    /** Before somebody's name: "hi Pete". */
    readonly greetings: readonly string[];
    /** What messages begin with, and no name of anybody. */
    readonly openers: readonly string[];
    readonly whose: readonly string[];
    readonly has: readonly string[];
    readonly bikes: readonly string[];
    readonly own: readonly string[];
  };
  /** Behind "today's" these are the dial's figure: "reading". */
  readonly readOff: readonly string[];
  /** What the dial shows at this moment, whatever was done before. */
  readonly now: readonly string[];
  /** Between two figures of which one is meant: "or". */
  readonly either: readonly string[];
  /** Before a figure that is not exact: "around 13k". */
  readonly roundly: readonly string[];
  /** Words that are written with a point before a figure: "no." */
  readonly shortForms: readonly string[];
  /** Of a limit, before its figure or another of them: "min. th." */
  readonly shortLimits: readonly string[];
  /** Words that are written with a point anywhere: "incl." */
  readonly shortWords: readonly string[];
  /** Before a bike of which nothing is said: "unlike Heron". */
  readonly unlike: readonly string[];
  /** Behind "the 2nd" these make it no day: "try", "gear". */
  readonly counted: readonly string[];
  /** Words that begin a question. */
  readonly questions: readonly string[];
  /** Words that begin one before "I": "did". */
  readonly askedOf: readonly string[];
  readonly askers: readonly string[];
  /** Right before a distance these say how far one rode: "did 210 miles". */
  readonly rode: readonly string[];
  /** Right behind a distance these say the same. */
  readonly rodeBehind: readonly string[];
  /** A distance with one of these is a ride or a range, not a dial: "rode", "away", "range". */
  readonly notOdometer: readonly string[];
  /** Money and the like: a figure beside one of these is none of ours. */
  readonly notReading: readonly string[];
  /** Words that are dates by themselves or begin one: "yesterday", "last", weekdays, months. */
  readonly dateWords: readonly string[];
  /** Of those, words that are no date without another: "on", "two", "this". */
  readonly weekdays: readonly string[];
  /** Days by a name that is another word too, and what stands before or behind that: "sat on it", "in the sun". */
  readonly otherWords: Readonly<Record<string, { readonly notBehind: readonly string[]; readonly notBefore: readonly string[] }>>;
  /** Before a day by its bare name it is one to come: "for Saturday". */
  readonly dateAhead: readonly string[];
  readonly dateJoins: readonly string[];
  /** How long ago a day was. */
  readonly ago: {
    /** Days by name, with how many days ago they were. */
    readonly days: Readonly<Record<string, number>>;
    /** Behind a count and its unit, or before them: "ago", "vor". */
    readonly behind: readonly string[];
    readonly before: readonly string[];
    readonly counts: Readonly<Record<string, number>>;
    /** Between a count and its unit: "of". */
    readonly of: readonly string[];
    readonly units: Readonly<Record<string, { readonly of: "day" | "month" | "year"; readonly n: number }>>;
    readonly weekend: readonly string[];
    readonly atWeekend: readonly string[];
    /** Before a weekend that is to come. */
    readonly ahead: readonly string[];
    /** Of a year: "half a year ago". */
    readonly half: readonly string[];
    /** Before or behind a day, a week or a month: the one before the last. */
    readonly beforeLast: readonly string[];
    /** Behind "last" a time that nobody knows: "last service". */
    readonly lastTimes: readonly string[];
    /** Before a week, a month or a season that is not over: "this". */
    readonly these: readonly string[];
    /** Before or behind these something was done on a day that nobody named: "before the tour". */
    readonly around: readonly string[];
    readonly events: readonly string[];
    /** Of what was done by whoever had the bike before: nobody knows how long before. */
    readonly beforeMine: readonly string[];
    /** As good as today, in an answer to when something was done: "just done". */
    readonly justNow: readonly string[];
    /** Seasons counted back, by their names in the list of seasons: "winters". */
    readonly seasons: Readonly<Record<string, string>>;
    /** Words of a day that nothing here reads: the member is asked. */
    readonly hints: readonly string[];
    /** Names of months that are other words too. */
    readonly notMonths: readonly string[];
  };
  /** Before a day of the month that stands by itself, "am 3." */
  readonly dayBefore: readonly string[];
  /** Around a vague date these change nothing: "early", "about". */
  readonly spanIdle: readonly string[];
  /** Beside a date these leave it alone in its part: "all this yesterday". */
  readonly dateAlone: readonly string[];
  /** Slips and short forms of date words, with the word meant: "yday". */
  readonly dateSlips: Readonly<Record<string, string>>;
  /** Slips in the trade's words, with the word meant: "slak". */
  readonly slips: Readonly<Record<string, string>>;
  /** Spans that "last" can stand before: "last week". */
  readonly lastSpans: Readonly<Record<string, "week" | "month" | "year">>;
  /** Spans of the calendar in months: "month", "years". */
  readonly calendarSpans: Readonly<Record<string, number>>;
  /** Words that may stand before a month, a season or a year and make it a date: "in", "early". */
  readonly spanBefore: readonly string[];
  /** Months by name, for vague dates. */
  readonly months: Readonly<Record<string, number>>;
  /** Seasons by name, for vague dates: first month, in the north; half a year later in the south. */
  readonly seasons: Readonly<Record<string, number>>;
  /** The longest day, as a day that people plan by. */
  readonly midsummer: readonly string[];
  /** "last", as in "last May", "last year". */
  readonly last: readonly string[];
  /** Turns of a fastener in words, in degrees: "quarter turn". */
  readonly turns: Readonly<Record<string, number>>;
  /** Words that make a figure one end of a window: "max", "at least". */
  readonly oneEnd: readonly string[];
  /** "don't know", "no idea". */
  readonly unknown: readonly string[];
  /** Around a day that is vague anyway they change nothing: "or so". */
  readonly roughly: readonly string[];
  /** How the details of a job are read. */
  readonly details: DetailWords;
  /** How a part that goes on again is told of. */
  /** "On these tyres", word by word: a distance before it is what a part has run. */
  readonly onPart: Readonly<Record<"on" | "these" | "things", readonly string[]>>;
  /** One of two, and it is not said which: "new tyre fitted". */
  readonly singular: readonly string[];
  /** Parts that no line of a plan renews, by the line that sets them: a new one is recorded there. */
  readonly renewedAt: Readonly<Record<string, string>>;
  /** Verbs of work only beside something new: "put new pads in". */
  readonly puts: readonly string[];
  /** So too, behind a bike's name. */
  readonly gets: readonly string[];
  readonly refitted: RefitWords;
  /** What says that something is wrong. */
  readonly defects: DefectWords;
  readonly found: FoundWords;
  /** How a pasted service chart is read. */
  readonly chart: ChartWords;
  /** What people type for a spec, and around it. */
  readonly specs: SpecWords;
  /** How a member says how they know. */
  readonly how: Readonly<Record<HowWeKnow, readonly string[]>>;
};

/** Words around a part that came off or went on again. `parts`: what each position is called, a name that leaves its end open at both; `some`: names of less than the whole of it. */
export type RefitWords = {
  readonly refit: readonly string[];
  readonly put: readonly string[];
  readonly back: readonly string[];
  readonly taken: readonly string[];
  readonly off: readonly string[];
  readonly on: readonly string[];
  readonly one: readonly string[];
  readonly old: readonly string[];
  readonly original: readonly string[];
  readonly some: readonly string[];
  readonly parts: Readonly<Record<string, readonly string[]>>;
  /** What is changed as one by an item, what each of it is called, and what says that it stayed on. */
  readonly kit: { readonly item: string; readonly pieces: Readonly<Record<string, readonly string[]>>; readonly stayed: readonly string[] };
};

/** A position of which a piece may go on again: the item that puts a new one there, and every piece that was on it. */
export type KnownPieces = {
  readonly part: string;
  readonly renew: ItemKey;
  readonly pieces: readonly { readonly key: ItemKey; readonly label: string; readonly fitted: boolean }[];
};

/** What the reader may know of the member: nothing is fetched. */
export type KnownBike = {
  readonly id: BikeId;
  readonly nickname: string;
  /** Make and model as typed, and the kind it was added as: what it may be called beside its nickname. Left out where neither is known. */
  readonly model?: string | null;
  readonly kind?: string;
  /** What its owner has said they call it: "big one". */
  readonly byNames?: readonly string[];
  readonly unit: DistanceUnit /** last figure on the dial, in `unit` */;
  readonly lastFigure: number | null;
  readonly items: readonly { readonly key: ItemKey; readonly called: string | null; readonly action: WorkAction; readonly system: System }[];
  /** What may be put back on; left out where nothing is asked of it. */
  readonly pieces?: readonly KnownPieces[];
  /** What stands open on it; left out where nothing is asked of it. */
  readonly defects?: readonly { readonly id: string; readonly kind: string | null; readonly words: string }[];
};
export type Known = {
  readonly today: LocalDate;
  /** Is spring in September? */
  readonly south: boolean;
  readonly bikes: readonly KnownBike[];
  readonly numbers: NumberStyle;
  /** Unit taken for a pressure or a depth typed bare, when the member has said so; null asks. */
  readonly pressureUnit: UnitId | null;
  readonly depthUnit: UnitId | null;
  readonly vocabulary: Vocabulary;
  /** Other languages that the member may write in; a message is read in the one whose words it has. */
  readonly also?: readonly Spoken[];
};

/** A language, and how its numbers are written. */
export type Spoken = { readonly vocabulary: Vocabulary; readonly numbers: NumberStyle };
