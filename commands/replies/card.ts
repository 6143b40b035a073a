// A roadside card as lines and as a picture.

import type { Attached, Said } from "../../src/chat/reply.ts";
import { drawCard } from "../../src/picture/card-drawing.ts";
import type { CardShown } from "../../src/usecases/picture-card.ts";
import type { Words } from "../../src/words/en/english.ts";
import { drawn } from "./drawn.ts";
import { said } from "./said.ts";
import { specButton } from "./spec.ts";

/** Buttons that a phone shows without pushing the picture off its screen. */
const MOST_BUTTONS = 5;

export function sayCard(shown: CardShown, words: Words): Said {
  const missing = shown.rows.filter((row) => row.said.length === 0 && !row.differ).slice(0, MOST_BUTTONS);
  return said([...words.pictures.card(shown).lines], {
    caution: words.caution("tyres"),
    actions: missing.map(({ key }) => specButton(shown, key, null, words.pictures.enter(key), words)),
  });
}

export async function drawRoadsideCard(shown: CardShown, words: Words): Promise<readonly Attached[]> {
  const { drawing, alt } = words.pictures.card(shown);
  return [await drawn("roadside-card", drawCard(drawing), alt, words)];
}
