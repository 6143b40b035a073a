// A plan as words, and a change of it beside what it changes.

import type { Said } from "../../src/chat/reply.ts";
import { SYSTEMS } from "../../src/core/plan/plan.ts";
import type { IntervalChange, PlanShown, Under } from "../../src/usecases/plan.ts";
import type { Words } from "../../src/words/en/english.ts";
import { press, said } from "./said.ts";

export function sayPlan({ nickname, planName, column, lines, dropped }: PlanShown, words: Words): Said {
  const { plan } = words;
  const systems = SYSTEMS.flatMap((system) => {
    const here = lines.filter((line) => line.system === system);
    return here.length === 0 ? [] : ["", `${system.charAt(0).toUpperCase()}${system.slice(1)}`, ...here.map((line) => `- ${plan.line(line, column)}`)];
  });
  return said([
    plan.title(nickname, planName, lines.length),
    ...systems,
    ...(dropped.length === 0 ? [] : ["", words.planEdits.dropped(dropped)]),
    "",
    plan.how(),
  ]);
}

export function sayChange(change: IntervalChange, words: Words): Said {
  const { plan } = words;
  const { bike, column, item, name, was, will, every, rev, saved } = change;
  const under = (lead: "now" | "changed" | "before", { repeat, marks, due }: Under): string[] => [
    plan.under(lead, repeat, marks, column),
    `- ${words.due.lineWithStatus(due, bike)}`,
  ];
  if (saved)
    return said([plan.saved(bike.nickname), "", ...under("now", will), ...under("before", was)], {
      caution: words.caution(will.due.caution),
      actions: [press("undo-interval", bike.bike, plan.labels.undo, rev)],
    });
  const subject = [bike.bike, item, every.miles ?? "", every.km ?? "", every.months ?? "", every.hours ?? ""].join("/");
  const converted = plan.converted(every, column);
  const notes = [...plan.warnings(was.repeat, will.repeat, column), ...(converted === null ? [] : [converted]), plan.notSaved()];
  return said([plan.changing(bike.nickname, name), "", ...under("now", was), ...under("changed", will), "", ...notes], {
    caution: words.caution(will.due.caution),
    actions: [press("set-interval", subject, plan.labels.save, rev), press("leave-plan", bike.bike, plan.labels.leave)],
  });
}
