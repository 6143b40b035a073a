// The one form about a bike's past, and what came of it.

import type { Form, Said } from "../../src/chat/reply.ts";
import type { History } from "../../src/usecases/first-history.ts";
import type { Words } from "../../src/words/en/english.ts";
import { formButton, press, said } from "./said.ts";

/** A form holds five fields, and a label at most 45 characters. */
export function historyForm(
  nickname: string,
  asks: readonly { readonly item: string; readonly called: string; readonly typed?: string | null }[],
  words: Words,
): Form {
  return {
    title: words.bikes.historyTitle(nickname),
    fields: asks.slice(0, 5).map(({ item, called, typed }) => ({
      name: item,
      label: called.slice(0, 45),
      kind: "line" as const,
      required: false,
      value: typed ?? null,
      hint: words.bikes.historyHint(),
      options: [],
    })),
  };
}

export function sayHistory(history: History, words: Words): Said {
  const lines: string[] = [];
  if (history.recorded.length > 0) lines.push(words.bikes.recorded(history.recorded.map((each) => words.bikes.recordedItem(each.called, each.on))));
  for (const each of history.unread) lines.push(words.bikes.unread(each.called, each.typed));
  if (history.unknown.length > 0) lines.push(words.bikes.unknown(history.unknown));
  if (history.due.first.length > 0)
    lines.push(words.due.first(history.due.first.map((key) => history.due.dues.find((line) => line.item === key)?.name ?? key)));
  // What was read is on record; the form comes again with the rest as it was typed.
  const again =
    history.unread.length === 0
      ? []
      : [formButton("history", subjectOf(history), words.bikes.labels.again, historyForm(history.nickname, history.unread, words))];
  if (history.unread.length > 0) lines.push(words.bikes.unreadHow());
  return said(lines, { actions: [...again, press("show-due", history.due.bike, words.bikes.labels.due)] });
}

/** Between the bike and what its answers are kept under. */
const PART = "/";
const subjectOf = ({ due, kept }: History): string => `${due.bike}${kept === null ? "" : `${PART}${kept}`}`;

/** What a button's subject says: the bike and, of a form that came back, what its answers are kept under. */
export function historyOf(subject: string): { readonly bike: string; readonly kept: string | null } {
  const [bike = "", kept = null] = subject.split(PART);
  return { bike, kept };
}
