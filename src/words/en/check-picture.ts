// What stands in the picture of a finished check, and what it shows in words.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";
import { altOf } from "./text.ts";

type Mark = "looked" | "needs work" | "left";
type Pictured = {
  readonly title: string;
  readonly on: LocalDate;
  readonly says: string;
  /** What stops the ride, to be named at once. */
  readonly stops: readonly string[];
  readonly sections: readonly { readonly name: string; readonly marks: readonly Mark[] }[];
  readonly told: readonly string[];
  readonly note: string;
};

const MEANING = { looked: "looked at", "needs work": "needs work", left: "not looked at yet" } as const satisfies Record<Mark, string>;

export const checkPictureWords = (p: Printer) => ({
  check: ({ title, on, says: first, stops, sections, told, note }: Pictured) => {
    const whole = `${title}, ${p.date(on)}`;
    const says = stops.length === 0 ? first : `${first} ${p.list(stops)}.`;
    const rows = sections.map(({ name, marks }) => ({ name, marks, beside: `${marks.filter((each) => each !== "left").length} of ${marks.length}` }));
    return {
      drawing: { title: whole, says, rows, meaning: MEANING, told, notes: [note] },
      alt: altOf([`${whole}.`, says, ...rows.map(({ name, beside }) => `${name}: ${beside} looked at.`), ...told].join(" ")),
    };
  },
});
