// The words that stand with a measured value, as data. Each language supplies its own; phrases of several words stand whole.

import type { ConditionRead } from "./detail.ts";
import type { Level } from "./kinds.ts";

/** Places as words; a valve or a cylinder may have its number behind it. */
export type PlaceWord = "front" | "rear" | "both" | "sidecar" | "front left" | "front right" | "left" | "right" | "intake" | "exhaust" | "cylinder";

export type MeasuringWords = {
  readonly levels: Readonly<Record<Level, readonly string[]>>;
  /** A trip meter where it stands right before its figure: "trip 143". */
  /** Right before a length these are a drive belt's deflection. */
  readonly belt: readonly string[];
  /** Beside a length of a belt these make it its width, which is kept nowhere. */
  readonly wide: readonly string[];
  /** Right before a word for a belt these make it another one: "timing belt". */
  readonly otherBelts: readonly string[];
  /** Where a tread alone is measured: "centre", "edge". */
  readonly acrossTread: readonly string[];
  /** What a tank did with a volume: "took 13.4 L". */
  /** Behind a price these make it one of each litre or gallon. */
  /** Behind a bare figure these make it a price: "85 each". */
  readonly each: readonly string[];
  /** An end of the bike that before some words is none: "back up". */
  readonly again: readonly string[];
  readonly againTo: readonly string[];
  readonly perUnit: readonly string[];
  readonly took: readonly string[];
  readonly tripAlone: readonly string[];
  /** Putting a bike away, or fetching it: a figure behind "at" is the dial's. */
  readonly parks: readonly string[];
  /** What calls a level one. */
  readonly levelWords: readonly string[];
  /** Before a figure that is not reached yet: "about to hit". */
  readonly toCome: readonly string[];
  /** What has a pressure and is no tyre. */
  readonly notTyres: readonly string[];
  /** A level that may be at the low mark or below it: "low". */
  readonly low: readonly string[];
  /** What a question about measuring begins with. */
  readonly howTo: readonly string[];
  /** A valve, between its place and its number. */
  readonly valves: readonly string[];
  readonly conditions: Readonly<Record<ConditionRead, readonly string[]>>;
  readonly sides: Readonly<Record<"inner" | "outer", readonly string[]>>;
  /** Before or behind a figure that was found, and one that was left so. */
  readonly found: readonly string[];
  readonly left: readonly string[];
  /** Words that make a figure negative: "minus". */
  readonly minus: readonly string[];
  /** Where a brake pedal is against the footrest. */
  readonly higher: readonly string[];
  readonly lower: readonly string[];
  /** What stands for things named before: "the new ones". */
  readonly ones: readonly string[];
  /** Which sag it is, where only "sag" is said: the bike's own, or with its rider on it. */
  readonly sags: Readonly<Record<"static sag" | "rider sag", readonly string[]>>;
  /** Short for the intake valves, where the exhaust ones are named too: "in". */
  readonly shortIntake: readonly string[];
  /** What has free play, by the kind that it is read as: "clutch lever". */
  readonly controls: Readonly<Record<"clutch free play" | "throttle free play" | "brake free play", readonly string[]>>;
  /** What stands between a control and its figure: "clutch lever 12 mm". */
  readonly levers: readonly string[];
  /** Behind a figure beside one of those it is its free play: "3 mm play". */
  readonly plays: readonly string[];
  /** Where on a lever its free play was taken: "at lever end". */
  readonly leverEnds: readonly string[];
  /** What is alike at the other end: "rear same". */
  readonly same: readonly string[];
  /** Before a number of three digits that a tyre bears: "says 409". */
  readonly bears: readonly string[];
  /** Before the number of a valve or a cylinder: "no. 2". */
  readonly numberSigns: readonly string[];
  /** In which order points across a tyre were read: "l to r". None of its letters is an end of the bike. */
  readonly sweeps: readonly string[];
  /** Between points across a tyre or a disc: "centre". */
  readonly across: readonly string[];
  /** Between the slacks of a chain as its wheel is turned: "at the tightest spot". */
  readonly spots: readonly string[];
  /** Behind how long a battery stood. */
  readonly hours: readonly string[];
  readonly minutes: readonly string[];
  /** Longer spans that a battery stands for, in hours. */
  readonly spans: Readonly<Record<string, number>>;
  /** Before a span or behind it they say that a battery stood so long: "stood 2 days", "3 weeks off the charger". `ran`: with one of these it did not. */
  readonly stood: {
    readonly words: readonly string[];
    readonly after: readonly string[];
    /** Before it was charged. */
    readonly before: readonly string[];
    readonly ran: readonly string[];
    /** "Not used since": what denies, and what is denied then. */
    readonly not: readonly string[];
    readonly used: readonly string[];
  };
  /** A battery that was charged: what it is called, how that is said, what is done with it and a charger, and what says that it was not. */
  readonly charge: {
    readonly battery: readonly string[];
    readonly past: readonly string[];
    readonly put: readonly string[];
    readonly not: readonly string[];
    readonly has: readonly string[];
    readonly idle: readonly string[];
  };
  /** Before a day they say since when something is so. */
  readonly since: readonly string[];
  /** Before whole volts they say that it is what a meter shows, and not what the battery is sold as. */
  readonly shows: readonly string[];
  /** Behind the force that a belt was pressed with: "10 lb". */
  readonly forces: readonly string[];
  /** Before a figure that says by how much something changed, or past what it is: "lost", "less than"; `up` to a value it is one: "to". */
  readonly change: {
    readonly changed: readonly string[];
    readonly past: readonly string[];
    readonly up: readonly string[];
    /** Beside so little that it can only be what was put in or let out, or is missing: "put 3 psi in", "3 psi low". */
    readonly little: readonly string[];
    /** That a tyre gave air away, which defect that is, and over how long: so soon that it leaks, or so late that a sound one does. */
    readonly leaks: readonly string[];
    readonly leak: string;
    /** Before a figure that a pressure may reach: "drops under 30 psi". */
    readonly bounds: readonly string[];
    readonly soon: readonly string[];
    readonly late: readonly string[];
  };
  /** Before a figure that was not read itself, only that what was read is less or more: "less than 1 mm", "< 1 mm". */
  readonly bounds: { readonly under: readonly string[]; readonly over: readonly string[] };
  /** Between the ends of a range: "3 to 4 mm". */
  readonly upTo: readonly string[];
  /** Where a tyre is warmed though nobody rode: "in the sun". */
  readonly inSun: readonly string[];
  /** A temperature beside one of these is the tyre's own, and no air's: "tyre temperature". */
  readonly tyreWarmth: readonly string[];
  /** Where a temperature was read: in a garage, or where the ride starts; what may stand beside it; and, before a pressure, that it is the one wanted. */
  readonly airs: {
    readonly garage: readonly string[];
    readonly road: readonly string[];
    readonly beside: readonly string[];
    readonly wants: readonly string[];
    /** What a tyre is done to with so much air. */
    readonly sets: readonly string[];
  };
  /** Behind the valves: what whoever measured them says of all of them, as words, and the word of work that stands for it. */
  readonly inOrder: { readonly said: readonly string[]; readonly as: string };
  /** Lengths said in words, in inches, and the words that tell that one is: "inch". */
  readonly inches: Readonly<Record<string, number>>;
  readonly inchWords: readonly string[];
  /** How far a disc or a rim runs out of true: no thickness of it. */
  readonly runout: readonly string[];
  /** Letters for the two sides of the front, where both are said: "3 mm l 2.5 mm r". Of ends "r" is the rear. */
  readonly sideLetters: { readonly left: readonly string[]; readonly right: readonly string[] };
  /** What is done to a pressure "from 42 to 36". */
  readonly moved: readonly string[];
  /** That a tyre holds nothing, or little. */
  readonly flat: readonly string[];
  /** What is done at a chain by its slack where only its name and a length are said. */
  readonly chain: readonly string[];
  /** Likewise at plugs by their gap. */
  readonly plugs: readonly string[];
  /** A length beside one of these is its tread. */
  readonly tyre: readonly string[];
  /** Tyres, where both ends are meant: "tyres". */
  readonly tyres: readonly string[];
  /** Before a tyre's date code, or around several: "DOT", "date codes". */
  readonly codes: readonly string[];
  /** What may stand between a date code and what names it: "is". */
  readonly codeBeside: readonly string[];
  /** Beside what is moulded on a tyre: "size". */
  readonly sizes: readonly string[];
  /** Before the week in which a tyre was made: "week 12 of 2019". */
  readonly weeks: readonly string[];
  /** Beside the year of it: "made in". */
  readonly madeWords: readonly string[];
  /** The words of an age in years, each by itself: "12 years old". */
  readonly oldAge: readonly string[];
  /** Of brake fluid: the word that names it, what says that a share is of the water in it, and what may stand beside both. */
  readonly wetFluid: { readonly named: readonly string[]; readonly moisture: readonly string[]; readonly beside: readonly string[] };
  /** Behind a share, in words: "per cent". */
  readonly percent: readonly string[];
  /** By how much a chain is longer than new, beside its name: "stretched"; `elongation` without it. */
  readonly elongated: readonly string[];
  readonly elongation: readonly string[];
  /** Beside such a share these change nothing: "than new". */
  readonly shareBeside: readonly string[];
  /** What is mixed with water to cool, and the mix; `coolant` may be its level as well. */
  readonly mixes: readonly string[];
  readonly coolant: readonly string[];
  /** Words that take back a figure: "no", "sorry". */
  readonly corrections: readonly string[];
  /** What stands beside those: "no wait". */
  readonly correcting: readonly string[];
  /** Between what was found and what was left: "->". */
  readonly arrows: readonly string[];
  /** What a chain is counted in. */
  readonly pitches: readonly string[];
  /** Of those the ends of pitches, of which there is one more. */
  readonly pins: readonly string[];
  /** Words that say that the engine ran: with one, a figure behind "at" is its speed. */
  readonly runs: readonly string[];
  readonly rpm: readonly string[];
  /** Words for the trip meter. */
  readonly trip: readonly string[];
  /** Words that say that the trip meter was zeroed at the last reading. */
  readonly sinceLast: readonly string[];
  /** The tank filled to its mark, or not. */
  readonly full: readonly string[];
  readonly notFull: readonly string[];
  readonly currencies: readonly string[];
  /** A figure beside one of these is a limit or a manual's, not one read off the bike. */
  readonly ofSpec: readonly string[];
  /** Around such a word and before its figure: "minimum thickness is". */
  readonly limitBeside: readonly string[];
  /** What is called like one of those, and is no limit: "backing plate". */
  readonly noLimit: readonly string[];
  /** Kinds of bike by which a member with one of them calls it: "my cruiser". */
  readonly bikeWords: readonly string[];
  /** "Big" before "one": a bike by its looks. */
  readonly bikeSorts: readonly string[];
  readonly bikeOnes: readonly string[];
  /** What riders fondly call a bike, behind "the" or "my": "old lady". */
  readonly bikePets: readonly string[];
  /** Of the words for a bike's looks those that mean another one each time: "other". */
  readonly bikeOthers: readonly string[];
  /** Before such a word or a model's these say that one bike is meant: "my". */
  readonly definite: readonly string[];
};
