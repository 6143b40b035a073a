// One clear sentence for each way a request can be refused, saying what to do next.

import { unreachable } from "../../core/brand.ts";
import { fromCanonical, symbolOf, toCanonical } from "../../core/quantity/units.ts";
import type { Refusal } from "../../core/refusal.ts";
import type { Printer } from "../printer.ts";
import { PART_NAMES } from "./bikes.ts";
import { englishItemName } from "./item-names.ts";
import { OIL_GRADES } from "./look-up.ts";
import { englishSpecName } from "./spec-names.ts";
import { capital, lowered } from "./text.ts";

const CLASSES = {
  fluid: "Fluids are DOT 3, DOT 4, DOT 5.1, DOT 5 (silicone) or mineral oil, and only the one on the cap goes in.",
  oil: OIL_GRADES,
} as const;

export const refusalWords = (p: Printer) => {
  /** Both figures, and what the one is in the other's unit. */
  const twoDistances = (miles: number, km: number): string =>
    `${p.figure(miles)} mi is about ${p.figure(Number(fromCanonical(toCanonical(miles, "mi"), "km").toPrecision(3)))} km, and ${p.figure(km)} km stands beside it: these are two distances, not one in two units.`;
  const lastOf = (last: { readonly figure: number; readonly unit: string } | null): string =>
    last === null ? "" : `, ${p.figure(last.figure, 0)} ${last.unit}`;
  const one = (names: readonly string[]): string => new Intl.ListFormat("en-GB", { type: "disjunction" }).format(names);
  return (refusal: Refusal): string => {
    switch (refusal.why) {
      case "no bikes yet":
        return "You have no bike here yet. Add one with /bike add.";
      case "unknown bike":
        return `You have no bike called “${clip(refusal.named)}”. Yours: ${p.list(refusal.bikes)}.`;
      case "which bike":
        return `Which bike: ${one(refusal.bikes)}? Add bike: and its name.`;
      case "not called so":
        return `${refusal.nickname} is not called “${clip(refusal.name)}”. ${refusal.names.length === 0 ? "It has no other name than that." : `It is also called ${p.list(refusal.names.map((name) => `“${name}”`))}.`}`;
      case "nickname taken":
        return `You already have a bike called ${refusal.nickname}. Give this one another name.`;
      case "nickname unusable":
        return {
          empty: "A nickname needs at least one letter or digit.",
          "too long": "A nickname has at most 32 characters. Pick a shorter one.",
          "mentions everyone": "A nickname cannot mention people or channels. Pick a plain word.",
          "hidden marks": "That nickname holds hidden marks that turn text around. Type it in plain letters.",
          "word of its own": "That nickname is a word that I read as a job, a place, a unit or a day. Pick another.",
          "looks like a reading": "That nickname reads as a figure or a piece of work, so I could not tell it from a reading. Pick a word.",
        }[refusal.because];
      case "not a distance":
        return `I cannot read “${clip(refusal.typed)}” as a distance. Type a figure such as 14,820 ${refusal.unit ?? "mi"}.`;
      case "unit missing":
        return `Is “${clip(refusal.typed)}” in miles or kilometres? Type it with mi or km.`;
      case "out of range":
        return `“${clip(refusal.typed)}” is outside what an odometer shows. Check the figure and type it again.`;
      case "future date":
        return `${p.date(refusal.on)} is still to come. Work is recorded once it is done.${refusal.before === undefined ? "" : ` If it was a year ago, type the year with it: ${refusal.before}.`}`;
      case "not a date":
        return `I cannot read “${clip(refusal.typed)}” as a date. Try yesterday, 3 May, spring 2023 or 2026-05-03.`;
      case "no such item":
        return refusal.nearest.length === 0
          ? `I find no “${clip(refusal.typed)}” in this bike's plan. /plan list shows its items.`
          : `I find no “${clip(refusal.typed)}” in this bike's plan. Do you mean ${one(refusal.nearest)}?`;
      case "which item":
        return `“${clip(refusal.typed)}” could be ${one(refusal.items)}. Name one.`;
      case "trip":
        return TRIP[refusal.because](clip(refusal.typed));
      case "check":
        return CHECK[refusal.because](clip(refusal.typed ?? ""));
      case "tyres":
        return TYRES[refusal.because](clip(refusal.set));
      case "nothing to put back":
        return `No other ${refusal.part} is on record for ${refusal.nickname}. Record first when the present one went on, such as /work did:${refusal.part} outcome:replaced at:12,000 mi.`;
      case "runs backwards":
        return `“${clip(refusal.typed)}” is below the last reading${lastOf(refusal.last)}. Check the figure and type it again.`;
      case "implausible jump":
        return `“${clip(refusal.typed)}” is a long way from the last reading${lastOf(refusal.last)}. Check the figure; if it is right, log it as a reading first.`;
      case "later on that dial":
        return "Readings or work were logged on that new odometer since. Undo those first, the latest first.";
      case "all gone":
        return `${p.list(refusal.bikes)}: sold or retired. If it is back, say so with /bike change state:riding; a new one comes with /bike add.`;
      case "not ahead":
        return notAhead(refusal);
      case "not an interval":
        return `I cannot read “${clip(refusal.typed)}” as an interval. Type it with its units, such as 4,000 mi or 12 months, 6,000 km, or 2 years; first 600 mi, then every 4,000 mi; or every second oil change.`;
      case "two distances":
        return `${twoDistances(refusal.miles, refusal.km)} Nothing is changed. Type the one that your manual prints, or both as it prints them, such as 4,000 mi / 6,000 km.`;
      case "plan change":
        return PLAN_CHANGE[refusal.because](clip(refusal.typed));
      case "no such spec":
        return refusal.nearest.length === 0
          ? `I know no spec called “${clip(refusal.typed)}”. Try rear axle, front tyre pressure, oil, chain slack or spark plug.`
          : `I know no spec called “${clip(refusal.typed)}”. Do you mean ${one(refusal.nearest.map((key) => lowered(englishSpecName(key))))}?`;
      case "which spec":
        return `“${clip(refusal.typed)}” can be ${one(refusal.keys.map((key) => lowered(englishSpecName(key))))}. Name one of them, so that the value lands where it belongs: /spec what:${lowered(englishSpecName(refusal.keys[0] ?? ""))} value:${clip(refusal.value)}`;
      case "item not fitted": {
        const { item, nickname, part, is, wants } = refusal;
        return `${englishItemName(item, null)}: by my record ${nickname} has none of that (${PART_NAMES[part]}: ${is}), so nothing is saved. If it is fitted otherwise: /bike fitted bike:${nickname} part:${PART_NAMES[part]} choice:${wants[0] ?? ""}`;
      }
      case "not fitted":
        return `${capital(one(refusal.keys.map((key) => lowered(englishSpecName(key)))))}: ${refusal.nickname} is fitted otherwise, so it has none. If that is not so, say so with /bike fitted.`;
      case "not a spec":
        return `${englishSpecName(refusal.key)}: ${
          {
            "not read": `I cannot read “${clip(refusal.typed)}”. Type the value with its unit, such as 98 Nm, 25-35 mm, 36 psi or 3.2 L.`,
            "unit missing": `“${clip(refusal.typed)}” could be in several units. Type it with its unit.`,
            "other dimension": `“${clip(refusal.typed)}” is in a unit that measures something else. Check what it is of, and type it with its unit.`,
            "no such share": `no manual prints “${clip(refusal.typed)}”; ${refusal.key === "coolant strength" ? "shares of antifreeze run from some 30 to 60 %" : "published limits run from 1 to 3 %"}. Nothing is saved. Look again at the page.`,
            "volts at rest": `“${clip(refusal.typed)}” is what a battery shows at rest. Charging it is some 13.5 to 15 V, at the revolutions that the manual names: type that, such as 14.0-14.8 V at 5000 rpm. Nothing is saved. What it has to show at rest I know by its kind, which /bike fitted holds; a reading is written such as “battery 12.5 V rested”.`,
            "no such class": `no standard knows “${clip(refusal.typed)}”. ${CLASSES[refusal.key === "engine oil grade" ? "oil" : "fluid"]} Nothing is saved. Look again at the page or the cap.`,
            "less than none": `“${clip(refusal.typed)}” is less than nothing. Nothing is saved. Check the sign${refusal.key === "coolant amount" ? ", and the unit: how much frost coolant stands is in degrees, such as -35 °C" : ""}.`,
            "two figures": `the two figures in “${clip(refusal.typed)}” are not the same value. Check them against the manual and type one.`,
          }[refusal.because]
        }`;
      case "wrong end": {
        const alone = `/spec what:${lowered(englishSpecName(refusal.key))} value:${p.figure(fromCanonical(refusal.alone, refusal.unit), 3)} ${symbolOf(refusal.unit)}`;
        return `${englishSpecName(refusal.key)}: ${
          {
            value: `“${clip(refusal.typed)}” leaves one end open, and it is set to a figure or within a window. Nothing is saved. Look again at the plate or the manual and type the figure, or both ends with a dash between them, such as:`,
            least: `“${clip(refusal.typed)}” is no limit of it; it wears down, so its limit is one figure, the least that may be left. Nothing is saved. Look again at the page and type that figure alone, such as:`,
            most: `“${clip(refusal.typed)}” is no limit of it; its limit is one figure, the most that it may come to. Nothing is saved. Look again at the page and type that figure alone, such as:`,
          }[refusal.end]
        } ${alone}`;
      }
      case "spec in words": {
        const [first] = refusal.meant;
        const meant = refusal.meant.map((key) => lowered(englishSpecName(key)));
        return `${englishSpecName(refusal.key)}: “${clip(refusal.typed)}” is a measured value; what belongs here is a name, a kind or a part number. Nothing is saved. ${
          first === undefined ? "Look again at the page." : `Perhaps it is that of ${one(meant)}: /spec what:${meant[0]} value:${clip(refusal.typed)}`
        }`;
      }
      case "spec out of range": {
        const span = `${p.amount(refusal.low, refusal.unit)} to ${p.amount(refusal.high, refusal.unit)}`;
        const meant = refusal.fits.map(({ value, unit }) => `${p.figure(value, 3)} ${symbolOf(unit)}`);
        return `${englishSpecName(refusal.key)}: no manual asks for ${clip(refusal.typed)}; on any bike it lies within ${span}. Nothing is saved. ${
          meant.length === 0 ? "Look again at the page or the plate." : `Look again at the page or the plate: perhaps ${one(meant)}?`
        }`;
      }
      case "not how":
        return refusal.how === "rpm"
          ? `I cannot read “${clip(refusal.typed)}” as an engine speed. Type revolutions a minute, such as 5000. The reading stays as it was.`
          : `I cannot read “${clip(refusal.typed)}” as a number of pitches. Count the gaps between the pins that you measured over, such as 20. The reading stays as it was.`;
      case "no sheet":
        return "Nothing falls due there that a sheet could be made of. /due says what is known, and /plan sheet at:16,000 mi looks at a service further on.";
      case "no job":
        return "No service sheet is being worked through. /plan sheet shows the next one, with a button to begin it.";
      case "job ended":
        return "That job was finished. Open it again with its button, or begin the next one from /plan sheet.";
      case "job open":
        return "Another job is open on that bike. Finish it first: /plan job.";
      case "no group plan":
        return refusal.model === null
          ? "Say the bike's make and model first: /bike change model:. The group's plans go by it."
          : `Nobody has shared a plan for ${clip(refusal.model)} here yet. /plan share shares yours.`;
      case "no model":
        return `Say ${refusal.nickname}'s make and model first: /bike change model:. The group's plans go by it.`;
      case "bad plan file": {
        const what = refusal.at === "" ? "what stands there" : clip(refusal.at);
        const why = {
          "not JSON": "it stops being JSON there: look for a comma, a quote or a brace too many or too few",
          twice: `${clip(refusal.detail)} stands there twice`,
          "no leg": `${what} needs a distance, months or hours`,
          type: `${what} has to be ${JSON_TYPES[refusal.detail] ?? "something else"}`,
          "two distances": `${what}: ${twoDistances(...(refusal.detail.split("/").map(Number) as [number, number])).replace(/\.$/u, "")}`,
          choice: refusal.detail === "" ? `${what} is none that I know` : `${what} has to be ${orList(refusal.detail.slice(0, LONGEST_DETAIL))}`,
          field: `${what} has ${clip(refusal.detail)}, which the format does not know`,
          "too much": `${what} has to be ${refusal.detail} or less`,
          "too little": `${what} has to be ${refusal.detail.startsWith("> ") ? `greater than ${refusal.detail.slice(2)}` : `${refusal.detail} or more`}`,
          empty: `${what} is empty, and must not be`,
          format: `${what} is not as the format has it`,
        }[refusal.because];
        return `That plan cannot be read. Line ${refusal.line}: ${why}. Nothing was changed.`;
      }
      case "not yours":
        return "Only the bike's owner can do that.";
      case "gone":
        return "That is no longer there. Ask again with the command.";
      case "changed meanwhile":
        return "That changed while you were looking. Ask again to see it as it stands.";
      case "already done":
      case "heard already":
        return "That was done already, so nothing changed.";
      case "not in a group":
        return "That belongs to a group. Say it in the group's server.";
      case "admins only":
        return "Only members who may manage the server can change the group's settings.";
      case "not a zone":
        return refusal.near.length === 0
          ? `“${clip(refusal.typed)}” is not a time zone I know. Use a name such as Europe/Berlin or America/Chicago.`
          : `“${clip(refusal.typed)}” is not a time zone's whole name. Did you mean ${one(refusal.near)}?`;
      case "not a time":
        return `I cannot read “${clip(refusal.typed)}” as a time of day. Type it as 18:30.`;
      case "quiet time":
        return `“${clip(refusal.typed)}” is in the quiet hours of the channel. Choose a time from ${refusal.to} until ${refusal.from}.`;
      case "not a weekday":
        return `“${clip(refusal.typed)}” is not a day of the week.`;
      case "nothing to change":
        return "Say what should change: name one of the command's options.";
      case "new or mended":
        return `${capital(one(refusal.items.map(lowered)))}: a new one, or is the old one right again? Say it with the work, such as “new battery” or “charged the battery”; nothing is recorded before.`;
      case "left blank":
        return refusal.field === "what was done"
          ? "What was done? Say it in a word or two, such as “new bulb”; nothing is recorded before."
          : "What was it? Say it in a word or two, such as “lever had been left adjusted wide”; it stays open before.";
      case "already so":
        return `It is already so: ${refusal.state}.`;
      case "cannot convert":
        return cannotConvert(refusal, one);
      case "belt width not kept":
        return "I keep no width of a belt, so nothing is saved. Hold it against the least that your manual names, and replace a belt that is narrower, or frayed, cracked or short of teeth. If it was its deflection, say “belt deflection 10 mm”.";
      case "not a tyre code":
        return {
          "no code": `I find no date code in “${clip(refusal.typed)}”. It is the last four digits after DOT, such as 2223 for week 22 of 2023.`,
          "no such week": `“${clip(refusal.typed)}” names a week that no year has. The first two digits are the week, 01 to 53; read it again.`,
          "to come": `“${clip(refusal.typed)}” is a week still to come. Read it again; the first two digits are the week, the last two the year.`,
          "no mark": `I find no size, load or speed in “${clip(refusal.typed)}”. Type it as it is moulded, such as 120/70ZR17 (58W).`,
          "several codes": `“${clip(refusal.typed)}” holds more than one date code. One at a time, each with its end, as in /tyre date code:2223 end:rear; or write “front tyre DOT 1223, rear tyre DOT 2223”.`,
          "several marks": `“${clip(refusal.typed)}” holds more sizes than I can tell apart. One tyre at a time, the other end's as other: /tyre marking mark:120/70ZR17 58W other:180/55ZR17 73W`,
        }[refusal.because];
      case "not a pressure":
        return `I cannot read “${clip(refusal.typed)}” as a pressure. Try 36 psi or 2.5 bar.`;
      case "not a temperature":
        return `I cannot read “${clip(refusal.typed)}” as a temperature. Try 20 °C or 68 °F.`;
      case "no tyre so": {
        const decimals = refusal.high < 10 ? 1 : 0;
        const span = `${p.figure(refusal.low, decimals)} to ${p.figure(refusal.high, decimals)} ${symbolOf(refusal.unit)}`;
        return refusal.of === "pressure"
          ? `No motorcycle tyre is set to “${clip(refusal.typed)}”: makers ask for ${span}. Look again at the plate or the manual, and type it with its unit.`
          : `I do not work with “${clip(refusal.typed)}”: I take garages and roads of ${span}. Type what the thermometer shows, with its unit; if it really is so, set the tyre cold where the ride starts.`;
      }
      case "not a cost":
        return `I cannot read “${clip(refusal.typed)}” as what it cost. Type it as 48.60, or with its currency: 48.60 EUR.`;
      case "not a torque":
        return `I cannot read “${clip(refusal.typed)}” as a torque. Try 24 Nm, 60-80 in-lb or 10 ± 1 Nm.`;
      case "one end only":
        return `“${clip(refusal.typed)}” is one end of a window. Type both, such as 8-10 Nm, or the one figure that is to be set.`;
      case "not a range":
        return `I cannot read “${clip(refusal.typed)}” as a wrench's range. Type both ends of its scale, such as 5-25 Nm, or 0-4 bar for a pressure gauge.`;
      case "not a step":
        return `I cannot read “${clip(refusal.typed)}” as a step of that scale. Type what one step is in ${refusal.unit}, such as 0.5.`;
      case "not an accuracy":
        return `I cannot read “${clip(refusal.typed)}” as an accuracy. Type its percent, such as 4 %.`;
      case "not an angle":
        return `I cannot read “${clip(refusal.typed)}” as an angle to turn. Type up to one turn, such as 90° or 1/4 turn.`;
      case "not a length":
        return `I cannot read “${clip(refusal.typed)}” as a length. Try 250 mm or 10 in.`;
      case "no such wrench":
        return refusal.wrenches.length === 0
          ? "You have listed no wrench yet. Add one with /torque wrench-add."
          : `You have no wrench called “${clip(refusal.typed)}”. Yours: ${p.list(refusal.wrenches)}.`;
      case "adapter geometry":
        return {
          none: "With that geometry no setting is right: the adapter would take the lever away. Turn it to 90° or less.",
          lengths:
            "An adapter needs two lengths: adapter: from the square to the fastener, and lever: from the square to the middle of your grip. Without both I give no figure.",
          angle: "An adapter's figure hangs on how it stands to the wrench. Add angle:0 in line, angle:90 at a right angle, or what is between.",
          "possible angle": "The angle is between 0° (in line) and 180°.",
        }[refusal.missing ?? "none"];
      case "not a thread":
        return `I cannot read “${clip(refusal.typed)}” as a thread. Try M8, M10x1.25, 5/16-18 or 3/8 UNF.`;
      case "thread not listed":
        return refusal.ofSize
          ? `“${clip(refusal.typed)}” is no thread that I have tables for; of that size I have ${p.list(refusal.listed)}.`
          : `“${clip(refusal.typed)}” is no thread that I have tables for. They hold ${p.list(refusal.listed)}; for any other size the maker's value is the only one.`;
      case "grade of the other system":
        return `“${refusal.grade}” does not go with ${refusal.thread}: such bolts are ${one(refusal.grades)}. Look at the head and the thread again.`;
      case "never estimated":
        return `No figure without your manual${refusal.joint === null ? "" : ` for ${refusal.joint}`}: look the maker's value up, or have a licensed mechanic do it. I estimate for these and nothing else: ${p.list(refusal.estimated)}.`;
      case "small screw in aluminium":
        return "No figure without your manual for small screws into aluminium: that is what people strip.";
      case "engagement missing":
        return "Into aluminium it matters how much thread is in the hole: add engaged: and its length, such as 16 mm.";
      case "engagement too long":
        return `“${clip(refusal.typed)}” is more than ${refusal.thread} can use: thread beyond two and a half diameters (${p.figure(refusal.most, 1)} mm) adds no strength. Measure again; if it is that deep, type ${p.figure(refusal.most, 1)} mm.`;
      case "not a hex size":
        return `I cannot read “${clip(refusal.typed)}” as a hex size. Try 13 mm or 1/2 in.`;
      case "not a count":
        return `“${clip(refusal.typed)}” is no number of fasteners from ${refusal.from} to ${refusal.to}.`;
      case "too long":
        return `That is longer than I read. Keep it under ${p.figure(refusal.limit)} characters.`;
      case "unknown command":
        return refusal.nearest.length === 0
          ? `I know no ${clip(refusal.typed)}. /help lists what I know.`
          : `I know no ${clip(refusal.typed)}. Do you mean /${one(refusal.nearest)}?`;
      case "option":
        return optionProblem(refusal, one);
      default:
        return unreachable(refusal);
    }
  };
};

/** Long junk is said back only as far as it helps to recognise it. */
const clip = (typed: string): string => ([...typed].length > 40 ? `${[...typed].slice(0, 40).join("")}…` : typed);

function cannotConvert(refusal: Extract<Refusal, { why: "cannot convert" }>, one: (names: readonly string[]) => string): string {
  const typed = clip(refusal.typed);
  if (refusal.candidates.length > 0) return `“${typed}” could be ${one(refusal.candidates)}. Say which.`;
  switch (refusal.because) {
    case "unknown unit":
      return `I do not know the unit ${refusal.word === null ? `in “${typed}”` : `“${clip(refusal.word)}”`}. Try 60-80 in-lb, 36 psi, 7/16 in or 14,820 mi.`;
    case "unit missing":
      return `“${typed}” has no unit. Type it with the figure, such as 60-80 in-lb, 36 psi or 12 mm.`;
    case "exponent":
      return `I do not read powers of ten such as “${typed}”. Write the figure out with its unit, such as 100 kPa or 14,820 mi.`;
    case "pair":
      return `“${typed}” looks like front and rear. Ask for one at a time, such as 33 psi, or for the span between them, 33-36 psi.`;
    case "torque of a fastener":
      return "A bolt's torque is in the maker's manual: give that to /torque set; where no value can be found, /torque estimate makes an estimate.";
    case "spanner for a hex":
      return "Which spanner goes on which hex is for /torque hex: give it the size across the flats, such as size:11 mm.";
    case "below zero":
      return `“${typed}” is less than nothing. Type the figure without the minus.`;
    case "other dimension":
      return `“${typed}” cannot become ${refusal.to ?? refusal.word ?? "that"}: they measure different things.`;
    case "below absolute zero":
      return `“${typed}” is colder than anything can be.`;
    case "out of range":
      return `“${typed}” is too large or too small a figure to convert.`;
    case "ambiguous number":
      return `“${typed}” can be read two ways. Write it without the thousands mark.`;
    case "not a quantity":
      return `I find no figure with a unit in “${typed}”. Try 60-80 in-lb, 36 psi or 7/16 in.`;
  }
}

/** What JSON has, by the names that a checker gives it. */
const JSON_TYPES: Readonly<Record<string, string>> = {
  int: "a whole number",
  number: "a number",
  string: "text",
  object: "an object in braces",
  array: "a list",
};
const LONGEST_DETAIL = 300;
/** '"a", "b", "c"' as one sentence says it. */
const orList = (choices: string): string => choices.replace(/, (?=[^,]*$)/u, " or ");

/** A part of the bike by its name in the trade, any other option as it is typed. */
function partNamed(option: string): string {
  const part = (PART_NAMES as Readonly<Record<string, string>>)[option];
  return part === undefined ? `“${option}”` : part;
}

function optionProblem(refusal: Extract<Refusal, { why: "option" }>, one: (names: readonly string[]) => string): string {
  switch (refusal.problem) {
    case "missing":
      return `Please add the option “${refusal.option}”: ${refusal.choices.length > 0 ? `one of ${one(refusal.choices)}` : "it is needed for this"}.`;
    case "unknown":
      return `There is no option “${clip(refusal.option)}” here. Options: ${one(refusal.choices)}.`;
    case "not a choice":
      return `That is no choice for ${partNamed(refusal.option)}. Choose ${one(refusal.choices)}.`;
    case "too long":
      return `${refusal.option} is longer than I read. Keep it short.`;
    case "file too large":
      return "That file is larger than I read: a plan or a chart as text has at most 200 kB. Nothing was saved.";
    case "file not text":
      return "That file is no text. Send the plan as the JSON file that /plan export gives, or the chart as CSV or plain text. Nothing was saved.";
    case "file not there":
      return "I could not get that file. Nothing was saved; send it again.";
  }
}

function notAhead({ typed, because }: Extract<Refusal, { why: "not ahead" }>): string {
  const how = "Type a day such as 1 June, midsummer or in 6 weeks, or an odometer such as 18,000 mi or +1,500 mi.";
  switch (because) {
    case "not read":
      return `I cannot read “${clip(typed)}” as a day or a distance ahead. ${how}`;
    case "past":
      return `“${clip(typed)}” is not ahead. ${how}`;
    case "too far":
      return `“${clip(typed)}” is more than three years ahead, further than I can see. ${how}`;
    case "over a year":
      return `“${clip(typed)}” is more than a year ahead: put it off for a year at most. What you never want to hear of, switch off with /remind off:services.`;
    case "no reading":
      return "I have no odometer reading to count from yet. Write what it says, then ask again; or look ahead to a day.";
  }
}

const TRIP: Readonly<Record<Extract<Refusal, { why: "trip" }>["because"], (typed: string) => string>> = {
  "not read": (typed) =>
    `I cannot read “${typed}” as a trip. Give its distance and days: 2,800 mi from 12 June to 30 June, or 900 km from next Friday for ten days.`,
  backwards: (typed) => `“${typed}” ends before it begins. Check the days and type it again.`,
  past: (typed) => `“${typed}” is over already. Log the odometer instead.`,
  "too far a day": (typed) => `“${typed}” is more a day than anybody rides. Look at the distance and the days again.`,
  "too far": (typed) => `“${typed}” is further than I plan: within a year, and up to 60,000 mi.`,
};

const CHECK: Readonly<Record<Extract<Refusal, { why: "check" }>["because"], (typed: string) => string>> = {
  "whose bike": () => "Name the bike you are looking at and say what kind it is: /check list:buying used bike:Red one kind:chain-drive twin.",
  "not a temperature": (typed) => `I cannot read “${typed}” as a temperature. Type it with its unit, such as -8 °C or 15 °F.`,
  "not a figure": (typed) => `I cannot read “${typed}” as that. Type the figure with its unit, such as 33 psi, 2.3 bar, 4.5 mm or 12.6 V. Nothing was saved.`,
  "not a link": (typed) => `“${typed}” is no link. Paste the address of the picture or message, beginning with https://. Nothing was saved.`,
  "every bike has it": () => "Every bike has that one. If you cannot look at it now, answer “later”.",
  "not a season": (typed) => `I cannot read “${typed}” as a riding season. Say north, south, none, or its first and last day: 1 April to 15 October.`,
  "none finished": () => "No check is finished there yet. /check shows what is open and begins one.",
};

const TYRES: Readonly<Record<Extract<Refusal, { why: "tyres" }>["because"], (set: string) => string>> = {
  "what came off": (set) => `Which tyres came off for “${set}”? Name them once, such as off:road; from then on I know.`,
  "on already": (set) => `“${set}” is on already. Name the set that goes on.`,
  "other on": (set) => `By my record “${set}” is on. Leave off: out, or note the swap between first.`,
  earlier: (set) => `“${set}” was put on later than that. Undo that swap first, or check the day.`,
  "by set": () =>
    "Tyres that are swapped together go on and off as sets, each with its own distance: /bike tyres set:off-road off:road at:15,200 mi. A single one is put back with part:front tyre or part:rear tyre where no sets are kept. A new tyre is work: /work did:rear tyre outcome:replaced.",
  name: () => "Give the tyres a short name of up to 32 characters, such as road or off-road.",
};

const PLAN_CHANGE: Readonly<Record<Extract<Refusal, { why: "plan change" }>["because"], (typed: string) => string>> = {
  "nothing said": () => "Say what it is to be: every:4,000 mi or 12 months, or marks:600, 4,000, 8,000 mi with what comes after in every:.",
  "no marks": (typed) =>
    `I cannot read “${typed}” as services. List them rising, with their unit: marks:600, 4,000, 8,000 mi, or 600 mi / 1,000 km, 4,000 mi / 6,000 km.`,
  "counted from": () => "After the services listed, every so often: counted from zero, or from the last of them? Say counted: too.",
  "no list": () => "Nothing is listed to count from. Give marks: too, or count an interval from zero or from the last time.",
  "marks from last": () =>
    "Every second or third service goes by the marks of the odometer, not from the last time. Type the whole distance instead, such as 12,000 mi.",
  itself: (typed) => `“${typed}” is the item itself. Name the other one that it goes by, such as every second oil change.`,
  "no interval": () => "What a use shortens is an interval, and this item goes by services listed or counted. Change those with every: or marks:.",
  "marks and use": () => "A use shortens an interval, not a list of services: give marks: or when:, one at a time.",
};
