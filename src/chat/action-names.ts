// Every action a button, a pick list or a form can name. commands/ supplies the handlers; the compiler asks for each.

import type { ActionId } from "./reply.ts";

export const ACTION_NAMES = [
  "undo",
  "undo-reading",
  "answer",
  "new-dial",
  "retype",
  "let-go",
  "show-question",
  "show-due",
  "show-logged",
  "add-bike",
  "history",
  "history-unknown",
  "history-whole",
  "fit-part",
  "fit-choice",
  "fit-battery",
  "done",
  "put-off",
  "put-off-until",
  "put-off-back",
  "set-up",
  "set-up-zone",
  "show-reminder",
  "remind-why",
  "withdraw",
  "keep",
  "look-sooner",
  "count-looked",
  "set-interval",
  "undo-interval",
  "leave-plan",
  "paste-chart",
  "show-chart",
  "answer-chart",
  "save-chart",
  "undo-chart",
  "leave-chart",
  "say-how",
  "say-how-figure",
  "spec-enter",
  "spec-save",
  "spec-undo",
  "plan-undo",
  "plan-take",
  "plan-beside",
  "plan-paste",
  "plan-share",
  "plan-unshare",
  "check-begin",
  "check-mine",
  "tread-law",
  "check-show",
  "check-answer",
  "check-fault",
  "check-measure",
  "check-note",
  "check-more",
  "check-section",
  "check-finish",
  "check-reopen",
  "check-state",
  "check-riding",
  "trip-off",
  "trip-back",
  "trip-share",
  "ride-along",
  "ride-who",
  "defect-show",
  "defect-grade",
  "defect-nothing",
  "defect-mended",
  "defect-closes",
  "sheet-evening",
  "sheet-start",
  "sheet-job",
  "sheet-item",
  "sheet-done",
  "sheet-values",
  "sheet-finish",
  "sheet-reopen",
  "sheet-leave",
  "sheet-shop",
  "sheet-bill",
  "sheet-bill-back",
  "kit-part",
  "work-bill",
  "work-bill-back",
] as const;
export type ActionName = (typeof ACTION_NAMES)[number];

/** The parts of an action id: what to do, to which subject, and the revision of the subject that was shown. */
export type ParsedAction = { readonly action: ActionName; readonly subject: string; readonly rev: number };

/** Characters that the platform takes in an id. */
export const LONGEST = 100;

/** `1.<action>.<subject>.<rev>`. @throws RangeError when it would be longer than the platform takes */
export function actionId(action: ActionName, subject: string, rev = 0): ActionId {
  const id = `1.${action}.${subject}.${rev}`;
  if (id.length > LONGEST) throw new RangeError(`action id of ${id.length} characters: ${id}`);
  return id as ActionId;
}

/** Reads an id back; null when it is none of ours, or of a version that is no longer understood. */
export function parseAction(id: string): ParsedAction | null {
  const [version, action, ...rest] = id.split(".");
  const rev = rest.pop();
  if (version !== "1" || rev === undefined || rest.length === 0 || !/^\d{1,9}$/.test(rev)) return null;
  const known = ACTION_NAMES.find((name) => name === action);
  return known === undefined ? null : { action: known, subject: rest.join("."), rev: Number(rev) };
}
