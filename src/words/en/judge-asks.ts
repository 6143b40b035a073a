// What is told and asked beside a verdict, in English: what to do at a limit, what lacks for judging, and how it was measured.

import type { Stand } from "../../core/chain/stand.ts";
import type { Missing } from "../../core/judgement/verdict.ts";
import type { ConditionRead } from "../../core/reading/detail.ts";
import type { JudgedKind } from "../../trade/judged.ts";
import type { SpecKey } from "../../trade/spec-keys.ts";
import { englishSpecName } from "./spec-names.ts";
import { lowered } from "./text.ts";

export const treadSpec = ([first]: readonly SpecKey[]): string => lowered(englishSpecName(first ?? "rear tread limit"));

export const WEAK_COOLANT = "Change the coolant, or raise its share of antifreeze as its maker says, before frost: frozen coolant bursts the engine.";

export const OLD_FLUID =
  "Change it before you ride hard, loaded or in the mountains: fluid that boils lets the lever go to the bar. Its class is as entered here; the cap and the manual have the last word.";

/** What to do when it is at or beyond the low and the high end. */
export const DO: Record<JudgedKind, readonly [low: string, high: string]> = {
  tread: ["Replace the tyre now.", ""],
  "cold pressure": ["", ""],
  "pad thickness": ["Replace the pads of that axle, both sides together.", ""],
  "shoe thickness": ["Replace the shoes of that drum, both together.", ""],
  "drum diameter": ["", "Replace the drum or its hub, with new shoes: a thin one can crack, and its shoes no longer reach."],
  "disc thickness": ["Replace the disc; a thin one can crack and overheats the fluid.", ""],
  "disc runout": [
    "",
    "Clean disc and hub, look at the bolts and measure again; a disc that stays out of true pulses at the lever and is replaced, both of a front pair looked at.",
  ],
  "chain slack": [
    "Slacken it: a tight chain ruins the gearbox bearing, and one with next to no slack can break.",
    "Adjust it; with the adjuster at its end, replace the chain.",
  ],
  "chain length": ["", "Replace chain and both sprockets together."],
  "chain elongation": ["", "Replace chain and both sprockets together."],
  "belt deflection": ["Slacken it.", "Tighten it as the manual says."],
  "battery voltage": ["", ""],
  "charging voltage": [
    "Look at the terminals, then have the charging circuit tested.",
    "It overcharges the battery and ruins it: have the regulator tested before the next ride.",
  ],
  "brake fluid level": [
    "It falls with worn pads or by a leak: look at both before topping up.",
    "Draw some off down to the full mark: warm fluid with no room to expand can drag the brake.",
  ],
  "brake fluid boiling point": [OLD_FLUID, ""],
  "brake fluid water": ["", OLD_FLUID],
  "clutch fluid level": ["Look for a leak before topping up.", "Draw some off down to the full mark: warm fluid needs room to expand."],
  "oil level": ["Top up before the engine runs again.", "Let some out before you ride: too much froths and blows past the seals."],
  "coolant strength": ["", WEAK_COOLANT],
  "antifreeze share": [WEAK_COOLANT, ""],
  "coolant level": ["Top up the overflow tank cold, and look for a leak.", ""],
  "clutch free play": ["Adjust it: without play the clutch slips and wears.", "Adjust it: with too much the clutch drags."],
  "throttle free play": ["Adjust it: a cable without play can hold the throttle open.", "Adjust it."],
  "brake free play": [
    "Adjust it: a brake without play drags and heats up.",
    "Adjust it: with too much the brake comes on late; with the adjuster at its end, replace the shoes.",
  ],
  "brake pedal height": ["Adjust it as the manual says.", "Adjust it as the manual says."],
  "static sag": ["Take preload off.", "Add preload."],
  "rider sag": ["Take preload off.", "Add preload, or a stiffer spring."],
  "valve clearance": ["Adjust it: a tight valve burns.", "Adjust it: a wide one is noisy and wears."],
  compression: ["Measure again with a little oil in the cylinder: if it rises it is the rings, else the valves.", "Look for carbon in the chamber."],
  "plug gap": ["Set or replace the plug.", "Set or replace the plug."],
  "points gap": ["Set the points, or replace them if they are pitted; then set the ignition timing.", "Set the points, then the ignition timing."],
};

/** A word in time. */
export const NEAR: Partial<Record<JudgedKind, readonly [low: string, high: string]>> = {
  tread: [" Have the next one ready.", ""],
  "pad thickness": [" Have the next pads ready.", ""],
  "shoe thickness": [" Have the next shoes ready.", ""],
  "battery voltage": [" Charge it soon, and before it stands.", ""],
  "valve clearance": [" Look again earlier: valves close up.", ""],
};

export const NEEDS: Record<Exclude<Missing, "load">, string> = {
  limit: "it needs the bike's own limit, which stands in its manual or on the part; enter it once with /spec",
  place: "say which place it was",
  cold: "say “cold” if the engine was",
  upright: "say “upright” if the bike stood so",
  "on the side stand": "say how the bike stood, “upright” or “on the side stand”",
  "under load": "say “rider on” if somebody sat on it",
  "other stand": "its figure holds with the bike standing otherwise; measure it so",
  "other force": "its figure holds at another force; press it with that one and read it again",
  "at force": "say “at force” if it was the force that the manual names",
  "throttle open": "say “throttle open” if it was held wide open",
  rested: "say “rested” once it has stood six hours since charging or riding",
  rpm: "say the engine speed, such as “at 5000 rpm”",
  temperature: "say “warm” if the engine was",
  chemistry: "say which kind of battery it has with /bike fitted",
  pitch: "say over how many pitches it was, such as “over 20 pitches”, or enter the chain's size once with /spec",
  "no such chain":
    "no common chain has that length over so many pitches; twenty pitches lie between twenty-one pins: count the gaps and measure again, pulled taut, or enter the chain's size once with /spec",
  "chain size":
    "your own limit is a length, and what that comes to in per cent goes by the chain: enter its size once with /spec what:chain size value:…, such as 525",
  readings: "that is shorter than a new chain; measure it again",
  "frost point":
    "a share says nothing sure so far up, and beyond 60 % it protects less again and cools worse; say what a coolant tester shows, such as “coolant good to -25 °C”",
  "fluid figure":
    "silicone and mineral oil take up no water, and the standard has no such figure for what is in it here: go by its maker and its age, and say with /bike fitted if it is another fluid",
  "tyre date": "it needs the tyre's date code",
  cooled: "it is measured cold; measure it again once the engine has stood overnight",
  warmed: "it is measured with the engine warm; measure it again so",
  "stood upright": "it is read with the bike upright; look again so",
  unladen:
    "slack is measured with nobody on the bike unless its manual says otherwise; measure it so and say how the bike stood, “upright” or “on the side stand”",
  revs: "so slow it may lie below what it charges with; read it again at the engine speed that the manual names, often some 4,000 to 5,000 rpm",
  "more revs":
    "idling or so slow it already charges as it should; whether it goes too high with the revs shows at the engine speed that the manual names, often some 4,000 to 5,000 rpm",
  "six volts": "these figures are for a battery of 12 V; where its manual names a window for 6 V, enter that once with /spec",
  "at rest": "only volts at rest tell its charge: everything off, the charger too, six hours after charging or riding",
  "more than full":
    "no battery of the kind entered shows so much once it has rested: its charger is still on, or has not been off for six hours, or it is of another kind, which /bike fitted enters (lithium rests higher than lead)",
  "lining alone":
    "with its backing plate it says nothing of the lining, which alone counts; measure that at its thinnest, without the plate, and say it so, such as “front pads 3 mm”",
  "longer rest": "that is too short a rest, and volts stay up for hours after charging or riding; read it again after six hours with all off",
  fitted: "as it is entered here the bike has none; if it has, say so with /bike fitted",
};

export const HOW: Record<ConditionRead | "rpm" | "pitches", string> = {
  cold: "Engine was cold",
  warm: "Engine was warm",
  upright: "Bike stood upright",
  "on the side stand": "On the side stand",
  rested: "Rested six hours",
  "at force": "At the force named",
  "throttle open": "Throttle was wide open",
  "under load": "With the rider on",
  running: "Engine was running",
  idling: "Engine was idling",
  "under draw": "Current was drawn",
  "on the charger": "It was on the charger",
  charged: "It had just been charged",
  "with backing plate": "Backing plate included",
  "bars straight": "Bars stood straight",
  rpm: "Say the engine speed",
  pitches: "Say how many pitches",
};

export const FLAT_LEAD =
  "So low, a cell of it may be dead: charge it where you can watch it and the air is fresh, stop if it grows hot, and have it tested before you rely on it.";
export const FLAT_LITHIUM = "So low, its cells may be harmed for good: do not charge it before its maker or a dealer has looked at it.";
export const STOOD_WARMER = "Where it stood warmer, say so with its volts, such as “battery 12.6 V rested at 15 °C”.";
export const SIX_VOLTS =
  "A battery of 12 V that shows so little is dead: do not charge it unwatched, have it tested. These figures are for 12 V; one of 6 V I cannot judge, go by its manual.";

/** How a bike stands where its slack is measured, and how that is typed. */
export const STOOD: Record<Stand, { readonly so: string; readonly say: string }> = {
  upright: { so: "with the bike upright", say: "upright" },
  "on the side stand": { so: "on the side stand", say: "on the side stand" },
  "under load": { so: "with the rider on", say: "rider on" },
};
