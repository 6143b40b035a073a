// The one message that leads a new server's admin through set-up.

import type { Form, Said } from "../../src/chat/reply.ts";
import { TREAD_PLACES } from "../../src/usecases/settings.ts";
import type { Words } from "../../src/words/en/english.ts";
import { formButton, pickOne, said } from "./said.ts";

export function saySetUp(group: string, hearsChannels: boolean, words: Words): Said {
  const { setUp } = words.settings;
  const pick = (what: string, label: string, choices: readonly string[]) =>
    pickOne(
      "set-up",
      `${group}.${what}`,
      label,
      choices.map((choice) => ({ value: choice, label: choice })),
    );
  return said(setUp.lines(hearsChannels), {
    title: setUp.title,
    actions: [
      pick("place", setUp.place, TREAD_PLACES),
      pick("distance", setUp.distance, ["mi", "km"]),
      pick("pressure", setUp.pressure, ["psi", "bar", "kPa"]),
      pick("season", setUp.season, ["north", "south"]),
      formButton("set-up-zone", group, setUp.zone, zoneForm(words)),
    ],
  });
}

export function zoneForm(words: Words): Form {
  const { setUp } = words.settings;
  return {
    title: setUp.zone,
    fields: [{ name: "zone", label: setUp.zoneField, kind: "line", required: true, value: null, hint: setUp.zoneHint, options: [] }],
  };
}
