// Which plan items a text names, by the trade's words for them and by the member's own.

import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import type { Known, KnownBike, Vocabulary } from "../core/reading/vocabulary.ts";
import { foldWord, scan, type Token } from "./scan.ts";

/** A phrase of the text and the items it can mean, at tokens `from` to `to`. `together`: it means all of them (front and rear pads). */
export type ItemPhrase = { readonly items: readonly ItemKey[]; readonly together: boolean; readonly from: number; readonly to: number };

const LONGEST_PHRASE = 6;

/** Item phrases in order, the longest at each place. */
export function itemPhrases(tokens: readonly Token[], known: Known, bike: KnownBike): readonly ItemPhrase[] {
  const index = phrasesOf(known, bike);
  const found: ItemPhrase[] = [];
  for (let at = 0; at < tokens.length; at++) {
    for (let length = Math.min(LONGEST_PHRASE, tokens.length - at); length > 0; length--) {
      const items = index.get(phraseAt(tokens, at, length, known.vocabulary));
      if (items === undefined) continue;
      found.push({ items, together: sameAction(items, bike), from: at, to: at + length - 1 });
      at += length - 1;
      break;
    }
  }
  return found;
}

/** What a text names: the items it surely means, for each phrase that is not sure the items it can mean, and the words that name nothing. */
export type ItemsNamed = { readonly sure: readonly ItemKey[]; readonly unsure: readonly (readonly ItemKey[])[]; readonly rest: readonly string[] };

/** Items named anywhere in a text, with or without a verb. */
export function readItems(text: string, known: Known, bike: KnownBike): ItemsNamed {
  const tokens = scan(text, known.vocabulary.units, known.numbers);
  const verbs = tokens
    .flatMap((token) => (token.is === "word" ? [known.vocabulary.workDone[foldWord(token.text)]] : []))
    .filter((actions) => actions !== undefined);
  const actions = verbs.length === 1 ? (verbs[0] ?? []) : [];
  const phrases = itemPhrases(tokens, known, bike).map((phrase) => ({ ...phrase, items: chosen(phrase.items, bike, actions) }));
  const sure = phrases.filter((phrase) => phrase.items.length === 1 || sameAction(phrase.items, bike)).flatMap((phrase) => phrase.items);
  const { around, workDone, joins, articles } = known.vocabulary;
  const rest = tokens.flatMap((token, at) => {
    if (token.is !== "word" || phrases.some((phrase) => at >= phrase.from && at <= phrase.to)) return [];
    const word = foldWord(token.text);
    return around.includes(word) || joins.includes(word) || articles.includes(word) || workDone[word] !== undefined ? [] : [token.text];
  });
  return {
    rest,
    sure: [...new Set(sure)],
    unsure: phrases.filter((phrase) => phrase.items.length > 1 && !sameAction(phrase.items, bike)).map((phrase) => phrase.items),
  };
}

/**
 * Among items that share a phrase, those whose action the verb can mean; none when it fits none, for then something else was meant.
 * "Did the oil" is the change, not the look at its level: of one replacement and mere looks, a verb that says nothing means the replacement.
 * New pads need no look at the old ones: a replacement without an item of its own does the look.
 */
export function chosen(items: readonly ItemKey[], bike: KnownBike, actions: readonly WorkAction[]): readonly ItemKey[] {
  const action = (key: ItemKey): WorkAction => bike.items.find((item) => item.key === key)?.action ?? "inspect";
  if (actions.length > 0) {
    const meant = items.filter((key) => actions.includes(action(key)));
    return meant.length > 0 || actions[0] !== "replace" ? meant : items.filter((key) => LOOKS.includes(action(key)));
  }
  const renewed = items.filter((key) => action(key) === "replace");
  const looks = items.every((key) => action(key) === "replace" || action(key) === "inspect" || action(key) === "top up");
  return renewed.length === 1 && looks ? renewed : items;
}

const LOOKS: readonly WorkAction[] = ["inspect", "measure", "test"];

/** What a verb that fits none of a phrase's items may have meant: those items, and the ones near them that it does fit. */
export function nearby(items: readonly ItemKey[], bike: KnownBike, actions: readonly WorkAction[]): readonly ItemKey[] {
  const systems = new Set(bike.items.filter((item) => items.includes(item.key)).map((item) => item.system));
  const fitting = bike.items.filter((item) => systems.has(item.system) && actions.includes(item.action)).map((item) => item.key);
  return [...new Set([...fitting, ...items])];
}

export const sameAction = (items: readonly ItemKey[], bike: KnownBike): boolean =>
  items.length > 0 && new Set(items.map((key) => bike.items.find((item) => item.key === key)?.action)).size === 1;

const indexes = new WeakMap<KnownBike, ReadonlyMap<string, readonly ItemKey[]>>();

function phrasesOf(known: Known, bike: KnownBike): ReadonlyMap<string, readonly ItemKey[]> {
  const ready = indexes.get(bike);
  if (ready !== undefined) return ready;
  const index = new Map<string, ItemKey[]>();
  for (const item of bike.items) {
    const phrases = item.called === null ? (known.vocabulary.items[item.key] ?? []) : [item.called, ...(known.vocabulary.items[item.key] ?? [])];
    for (const phrase of phrases) {
      const key = foldPhrase(phrase, known.vocabulary);
      const list = index.get(key);
      if (list === undefined) index.set(key, [item.key]);
      else if (!list.includes(item.key)) list.push(item.key);
    }
  }
  indexes.set(bike, index);
  return index;
}

/** How phrases are compared: whatever joins two things is one word. */
const foldPhrase = (phrase: string, { and }: Vocabulary): string =>
  (foldWord(phrase).match(/[\p{L}\p{M}\p{N}]+|[&+]/gu) ?? []).map((word) => (and.includes(word) ? "&" : word)).join(" ");

function phraseAt(tokens: readonly Token[], at: number, length: number, vocabulary: Vocabulary): string {
  let text = "";
  for (let n = at; n < at + length; n++) {
    const token = tokens[n];
    if (token === undefined || (token.is === "break" && !vocabulary.and.includes(token.mark))) return "";
    text += `${token.is === "break" ? token.mark : token.text} `;
  }
  return foldPhrase(text, vocabulary);
}
