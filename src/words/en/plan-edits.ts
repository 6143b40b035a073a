// Changes of a plan in English: what was added, dropped, taken; the record of them; another plan beside the one in force.

import { unreachable } from "../../core/brand.ts";
import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Interval, PlanEdit, PlanItem, Repeat } from "../../core/plan/plan.ts";
import type { DistanceUnit } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";
import type { planWords } from "./plan.ts";
import { lowered } from "./text.ts";

type Edited = {
  readonly nickname: string;
  readonly did: "added" | "dropped" | "brought back" | "taken back";
  readonly name: string;
  readonly every: Interval | null;
  readonly column: DistanceUnit;
};
type Told = {
  readonly change: PlanEdit["change"];
  readonly name: string;
  readonly repeat: Repeat | null;
  readonly shortened: PlanItem["shortened"] | null;
  readonly by: string | null;
  readonly at: string;
  readonly why: string | null;
};
type PlanOffer = { readonly plan: "starter plan" | "group plan"; readonly by: string | null; readonly manual: string | null };
type GroupPlanNamed = { readonly by: string | null; readonly manual: string };
type Trigger = Pick<PlanItem, "anchor" | "first" | "repeat" | "shortened">;

/** So many names are read in one line. */
const FEW = 10;

export const planEditWords = (p: Printer, plan: ReturnType<typeof planWords>, today: LocalDate) => {
  const says = ({ anchor, repeat, first, shortened }: Trigger, column: DistanceUnit, withUses: boolean): string =>
    [
      plan.repeats(repeat, column),
      first === null ? null : `first at ${plan.legs(first, column)}`,
      anchor === "last done" ? "from the last time" : null,
      withUses ? (Object.keys(shortened).length === 0 ? "no use shortens it" : plan.uses(shortened, column)) : null,
    ]
      .filter((part) => part !== null)
      .join("; ");
  const did = ({ change, name, repeat, shortened }: Told, column: DistanceUnit): string => {
    const comes = repeat === null ? "" : `, ${plan.repeats(repeat, column)}`;
    switch (change) {
      case "interval":
        return shortened === null
          ? `${name} changed to ${repeat === null ? "" : plan.repeats(repeat, column)}`
          : `${name}, what uses shorten changed to ${plan.uses(shortened, column)}`;
      case "add":
        return `${name} added${comes}`;
      case "drop":
        return `${name} dropped`;
      case "restore":
        return `${name} brought back`;
      case "base":
        return `the plan “${name}” taken`;
      default:
        return unreachable(change);
    }
  };
  return {
    edited: ({ nickname, did: what, name, every, column }: Edited): string => {
      if (what === "taken back") return `${nickname}'s plan: the last change is taken back.`;
      if (what === "dropped") return `${nickname}, dropped from the plan: ${lowered(name)}. It stays on the list as dropped, and falls due no more.`;
      if (what === "brought back") return `${nickname}, back in the plan: ${lowered(name)}.`;
      return `${nickname}, new in the plan: ${lowered(name)}, every ${every === null ? "" : plan.legs(every, column)}, counted from the last time.`;
    },
    /** Nothing was said of what it holds. */
    droppedSafety: (): string => "What is not in the plan is not watched: look at it yourself, as the maker's manual says.",
    dropped: (names: readonly string[]): string => `Dropped: ${p.list(names.map(lowered))}. To bring one back: /plan drop item:… back:yes`,
    history: (nickname: string, n: number): string =>
      n === 0
        ? `${nickname}'s plan is as it was given: nothing was changed.`
        : `${nickname}'s plan: ${n === 1 ? "1 change" : `${n} changes`}, the latest first.`,
    told: (told: Told, column: DistanceUnit): string =>
      `- ${p.date(told.at.slice(0, 10) as LocalDate, today)}, ${told.by ?? "you"}: ${did(told, column)}.${told.why === null ? "" : ` Why: ${told.why}`}`,
    /** The head of a comparison. */
    beside: (nickname: string, name: string, source: string, by: string | null): string =>
      `${nickname}'s plan beside “${name}”${by === null ? "" : `, shared by ${by}`}. Source: ${source}.`,
    same: (): string => "Nothing differs: all falls due as there.",
    added: (name: string, trigger: Trigger, column: DistanceUnit): string => `+ ${name}: ${says(trigger, column, false)}.`,
    /** "It takes 40 of 41 items out of the plan. What is not in the plan is not watched, and these can hurt: brake fluid and front tyre age." */
    takesOut: (gone: readonly string[], safety: readonly string[], of: number, listed: boolean): string => {
      const few = gone.length <= FEW && !listed ? `: ${p.list(gone.map(lowered))}` : "";
      const hurts = safety.length === 0 ? "" : ` What is not in the plan is not watched, and here that can hurt: ${p.list(safety.map(lowered))}.`;
      return `Taking it leaves out ${gone.length} of the ${of} items in this plan${few}.${hurts}`;
    },
    gone: (name: string): string => `- ${name}: not in that plan.`,
    changed: (name: string, was: Trigger, will: Trigger, column: DistanceUnit): readonly string[] => {
      // What uses shorten is long, and told only where it differs.
      const withUses = plan.uses(was.shortened, column) !== plan.uses(will.shortened, column);
      return [name, `  now ${says(was, column, withUses)}`, `  there ${says(will, column, withUses)}`];
    },
    /** Over what the owner changed. @param alone nothing else differs */
    ownStand: (alone: boolean): string =>
      alone ? "Only your own changes differ, and they stay on whichever plan you take:" : "And your own changes, which stay on whichever plan you take:",
    kept: (name: string, now: Trigger | null, there: Trigger | null, column: DistanceUnit): readonly string[] => {
      if (now === null) return there === null ? [] : [`${name}: dropped by you; there ${says(there, column, false)}.`];
      if (there === null) return [`${name}: added by you, ${says(now, column, false)}; not in that plan.`];
      const withUses = plan.uses(now.shortened, column) !== plan.uses(there.shortened, column);
      return [`${name}, changed by you`, `  now ${says(now, column, withUses)}`, `  there ${says(there, column, withUses)}`];
    },
    more: (n: number): string => `And ${n} more; the file of /plan export has all.`,
    conflicts: (names: readonly string[]): string =>
      `You changed ${p.list(names.map(lowered))} yourself, and that plan differs there too: yours stands. To follow that plan instead, change it with /plan change.`,
    notTaken: (): string => "Nothing is changed yet. Your own changes stay on whichever plan you take.",
    taken: (nickname: string, name: string): string => `${nickname} has the plan “${name}” now; your own changes lie on it as before.`,
    shared: (nickname: string, model: string, items: number): string =>
      `${nickname}'s plan (${items} items) is this group's for ${model}. Others with that model see it with /plan compare with:group plan, and take it with one press.`,
    /** "For Ostler Tarn 650 this group has Mia's plan, from: workshop manual, 2019 edition. Heron's, from: A, would replace it." */
    wouldReplace: (nickname: string, model: string, before: GroupPlanNamed, manual: string): string =>
      `For ${model} this group has ${before.by === null ? "your plan" : `${before.by}'s plan`}, from: ${before.manual}. ${nickname}'s plan, from: ${manual}, would replace it. What would differ:`,
    wouldChange: (name: string, was: Trigger, will: Trigger, column: DistanceUnit): readonly string[] => {
      const withUses = plan.uses(was.shortened, column) !== plan.uses(will.shortened, column);
      return [name, `  the group's ${says(was, column, withUses)}`, `  yours ${says(will, column, withUses)}`];
    },
    goneOfYours: (name: string): string => `- ${name}: not in yours.`,
    sameAsGroup: (): string => "Nothing falls due otherwise; only what it is from would read differently.",
    notShared: ({ by }: GroupPlanNamed): string =>
      `Nothing is shared yet. ${by === null ? "" : `Where yours and ${by}'s differ, look at the manuals together first. `}Whoever took the plan that is there keeps it.`,
    replaced: ({ by, manual }: GroupPlanNamed): string =>
      `It replaces ${by === null ? "your earlier one" : `${by}'s`}, from: ${manual}. Undo brings that back.`,
    unshared: (model: string, before: GroupPlanNamed | null): string =>
      before === null
        ? `This group has no plan for ${model} now. Whoever took it keeps it.`
        : `For ${model} this group has ${before.by === null ? "your earlier plan" : `${before.by}'s plan`} again, from: ${before.manual}. Whoever took the other keeps it.`,
    sharedSource: (manual: string): string => `Source: ${manual}.`,
    exported: (nickname: string, items: number): string => `${nickname}'s plan as a file: ${items} items.`,
    exportedHow: (): string => "To take it over elsewhere: /plan import with this file.",
    fileAlt: (nickname: string): string => `${nickname}'s plan in the plan format, version 1`,
    importAsk: (nickname: string): string => `Paste a plan file for ${nickname}. You see what it changes before anything is saved.`,
    form: { title: "Paste a plan file", text: "What the file holds" },
    /** Another plan that there is for the bike. */
    offer: (nickname: string, { plan: which, by, manual }: PlanOffer): string =>
      which === "starter plan"
        ? `The starter plan has changed since ${nickname} was given it. See both side by side, and take it only if you like.`
        : `Your group has a plan for this make and model, shared by ${by ?? "a member"}, from: ${manual ?? "a manual"}. See both side by side, and take it only if you like.`,
    labels: {
      ...{ undo: "Undo", take: "Take that plan", share: "Share mine instead", leave: "Leave it", paste: "Paste it", pasteAgain: "Paste it again" },
      beside: (which: PlanOffer["plan"]): string => (which === "starter plan" ? "See the new starter plan" : "See the group's plan"),
    },
  };
};
