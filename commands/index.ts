// Every command, in the order in which help lists them. A command is one file and one line here.

import { bikeAdd } from "./bike-add.ts";
import { bikeCard } from "./bike-card.ts";
import { bikeChange } from "./bike-change.ts";
import { bikeDate } from "./bike-date.ts";
import { bikeFitted } from "./bike-fitted.ts";
import { bikeList } from "./bike-list.ts";
import { bikeOdometer } from "./bike-odometer.ts";
import { bikeParts } from "./bike-parts.ts";
import { bikeRefit } from "./bike-refit.ts";
import { bikeTyres } from "./bike-tyres.ts";
import { check } from "./check.ts";
import { convert } from "./convert.ts";
import type { BotCommand } from "./define.ts";
import { due } from "./due.ts";
import { group } from "./group.ts";
import { helpOver } from "./help.ts";
import { planAdd } from "./plan-add.ts";
import { planChange } from "./plan-change.ts";
import { planChart } from "./plan-chart.ts";
import { planCompare } from "./plan-compare.ts";
import { planDrop } from "./plan-drop.ts";
import { planEvening } from "./plan-evening.ts";
import { planExport } from "./plan-export.ts";
import { planHistory } from "./plan-history.ts";
import { planImport } from "./plan-import.ts";
import { planJob } from "./plan-job.ts";
import { planList } from "./plan-list.ts";
import { planReadChart } from "./plan-read-chart.ts";
import { planRecheck } from "./plan-recheck.ts";
import { planShare } from "./plan-share.ts";
import { planSheet } from "./plan-sheet.ts";
import { planShopping } from "./plan-shopping.ts";
import { reading } from "./reading.ts";
import { records } from "./records.ts";
import { remind } from "./remind.ts";
import { spec } from "./spec.ts";
import { torqueEstimate } from "./torque-estimate.ts";
import { torqueHex } from "./torque-hex.ts";
import { torqueSetCommand } from "./torque-set.ts";
import { torqueStages } from "./torque-stages.ts";
import { torqueWrenchAdd } from "./torque-wrench-add.ts";
import { torqueWrenchDrop } from "./torque-wrench-drop.ts";
import { torqueWrenchList } from "./torque-wrench-list.ts";
import { trip } from "./trip.ts";
import { tyreDate } from "./tyre-date.ts";
import { tyreMarking } from "./tyre-marking.ts";
import { tyrePressure } from "./tyre-pressure.ts";
import { tyreShow } from "./tyre-show.ts";
import { work } from "./work.ts";

const ALL = [
  bikeAdd,
  bikeList,
  bikeChange,
  bikeFitted,
  bikeOdometer,
  bikeTyres,
  bikeRefit,
  bikeDate,
  bikeCard,
  bikeParts,
  reading,
  work,
  records,
  due,
  check,
  trip,
  planList,
  planChange,
  planAdd,
  planDrop,
  planHistory,
  planCompare,
  planShare,
  planExport,
  planImport,
  planChart,
  planReadChart,
  spec,
  planSheet,
  planJob,
  tyreShow,
  tyreDate,
  tyreMarking,
  tyrePressure,
  planShopping,
  planEvening,
  planRecheck,
  convert,
  torqueSetCommand,
  torqueStages,
  torqueEstimate,
  torqueHex,
  torqueWrenchAdd,
  torqueWrenchList,
  torqueWrenchDrop,
  remind,
  group,
] as const satisfies readonly BotCommand[];

export const COMMANDS: readonly BotCommand[] = [...ALL, helpOver(ALL)];
export { HANDLERS } from "./actions/index.ts";
export { messagesOf } from "./messages.ts";
export { saySetUp } from "./replies/set-up.ts";
