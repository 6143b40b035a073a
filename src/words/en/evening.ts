// A group's wrench evening, in English.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";
import { hours } from "./outlook.ts";
import { lowered } from "./text.ts";

type Item = { readonly name: string; readonly minutes: number | null; readonly engine: "cold" | "warm" | "any" };
type Brought = {
  readonly nickname: string;
  readonly owner: string | null;
  readonly items: readonly Item[];
  readonly unknown: readonly string[];
  readonly minutes: number;
  readonly unsaid: number;
};
type Evening = {
  readonly until: LocalDate;
  readonly far: string | null;
  readonly today: LocalDate;
  readonly bikes: readonly Brought[];
  readonly idle: readonly string[];
  readonly byDate: readonly string[];
  readonly tools: readonly { readonly tool: string; readonly bikes: readonly string[] }[];
  readonly more: number;
};

const HOW = "Bring yours with /bike change group-evening:yes: others then see what falls due on it, and nothing that was found wrong.";

export const eveningWords = (p: Printer) => {
  const time = (minutes: number, unsaid: number): string => `${unsaid > 0 ? "at least " : "about "}${hours(minutes)}`;
  const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? "" : "s"}`;
  const work = (items: readonly Item[], unknown: readonly string[]): string => {
    const known = items.map(({ name }) => name).filter((name) => !unknown.includes(name));
    const first = unknown.length === 0 ? "" : `with nothing on record: ${p.list(unknown.map(lowered))}`;
    return [known.length === 0 ? "" : p.list(known.map(lowered)), first].filter((part) => part !== "").join("; ");
  };
  const withCold = ({ items }: Brought): boolean => items.some(({ engine }) => engine === "cold");
  return {
    /** Under "changed". */
    brought: (nickname: string, is: boolean): string =>
      is
        ? `The group's wrench evening (/plan evening) and its shopping list (/plan shopping group:yes) show ${nickname} now: its name, yours, and what falls due on it. Nothing found wrong. Take it out with group-evening:no.`
        : `The group's wrench evening no longer shows ${nickname}.`,
    lines: ({ until, far, today, bikes, idle, byDate, tools, more }: Evening): readonly string[] => {
      const by = far === null ? `by ${p.date(until, today)}` : `until “${far}”`;
      const alone =
        byDate.length === 0
          ? []
          : [
              `By date alone on ${p.list(byDate)}, with the next service where it is near: nothing says how far ${byDate.length === 1 ? "it is" : "they are"} ridden. The owner says it with /bike change yearly:.`,
            ];
      if (bikes.length === 0)
        return [
          idle.length === 0 ? "No bike is brought to this group's wrench evening yet." : `Nothing falls due ${by} on ${p.list(idle)}.`,
          ...(idle.length === 0 ? [HOW] : []),
          ...alone,
        ];
      const items = bikes.reduce((sum, bike) => sum + bike.items.length, 0);
      const minutes = bikes.reduce((sum, bike) => sum + bike.minutes, 0);
      const unsaid = bikes.reduce((sum, bike) => sum + bike.unsaid, 0);
      const cold = bikes.filter(withCold).map(({ nickname }) => nickname);
      const [all, some] = [tools.filter((tool) => tool.bikes.length === bikes.length), tools.filter((tool) => tool.bikes.length < bikes.length)];
      const named = some.map(({ tool, bikes: users }) => `${tool} (${users.join(", ")})`);
      return [
        `A wrench evening for what falls due ${by}: ${counted(bikes.length, "bike")}, ${counted(items, "item")}, ${time(minutes, unsaid)} of work in all.`,
        ...bikes.map(
          ({ nickname, owner, items: own, unknown, minutes: each, unsaid: open }) =>
            `- ${owner === null ? nickname : `${nickname} (${owner})`}, ${time(each, open)}: ${work(own, unknown)}`,
        ),
        ...(idle.length === 0 ? [] : [`Nothing to do on ${p.list(idle)}.`]),
        ...alone,
        ...(more === 0 ? [] : [`And ${counted(more, "bike")} more that found no room here.`]),
        "",
        ...(all.length === 0 ? [] : [`Tools${bikes.length === 1 ? "" : " for every bike"}: ${p.list(all.map(({ tool }) => tool))}.`]),
        ...(named.length === 0 ? [] : [`${all.length === 0 ? "Tools" : "Besides"}: ${p.list(named)}.`]),
        ...(cold.length === 0 ? [] : [`Some of it wants a cold engine on ${p.list(cold)}: let ${cold.length === 1 ? "it" : "them"} stand first.`]),
        "What to buy: /plan shopping group:yes. Each bike's order and values: /plan sheet.",
      ];
    },
  };
};
