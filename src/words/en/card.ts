// A roadside card in English.

import type { Equipment } from "../../core/equipment.ts";
import type { SpecUse } from "../../core/spec/spec.ts";
import { englishSpecName } from "./spec-names.ts";
import { altOf, lowered } from "./text.ts";

type Card = {
  readonly nickname: string;
  readonly equipment: Equipment;
  readonly rows: readonly {
    readonly key: string;
    readonly said: readonly { readonly use: SpecUse | null; readonly typed: string }[];
    readonly differ: boolean;
  }[];
  readonly recovery: string | null;
  readonly saved: boolean;
};

export const cardWords = () => ({
  card: (shown: Card) => {
    const { nickname, equipment, recovery } = shown;
    const title = `Roadside card: ${nickname}`;
    const rows = [
      { name: "Recovery", value: recovery },
      { name: "Tyres and wheels", value: `${equipment.tyres}, ${equipment.wheels} wheels` },
      ...shown.rows.map(({ key, said, differ }) => ({
        // "Front axle" alone would not say what is to be written there.
        name: key.endsWith(" torque") ? `${englishSpecName(key)}, torque` : englishSpecName(key),
        value:
          said.length > 0
            ? said.map(({ use, typed }) => (use === null ? typed : `${use} ${typed}`)).join("; ")
            : differ
              ? "members differ: look in the manual"
              : key === "battery" && equipment.battery !== "none"
                ? `${equipment.battery}; size not entered`
                : null,
      })),
    ];
    const [known, blank] = [rows.filter(({ value }) => value !== null), rows.filter(({ value }) => value === null)];
    const lines = [
      ...(shown.saved ? [recovery === null ? "Your recovery number is forgotten." : "Your recovery number is kept, for your cards only."] : []),
      `${title}. Keep the picture on your phone for where there is no signal.`,
      ...known.map(({ name, value }) => `- ${name}: ${value}`),
      ...(blank.length === 0 ? [] : [`Blank, to be written in, or entered with /spec what:… value:… : ${blank.map(({ name }) => lowered(name)).join("; ")}.`]),
      ...(recovery === null ? ["Your own number: /bike card recovery: and the number."] : []),
    ];
    return {
      drawing: { title, rows, notes: ["The maker's plate and manual have the last word. Set pressures cold."] },
      lines,
      alt: altOf(
        `${title}. ${known.map(({ name, value }) => `${name}: ${value}.`).join(" ")}${blank.length === 0 ? "" : ` Blank lines for ${blank.map(({ name }) => lowered(name)).join("; ")}.`}`,
      ),
    };
  },
});
