// A roadside card as lines and as a picture.

import type { Attached, Said } from "../../src/chat/reply.ts";
import { drawCard } from "../../src/picture/card-drawing.ts";
import type { CardShown } from "../../src/usecases/picture-card.ts";
import type { Words } from "../../src/words/en/english.ts";
import { drawn } from "./drawn.ts";
import { said } from "./said.ts";

export const sayCard = (shown: CardShown, words: Words): Said => said([...words.pictures.card(shown).lines], { caution: words.caution("tyres") });

export async function drawRoadsideCard(shown: CardShown, words: Words): Promise<readonly Attached[]> {
  const { drawing, alt } = words.pictures.card(shown);
  return [await drawn("roadside-card", drawCard(drawing), alt, words)];
}
