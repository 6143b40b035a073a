// The latest readings and the unanswered questions, as words.

import type { Action, Said } from "../../src/chat/reply.ts";
import type { ReadingList } from "../../src/usecases/readings.ts";
import type { Words } from "../../src/words/en/english.ts";
import { press, said } from "./said.ts";

export function sayReadings(list: ReadingList, words: Words): Said {
  const lines: string[] = [];
  const actions: Action[] = [];
  const usedUpTo = (id: string, { fuel }: ReadingList["bikes"][number]): string => {
    const used = fuel.find(({ fill }) => fill === id);
    return used === undefined ? "" : ` (${words.fuel.rates(used)})`;
  };
  for (const bike of list.bikes) {
    if (bike.readings.length === 0) lines.push(words.readings.none(bike.nickname));
    else
      lines.push(
        words.readings.list(bike.nickname),
        ...bike.readings.map((reading) => `- ${words.readings.listed(reading, words.today)}${usedUpTo(reading.id, bike)}`),
      );
    const [latest] = bike.readings;
    if (latest !== undefined) actions.push(press("undo-reading", latest.id, words.readings.undoOne(bike.nickname, latest), latest.rev));
  }
  if (list.open.length > 0) {
    lines.push("", words.readings.open(list.open.length));
    for (const question of list.open) {
      lines.push(`- “${question.typed}”`);
      actions.push(press("show-question", question.draft, words.readings.questionAbout(question.typed), question.rev));
    }
  }
  return said(lines, { actions });
}
