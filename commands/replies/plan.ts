// A plan as words, and a change of it beside what it changes.

import type { Said } from "../../src/chat/reply.ts";
import { SYSTEMS } from "../../src/core/plan/plan.ts";
import type { PlanShown } from "../../src/usecases/plan.ts";
import { everyOf, type IntervalChange, type Under } from "../../src/usecases/plan-change.ts";
import type { Words } from "../../src/words/en/english.ts";
import { offered } from "./plan-edits.ts";
import { press, said } from "./said.ts";

export function sayPlan({ bike, nickname, planName, column, lines, dropped, offers }: PlanShown, words: Words): Said {
  const { plan } = words;
  const systems = SYSTEMS.flatMap((system) => {
    const here = lines.filter((line) => line.system === system);
    return here.length === 0 ? [] : ["", `${system.charAt(0).toUpperCase()}${system.slice(1)}`, ...here.map((line) => `- ${plan.line(line, column)}`)];
  });
  return said(
    [
      plan.title(nickname, planName, lines.length),
      ...systems,
      ...(dropped.length === 0 ? [] : ["", words.planEdits.dropped(dropped)]),
      ...(offers.length === 0 ? [] : ["", ...offers.map((offer) => words.planEdits.offer(nickname, offer))]),
      "",
      plan.how(),
    ],
    { actions: offered(bike, offers, words) },
  );
}

export function sayChange(change: IntervalChange, words: Words): Said {
  const { plan } = words;
  const { bike, column, name, was, will, draft, why, rev, saved } = change;
  const usesChange = JSON.stringify(was.shortened) !== JSON.stringify(will.shortened);
  const under = (lead: "now" | "changed" | "before", trigger: Under): string[] => [
    plan.under(lead, trigger, column),
    ...(usesChange ? plan.shortened(trigger.shortened, column) : []),
    `- ${words.due.lineWithStatus(trigger.due, bike)}`,
  ];
  if (saved)
    return said([plan.saved(bike.nickname), ...(why === null ? [] : [plan.why(why)]), "", ...under("now", will), ...under("before", was)], {
      caution: words.caution(will.due.caution),
      actions: [press("undo-interval", bike.bike, plan.labels.undo, rev)],
    });
  const every = everyOf(will.repeat);
  const converted = every === null ? null : plan.converted(every, column);
  const notes = [
    ...plan.warnings(was.repeat, will.repeat, column),
    ...(converted === null ? [] : [converted]),
    ...(why === null ? [] : [plan.why(why)]),
    plan.notSaved(),
  ];
  return said([plan.changing(bike.nickname, name), "", ...under("now", was), ...under("changed", will), "", ...notes], {
    caution: words.caution(will.due.caution),
    actions: [press("set-interval", draft ?? "", plan.labels.save, rev), press("leave-plan", bike.bike, plan.labels.leave)],
  });
}
