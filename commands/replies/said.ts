// Small parts that replies are put together from.

import { type ActionName, actionId } from "../../src/chat/action-names.ts";
import type { Action, Choice, Form, Said } from "../../src/chat/reply.ts";

/** Words to show, with everything that is left out left empty. */
export const said = (lines: readonly string[], more: Partial<Said> = {}): Said => ({ title: null, caution: null, actions: [], files: [], ...more, lines });

export const press = (name: ActionName, subject: string, label: string, rev = 0): Action => ({ id: actionId(name, subject, rev), label, kind: "press" });
export const pickOne = (name: ActionName, subject: string, label: string, options: readonly Choice[], rev = 0): Action => ({
  id: actionId(name, subject, rev),
  label,
  kind: "pick",
  options,
  min: 1,
  max: 1,
});
export const formButton = (name: ActionName, subject: string, label: string, form: Form, rev = 0): Action => ({
  id: actionId(name, subject, rev),
  label,
  kind: "form",
  form,
});

/** What people type for an outcome: one of two halves is typed by itself. */
export const OUTCOMES_ALSO = { "inspected, within limits": ["within limits", "in limits", "within spec", "in spec"] } as const;
