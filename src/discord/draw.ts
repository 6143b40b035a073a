// A reply as the platform's messages: text in pages, buttons and pick lists in rows, forms as modals.
// Nothing is cut in silence: what does not fit one message goes on in the next.

import {
  ActionRowBuilder,
  AttachmentBuilder,
  ButtonBuilder,
  ButtonStyle,
  LabelBuilder,
  type MessageActionRowComponentBuilder,
  ModalBuilder,
  StringSelectMenuBuilder,
  TextInputBuilder,
  TextInputStyle,
} from "discord.js";
import type { Action, Choice, Field, Form, Said } from "../chat/reply.ts";
import { escaped, escapedLines, whole, wrapped } from "./plain.ts";

/** Characters of text in one message; the platform takes 2,000. */
const PAGE = 1900;
const ROWS = 5;
const BUTTONS_IN_A_ROW = 5;
const OPTIONS = 25;

/** One message of a reply; buttons and files come with the last. */
export type Page = {
  readonly content: string;
  readonly components: readonly ActionRowBuilder<MessageActionRowComponentBuilder>[];
  readonly files: readonly AttachmentBuilder[];
};

/** The custom id of an action's nth list, where it needs more than one. */
const partId = (action: string, n: number): string => (n === 0 ? action : `part.${n}.${action}`);
/** The action whose list has that custom id. */
export const actionOfPart = (customId: string): string => customId.replace(/^part\.\d+\./u, "");

/** The custom id of a list of buttons too many for rows; the value picked is the action. */
export const MENU = "menu";

/** What goes onto pages beside the reply. */
export type Beside = {
  /** A line of the face's own before the first, such as a mention, which is not escaped. */
  readonly before?: string | null;
  /** Named on every page by what can be pressed there, where the reply takes more than one. */
  readonly mark?: string | null;
};

/** A reply in pages. */
export function pagesOf(said: Said, moreActions: string, { before = null, mark = null }: Beside = {}): readonly Page[] {
  const texts = paged([
    ...(before === null ? [] : [before]),
    ...(said.title === null ? [] : [`**${escaped(said.title.replace(/\s+/gu, " "))}**`]),
    ...said.lines.flatMap(escapedLines),
    ...(said.caution === null ? [] : escapedLines(said.caution).map((line) => `> ${line}`)),
  ]);
  const rows = rowsOf(said.actions, moreActions);
  const files = said.files.map((file) => new AttachmentBuilder(Buffer.from(file.bytes), { name: file.name, description: file.alt.slice(0, 1024) }));
  if (mark === null || (texts.length < 2 && rows.length <= ROWS)) return laid(texts, rows, ROWS, files, moreActions);
  const pages = laid(texts, rows, ROWS - 1, files, moreActions);
  return pages.map((page, n) => ({ ...page, components: [...page.components, pageMark(mark, n, pages.length)] }));
}

function laid(texts: readonly string[], rows: readonly Row[], rowsOnPage: number, files: Page["files"], moreActions: string): readonly Page[] {
  const pages: Page[] = texts.slice(0, -1).map((content) => ({ content, components: [], files: [] }));
  pages.push({ content: texts.at(-1) ?? BLANK, components: rows.slice(0, rowsOnPage), files });
  for (let n = rowsOnPage; n < rows.length; n += rowsOnPage) pages.push({ content: moreActions, components: rows.slice(n, n + rowsOnPage), files: [] });
  return pages;
}

/** A button that only says which page of how many this is, and whose id names what the page belongs to. */
const pageMark = (mark: string, n: number, of: number): Row =>
  row([
    new ButtonBuilder()
      .setCustomId(`page.${n}.${of}.${mark}`)
      .setLabel(`${n + 1}/${of}`)
      .setStyle(ButtonStyle.Secondary)
      .setDisabled(true),
  ]);

/** What the ids on a message say of a mark: its last or only page, the number of an earlier one, or null: nothing. */
export function markOf(ids: readonly string[], mark: string): "whole" | number | null {
  const named = ids.filter((id) => id.split(".").includes(mark));
  const [, n, of] = named.map((id) => /^page\.(\d+)\.(\d+)\./u.exec(id)).find((found) => found !== null) ?? [];
  if (n === undefined) return named.length > 0 ? "whole" : null;
  return Number(n) + 1 === Number(of) ? "whole" : Number(n);
}

/** The platform takes no message without text. */
const BLANK = "\u200b";

function paged(lines: readonly string[]): readonly string[] {
  const pages: string[] = [];
  let page = "";
  for (const line of lines.flatMap((each) => wrapped(each, PAGE))) {
    const next = page === "" ? line : `${page}\n${line}`;
    if (next.length <= PAGE) page = next;
    else {
      pages.push(page);
      page = line;
    }
  }
  return page.trim() === "" ? pages : [...pages, page];
}

type Row = ActionRowBuilder<MessageActionRowComponentBuilder>;

/** Buttons five to a row, a pick list in a row of its own; more buttons than three rows become lists to pick from. */
function rowsOf(actions: readonly Action[], moreActions: string): readonly Row[] {
  const rows: Row[] = [];
  let buttons: Action[] = [];
  const flush = (): void => {
    if (buttons.length > 3 * BUTTONS_IN_A_ROW)
      for (let n = 0; n < buttons.length; n += OPTIONS) rows.push(menu(buttons.slice(n, n + OPTIONS), `${MENU}.${rows.length}`, moreActions));
    else for (let n = 0; n < buttons.length; n += BUTTONS_IN_A_ROW) rows.push(row(buttons.slice(n, n + BUTTONS_IN_A_ROW).map(button)));
    buttons = [];
  };
  for (const action of actions) {
    if (action.kind !== "pick") {
      buttons.push(action);
      continue;
    }
    flush();
    for (const [n, options] of chunked(action.options).entries()) rows.push(row([pickList(action, n, options)]));
  }
  flush();
  return rows;
}

const chunked = <T>(all: readonly T[]): readonly (readonly T[])[] =>
  Array.from({ length: Math.ceil(all.length / OPTIONS) }, (_, n) => all.slice(n * OPTIONS, (n + 1) * OPTIONS));

const row = (components: readonly MessageActionRowComponentBuilder[]): Row =>
  new ActionRowBuilder<MessageActionRowComponentBuilder>().addComponents(...components);
const button = (action: Action): ButtonBuilder => new ButtonBuilder().setCustomId(action.id).setLabel(clip(action.label, 80)).setStyle(ButtonStyle.Secondary);

/** A list holds 25 choices; what is more goes on in further lists of the same action. */
function pickList(action: Extract<Action, { kind: "pick" }>, n: number, options: readonly Choice[]): StringSelectMenuBuilder {
  return new StringSelectMenuBuilder()
    .setCustomId(partId(action.id, n))
    .setPlaceholder(clip(action.label, 150))
    .setMinValues(action.min)
    .setMaxValues(Math.min(action.max, options.length))
    .addOptions(options.map(({ value, label }) => ({ value, label: clip(label, 100) })));
}

const menu = (actions: readonly Action[], id: string, placeholder: string): Row =>
  row([
    new StringSelectMenuBuilder()
      .setCustomId(id)
      .setPlaceholder(clip(placeholder, 150))
      .addOptions(actions.map((action) => ({ value: action.id, label: clip(action.label, 100) }))),
  ]);

/** A form as a modal; what is filled in comes back under the action's id. */
export function modalOf(action: string, form: Form): ModalBuilder {
  return new ModalBuilder().setCustomId(action).setTitle(clip(form.title, 45)).addLabelComponents(form.fields.slice(0, 5).map(labelOf));
}

/** As much as the platform takes in one text input. */
const LONGEST_ANSWER = 4000;

function labelOf(field: Field): LabelBuilder {
  const label = new LabelBuilder().setLabel(clip(field.label, 45));
  if (field.kind === "choice")
    return label.setStringSelectMenuComponent(
      new StringSelectMenuBuilder()
        .setCustomId(field.name)
        .setRequired(field.required)
        .setMinValues(field.required ? 1 : 0)
        .addOptions(field.options.slice(0, OPTIONS).map(({ value, label: text }) => ({ value, label: clip(text, 100), default: value === field.value }))),
    );
  const input = new TextInputBuilder()
    .setCustomId(field.name)
    .setRequired(field.required)
    .setStyle(field.kind === "paragraph" ? TextInputStyle.Paragraph : TextInputStyle.Short)
    .setMaxLength(LONGEST_ANSWER);
  if (field.hint !== null) input.setPlaceholder(clip(field.hint, 100));
  if (field.value !== null && field.value !== "") input.setValue(clip(field.value, LONGEST_ANSWER));
  return label.setTextInputComponent(input);
}

/** A label as long as the platform takes; what is shortened says so. */
const clip = (text: string, most: number): string => (text.length > most ? `${text.slice(0, whole(text, most - 1))}…` : text);
