// All of the English words, put together for one member: their locale, their units, their day.

import type { LocalDate } from "../../core/calendar/dates.ts";
import { makePrinter, type PrintStyle } from "../printer.ts";
import { askWords } from "./asks.ts";
import { bikeWords } from "./bikes.ts";
import { ENGLISH_CAUTIONS } from "./cautions.ts";
import { chartWords } from "./chart.ts";
import { checkWords } from "./checks.ts";
import { COMMAND_WORDS, helpWords } from "./commands.ts";
import { convertWords } from "./convert.ts";
import { countedWords } from "./counted.ts";
import { defectWords } from "./defects.ts";
import { digestWords } from "./digest.ts";
import { dueWords } from "./due.ts";
import { eveningWords } from "./evening.ts";
import { fluidEntered, fluidOfSpec, fluidPut, fluidUnknown } from "./fluids.ts";
import { fuelWords } from "./fuel.ts";
import { judgeWords } from "./judge.ts";
import { lookUpWords } from "./look-up.ts";
import { outlookWords } from "./outlook.ts";
import { partsWords } from "./parts.ts";
import { pictureWords } from "./pictures.ts";
import { planWords } from "./plan.ts";
import { planEditWords } from "./plan-edits.ts";
import { readChartWords } from "./read-chart.ts";
import { readingWords } from "./readings.ts";
import { recordWords } from "./records.ts";
import { refusalWords } from "./refusals.ts";
import { reminderWords } from "./reminders.ts";
import { rideWords } from "./ride.ts";
import { seasonWords } from "./season.ts";
import { settingsWords } from "./settings.ts";
import { sheetWords } from "./sheet.ts";
import { specWords } from "./specs.ts";
import { toldWords } from "./told.ts";
import { torqueWords } from "./torque.ts";
import { tripPartName, tripWords } from "./trip.ts";
import { tripAskWords } from "./trip-asks.ts";
import { tyreWords } from "./tyres.ts";
import { workDetailWords } from "./work-detail.ts";

/** The words of a language for one member on one day. */
export type Words = ReturnType<typeof english>;

export function english(style: PrintStyle, today: LocalDate) {
  const p = makePrinter(style);
  const plan = planWords(p);
  const trip = tripWords(p, today);
  const due = dueWords(p);
  const defects = defectWords(p);
  const season = seasonWords(p, today);
  const asks = askWords(p, today);
  const tripAsks = tripAskWords(p, today, tripPartName, trip);
  const reminders = reminderWords(p);
  return {
    p,
    today,
    bikes: bikeWords(p),
    due,
    defects,
    workDetail: workDetailWords(p),
    records: recordWords(p),
    outlook: outlookWords(p),
    pictures: pictureWords(p),
    plan,
    chart: chartWords(p, plan.repeats),
    readChart: readChartWords(p, plan),
    readings: readingWords(p),
    judge: judgeWords(p),
    fluidPut,
    fluidUnknown,
    fluidOfSpec: (named: Parameters<typeof fluidOfSpec>[0]): readonly string[] => fluidOfSpec(named, (names) => p.list(names)),
    fluidEntered: (entered: Parameters<typeof fluidEntered>[0]): readonly string[] => fluidEntered(entered, (names) => p.list(names)),
    fuel: fuelWords(p),
    tyres: tyreWords(p),
    counted: countedWords(p),
    checks: checkWords(p),
    season,
    asks,
    digest: digestWords(p, today),
    evening: eveningWords(p),
    trip,
    ride: rideWords(p, today),
    tripAsks,
    convert: convertWords(p, style.locale),
    torque: torqueWords(p, style.locale),
    reminders,
    told: toldWords({ due, reminders, season, asks, trip, tripAsks, defects }),
    settings: settingsWords(p),
    planEdits: planEditWords(p, plan, today),
    lookUp: lookUpWords(p),
    specs: specWords(p, style.locale, today),
    sheet: sheetWords(p),
    parts: partsWords(p),
    refusal: refusalWords(p),
    help: helpWords,
    commands: COMMAND_WORDS,
    /** The caution of an item, by the key its plan line names. */
    caution: (key: string | null): string | null => (key === null ? null : ((ENGLISH_CAUTIONS as Readonly<Record<string, string>>)[key] ?? null)),
    cannotWrite: (why: "no room" | "read only"): string =>
      `${why === "no room" ? "The disk that I keep records on is full" : "The disk that I keep records on cannot be written"}, so nothing of that was saved. Say it again later; whoever runs me can see why.`,
    fault: (id: string): string => `Something went wrong on my side and nothing was changed. Try again; if it stays, tell whoever runs me and name ${id}.`,
  };
}
