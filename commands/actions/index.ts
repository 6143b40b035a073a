// What answers each action. The compiler asks for every name in chat/action-names.ts.

import type { ActionName } from "../../src/chat/action-names.ts";
import type { BotHandler } from "../define.ts";
import { addFirst, fitBattery, fitChoice, fitPart, history, historyUnknown, historyWhole } from "./bike.ts";
import { workBill, workBillBack } from "./bill.ts";
import { answerChart, leaveChart, pasteChart, saveChart, showChart, undoChart } from "./chart.ts";
import {
  checkAnswer,
  checkBegin,
  checkFault,
  checkFinish,
  checkMeasure,
  checkMine,
  checkMore,
  checkNote,
  checkReopen,
  checkRiding,
  checkSection,
  checkShow,
  checkState,
} from "./check.ts";
import { countLooked } from "./counted.ts";
import { defectCloses, defectGrade, defectMended, defectNothing, defectShow } from "./defects.ts";
import { answer, letGo, newDial, retype, showLogged, showQuestion } from "./drafts.ts";
import { kitPart } from "./kit.ts";
import { leavePlan, lookSooner, setInterval, takeIntervalBack } from "./plan.ts";
import { pastePlan, shareInstead, showBeside, takePlan, takeShareBack, undoPlanEdit } from "./plan-base.ts";
import { doneNow, putOffBack, putOffNow, putOffUntil, showDue, showReminder, whyNow } from "./reminders.ts";
import { sayHowForm, sayHowPress } from "./say-how.ts";
import { setUp, setUpZone } from "./set-up.ts";
import { SHEET_HANDLERS } from "./sheet.ts";
import { enterSpecForm, saveLimit, takeSpecBack, treadLaw } from "./spec.ts";
import { rideJoin, rideWho, tripBack, tripOff, tripShare } from "./trip.ts";
import { keep, undo, undoOne, withdraw } from "./undo.ts";

export const HANDLERS: Readonly<Record<ActionName, BotHandler>> = {
  undo,
  "undo-reading": undoOne,
  answer,
  "new-dial": newDial,
  retype,
  "let-go": letGo,
  "show-question": showQuestion,
  "show-due": showDue,
  "show-logged": showLogged,
  "add-bike": addFirst,
  history,
  "history-unknown": historyUnknown,
  "history-whole": historyWhole,
  "fit-part": fitPart,
  "fit-choice": fitChoice,
  "fit-battery": fitBattery,
  "tread-law": treadLaw,
  done: doneNow,
  "put-off": putOffNow,
  "put-off-until": putOffUntil,
  "put-off-back": putOffBack,
  "set-up": setUp,
  "set-up-zone": setUpZone,
  "show-reminder": showReminder,
  "remind-why": whyNow,
  withdraw,
  keep,
  "look-sooner": lookSooner,
  "count-looked": countLooked,
  "set-interval": setInterval,
  "undo-interval": takeIntervalBack,
  "leave-plan": leavePlan,
  "paste-chart": pasteChart,
  "show-chart": showChart,
  "answer-chart": answerChart,
  "save-chart": saveChart,
  "undo-chart": undoChart,
  "leave-chart": leaveChart,
  "say-how": sayHowPress,
  "say-how-figure": sayHowForm,
  "spec-enter": enterSpecForm,
  "spec-save": saveLimit,
  "spec-undo": takeSpecBack,
  "plan-undo": undoPlanEdit,
  "plan-take": takePlan,
  "plan-beside": showBeside,
  "plan-paste": pastePlan,
  "plan-share": shareInstead,
  "plan-unshare": takeShareBack,
  "check-begin": checkBegin,
  "check-mine": checkMine,
  "check-show": checkShow,
  "check-answer": checkAnswer,
  "check-fault": checkFault,
  "check-measure": checkMeasure,
  "check-note": checkNote,
  "check-more": checkMore,
  "check-section": checkSection,
  "check-finish": checkFinish,
  "check-reopen": checkReopen,
  "check-state": checkState,
  "check-riding": checkRiding,
  "trip-off": tripOff,
  "trip-back": tripBack,
  "trip-share": tripShare,
  "ride-along": rideJoin,
  "ride-who": rideWho,
  "defect-show": defectShow,
  "defect-grade": defectGrade,
  "defect-nothing": defectNothing,
  "defect-mended": defectMended,
  "defect-closes": defectCloses,
  ...SHEET_HANDLERS,
  "kit-part": kitPart,
  "work-bill": workBill,
  "work-bill-back": workBillBack,
};
