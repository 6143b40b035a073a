// How a new tyre is built, typed beside it or in its place, and what is mixed by it. That cross-ply, bias ply and diagonal are one: common practice.

import { expect, test } from "vitest";
import { constructionsIn } from "../../src/message/construction-said.ts";
import { constructionOf } from "../../src/usecases/tyres-built.ts";
import { GERMAN_DETAIL_WORDS } from "../../src/words/de/detail-words.ts";
import { ENGLISH_DETAIL_WORDS } from "../../src/words/en/detail-words.ts";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("a mix is named end by end where it is known, and the word stays general where it is not", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (line: string) => (await t.one({ ...dm, say: line })).text ?? "";
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  expect(await say("fitted a new rear tyre at 14,210")).toContain("a pair that the bike's maker names. Take it gently at first.");
  expect(await say("fitted a new rear, crossply")).toContain("Known is the rear bias ply; how the front is built stands on its sidewall.");
  expect(await say("new front tyre 120/70-17 bias")).toContain("Both ends are built alike: front 120/70-17 (bias ply) and rear bias ply. Still a pair");
  expect(await say("new rear tyre 180/55ZR17")).toContain(
    "The ends are built differently: front 120/70-17 (bias ply) and rear 180/55ZR17 (radial). Ride such a mix only where the bike's maker names that pair",
  );
  expect(await say("new radial rear tyre and front tyre crossply")).toContain("The ends are built differently: front bias ply and rear radial.");
  expect(await say("new tyres, radial")).not.toContain("Ride such a mix");
  await t.close();
});

test("an end that was never fitted here goes by the size entered for it", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/spec what:front tyre size value:110/80R19 59V" });
  expect((await t.one({ ...dm, say: "new rear tyre, cross-ply" })).text).toContain(
    "The ends are built differently: front 110/80R19 59V (radial by the size entered for it) and rear bias ply.",
  );
  await t.close();
});

test("each word that riders have for a construction is one of the three, in either language", () => {
  const said: Readonly<Record<string, string>> = {
    ...{ radial: "radial", Radialreifen: "radial", crossply: "bias ply", "cross-ply": "bias ply", "cross ply": "bias ply", "bias ply": "bias ply" },
    ...{
      "bias belted": "bias belted",
      Diagonalreifen: "bias ply",
      "4.00-18": "bias ply",
      "150/70R17 69V": "radial",
      "130/90B16": "bias belted",
      "made well": null as never,
    },
  };
  const both = [ENGLISH_DETAIL_WORDS, GERMAN_DETAIL_WORDS];
  expect(Object.fromEntries(Object.keys(said).map((typed) => [typed, constructionOf(typed, both)]))).toEqual(said);
  expect(constructionsIn("rear radial, front bias-belted", ENGLISH_DETAIL_WORDS.constructions).map(({ is }) => is)).toEqual(["radial", "bias belted"]);
});
