// Which plan items a text names, by the trade's words for them and by the member's own.

import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import type { Known, KnownBike, Vocabulary } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { endOfTyre } from "./construction-said.ts";
import { foldWord, scan, type Token } from "./scan.ts";

/** A phrase of the text and the items it can mean, at tokens `from` to `to`. `together`: it means all of them (front and rear pads). */
export type ItemPhrase = { readonly items: readonly ItemKey[]; readonly together: boolean; readonly from: number; readonly to: number };

/** Item phrases in order, the longest at each place. */
export function itemPhrases(tokens: readonly Token[], known: Known, bike: KnownBike, from = 0, to = tokens.length - 1): readonly ItemPhrase[] {
  const index = phrasesOf(known, bike);
  const found: ItemPhrase[] = [];
  for (let at = from; at <= to; at++) {
    // Most words begin no phrase, and most phrases end soon: the longest is looked for word by word.
    let node: Node | undefined = index;
    let best: { readonly items: readonly ItemKey[]; readonly to: number } | null = null;
    for (let end = at; end <= to && node !== undefined; end++) {
      for (const word of wordsOf(tokens[end], known.vocabulary)) node = node?.next.get(word);
      if (node?.items !== undefined) best = { items: node.items, to: end };
    }
    if (best === null) {
      const end = endOfTyre(tokens, at, known);
      const tyre = end === null ? undefined : bike.items.find(({ key }) => key === `${end}-tyre.replace`);
      if (tyre !== undefined) found.push({ items: [tyre.key], together: true, from: at, to: at });
      continue;
    }
    found.push({ items: best.items, together: sameAction(best.items, bike), from: at, to: best.to });
    at = best.to;
  }
  return found;
}

/** What a text names: the items it surely means, for each phrase that is not sure the items it can mean, and the words that name nothing. */
export type ItemsNamed = { readonly sure: readonly ItemKey[]; readonly unsure: readonly (readonly ItemKey[])[]; readonly rest: readonly string[] };

/** Items named anywhere in a text, with or without a verb. */
export function readItems(text: string, known: Known, bike: KnownBike): ItemsNamed {
  const tokens = scan(text, known.vocabulary.units, known.numbers);
  const verbs = tokens
    .flatMap((token) => (token.is === "word" ? [under(known.vocabulary.workDone, token.folded)] : []))
    .filter((actions) => actions !== undefined);
  const actions = verbs.length === 1 ? (verbs[0] ?? []) : [];
  const phrases = itemPhrases(tokens, known, bike).map((phrase) => ({ ...phrase, items: chosen(phrase.items, bike, actions) }));
  // "Tyre" is one of them, and which one is to be said.
  const isOne = ({ from, to }: ItemPhrase): boolean => from === to && among(known.vocabulary.singular, wordsOf(tokens[from], known.vocabulary)[0] ?? "");
  const isSure = (phrase: ItemPhrase): boolean => phrase.items.length === 1 || (sameAction(phrase.items, bike) && !isOne(phrase));
  const sure = phrases.filter(isSure).flatMap((phrase) => phrase.items);
  const { around, workDone, joins, articles } = known.vocabulary;
  const rest = tokens.flatMap((token, at) => {
    if (token.is !== "word" || phrases.some((phrase) => at >= phrase.from && at <= phrase.to)) return [];
    const word = token.folded;
    return among(around, word) || among(joins, word) || among(articles, word) || under(workDone, word) !== undefined ? [] : [token.text];
  });
  return {
    rest,
    sure: [...new Set(sure)],
    unsure: phrases.filter((phrase) => phrase.items.length > 1 && !isSure(phrase)).map((phrase) => phrase.items),
  };
}

/**
 * Among items that share a phrase, those whose action the verb can mean; none when it fits none, for then something else was meant.
 * "Did the oil" is the change, not the look at its level: of one replacement and mere looks, a verb that says nothing means the replacement.
 * New pads need no look at the old ones: a replacement without an item of its own does the look.
 */
export function chosen(items: readonly ItemKey[], bike: KnownBike, actions: readonly WorkAction[]): readonly ItemKey[] {
  const action = (key: ItemKey): WorkAction => actionOf(bike, key) ?? "inspect";
  if (actions.length > 0) {
    const meant = items.filter((key) => actions.includes(action(key)));
    if (meant.length > 0) return meant;
    if (actions[0] === "adjust") return items.filter((key) => SET_AT_LOOK.includes(key));
    return actions[0] === "replace" ? items.filter((key) => LOOKS.includes(action(key))) : [];
  }
  const renewed = items.filter((key) => action(key) === "replace");
  const looks = items.every((key) => action(key) === "replace" || action(key) === "inspect" || action(key) === "top up");
  return renewed.length === 1 && looks ? renewed : items;
}

/** Are all of them lines that are only looked at or measured? */
export const looksOnly = (items: readonly ItemKey[], bike: KnownBike): boolean => items.every((key) => LOOKS.includes(actionOf(bike, key) ?? "inspect"));

/** Looks at which a thing is set too, where the plan has no line of its own for that. */
const SET_AT_LOOK: readonly ItemKey[] = ["drive-belt.inspect"] as readonly string[] as readonly ItemKey[];

const LOOKS: readonly WorkAction[] = ["inspect", "measure", "test"];

/** What a verb that fits none of a phrase's items may have meant: those items, and the ones near them that it does fit. */
export function nearby(items: readonly ItemKey[], bike: KnownBike, actions: readonly WorkAction[]): readonly ItemKey[] {
  const systems = new Set(bike.items.filter((item) => items.includes(item.key)).map((item) => item.system));
  const fitting = bike.items.filter((item) => systems.has(item.system) && actions.includes(item.action)).map((item) => item.key);
  return [...new Set([...fitting, ...items])];
}

export const sameAction = (items: readonly ItemKey[], bike: KnownBike): boolean =>
  items.length > 0 && items.every((key) => actionOf(bike, key) === actionOf(bike, items[0] ?? key));

const actions = new WeakMap<KnownBike["items"], ReadonlyMap<ItemKey, WorkAction>>();
/** The action of an item of a bike's plan. */
function actionOf({ items }: KnownBike, key: ItemKey): WorkAction | undefined {
  let ready = actions.get(items);
  if (ready === undefined) {
    ready = new Map(items.map((item) => [item.key, item.action]));
    actions.set(items, ready);
  }
  return ready.get(key);
}

/** Phrases word by word: what may follow, and the items that a phrase ending here means. */
type Node = { readonly next: Map<string, Node>; items?: ItemKey[] };
const indexes = new WeakMap<Vocabulary, Map<string, Node>>();
/** Bikes of one plan share theirs, and a message finds what the one before it made. */
const MOST_INDEXES = 500;

function phrasesOf(known: Known, bike: KnownBike): Node {
  const made = indexes.get(known.vocabulary) ?? new Map<string, Node>();
  indexes.set(known.vocabulary, made);
  const plan = keyOf(bike.items);
  const ready = made.get(plan);
  if (ready !== undefined) return ready;
  if (made.size >= MOST_INDEXES) made.clear();
  const index: Node = { next: new Map() };
  for (const item of bike.items) {
    const phrases = item.called === null ? (known.vocabulary.items[item.key] ?? []) : [item.called, ...(known.vocabulary.items[item.key] ?? [])];
    for (const phrase of phrases) {
      let node = index;
      for (const word of foldPhrase(phrase, known.vocabulary)) {
        const next: Node = node.next.get(word) ?? { next: new Map() };
        node.next.set(word, next);
        node = next;
      }
      if (node === index) continue;
      node.items ??= [];
      if (!node.items.includes(item.key)) node.items.push(item.key);
    }
  }
  made.set(plan, index);
  return index;
}

const keys = new WeakMap<KnownBike["items"], string>();
/** What the index of a plan depends on. */
function keyOf(items: KnownBike["items"]): string {
  const ready = keys.get(items);
  if (ready !== undefined) return ready;
  const key = items.map((item) => `${item.key}\u0000${item.called ?? ""}`).join("\n");
  keys.set(items, key);
  return key;
}

/** How phrases are compared: whatever joins two things is one word. */
const foldPhrase = (phrase: string, { and }: Vocabulary): readonly string[] =>
  (foldWord(phrase).match(/[\p{L}\p{M}\p{N}]+|[&+]/gu) ?? []).map((word) => (among(and, word) ? "&" : word));

/** The words of a token as phrases have them; a mark that joins nothing ends every phrase. */
function wordsOf(token: Token | undefined, vocabulary: Vocabulary): readonly string[] {
  if (token?.is === "word" && PLAIN.test(token.folded)) return [among(vocabulary.and, token.folded) ? "&" : token.folded];
  if (token === undefined || (token.is === "break" && !among(vocabulary.and, token.mark))) return [""];
  return foldPhrase(token.is === "break" ? token.mark : token.text, vocabulary);
}
const PLAIN = /^[a-z]+$/u;
