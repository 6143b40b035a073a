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

/** What "Front axle" alone would not say: what is to be written there. */
const lineName = (key: string): string => (key.endsWith(" torque") ? `${englishSpecName(key)}, torque` : englishSpecName(key));

export const cardWords = () => ({
  card: (shown: Card) => {
    const { nickname, equipment, recovery } = shown;
    const title = `Roadside card: ${nickname}`;
    const entered = ({ said, key, differ }: Card["rows"][number]): string | null =>
      said.length > 0
        ? said.map(({ use, typed }) => (use === null ? typed : `${use} ${typed}`)).join("; ")
        : differ
          ? "members differ: look in the manual"
          : key === "battery" && equipment.battery !== "none"
            ? `${equipment.battery}; size not entered`
            : null;
    const rows = [
      { name: "Recovery", value: recovery },
      { name: "Tyres and wheels", value: `${equipment.tyres}, ${equipment.wheels} wheels` },
      ...shown.rows.map((row) => ({ name: lineName(row.key), value: entered(row) })),
    ];
    const known = rows.filter(({ value }) => value !== null);
    const missing = missingOn(shown);
    const recoveryHow = "/bike card recovery:0800 555 0100, with the number of your own recovery";
    const lines = [
      ...(shown.saved ? [recovery === null ? "Your recovery number is forgotten." : "Your recovery number is kept, for your cards only."] : []),
      `${title}. Keep the picture on your phone for where there is no signal.`,
      ...known.map(({ name, value }) => `- ${name}: ${value}`),
      ...(missing.length === 0 && recovery !== null
        ? []
        : [
            "Not entered yet; write it on the blank line, or enter it and ask for the card anew:",
            ...(recovery === null ? [`- Recovery: ${recoveryHow}`] : []),
            ...missing.map(({ key, differ }) => `- ${lineName(key)}: /spec bike:${nickname} what:${key}${differ ? " shows what members say" : " value:…"}`),
          ]),
    ];
    const blank = missing.filter(({ key, differ }) => !differ && key !== "battery");
    return {
      drawing: {
        ...{ title, rows },
        notes: [
          "The maker's plate and manual have the last word. Set pressures cold.",
          ...(blank.length === 0 ? [] : [`A blank line is filled with /spec bike:${nickname} what:${lowered(blank[0]?.key ?? "")} value:… and so on.`]),
        ],
      },
      lines,
      alt: altOf(
        [
          `${title}.`,
          ...known.map(({ name, value }) => `${name}: ${value}.`),
          ...(recovery === null ? ["Recovery is blank: /bike card recovery: and the number."] : []),
          ...(blank.length === 0
            ? []
            : [`Blank, each to be entered with /spec bike:${nickname} value:… and what: ${blank.map(({ key }) => key).join(", what: ")}.`]),
        ].join(" "),
      ),
    };
  },
  /** A button that opens the form for a line of the card. */
  enter: (key: string): string => `Enter ${lowered(lineName(key))}`,
});

/** Lines of a card that somebody could fill. */
const missingOn = ({ rows }: Card): Card["rows"] => rows.filter(({ said }) => said.length === 0);
