// A roadside card as lines and as a picture.

import type { Attached, Said } from "../../src/chat/reply.ts";
import { drawCard } from "../../src/picture/card-drawing.ts";
import { WIDE } from "../../src/picture/look.ts";
import { render } from "../../src/picture/render.ts";
import type { CardShown } from "../../src/usecases/picture-card.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

export const sayCard = (shown: CardShown, words: Words): Said => said([...words.pictures.card(shown).lines], { caution: words.caution("tyres") });

export async function drawRoadsideCard(shown: CardShown, { pictures }: Words): Promise<readonly Attached[]> {
  const { drawing, alt } = pictures.card(shown);
  return [{ name: "roadside-card.png", type: "image/png", bytes: await render(drawCard(drawing), WIDE), alt }];
}
