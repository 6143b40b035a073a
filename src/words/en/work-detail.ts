// What went into a job, in English: "with 3.2 L 20W-50, made in week 37 of 2025, for 48.60, by the shop".

import { symbolOf } from "../../core/quantity/units.ts";
import type { WorkDetail } from "../../core/work-detail.ts";
import type { Printer } from "../printer.ts";

/** "The shop" of one that was not named; a name as it is. */
export const byWhom = (by: string): string => `${/^(shop|dealer|dealership|garage|workshop|mechanic)$/u.test(by) ? "the " : ""}${by}`;

export const workDetailWords = (p: Printer) => {
  // Money has both its decimals or none: 48.60, 380.
  const cost = (minor: number, currency: string | null): string =>
    `${p.figure(minor / 100, 2)}${minor % 10 === 0 && minor % 100 !== 0 ? "0" : ""}${currency === null ? "" : ` ${currency}`}`;
  return {
    cost,
    /** What was used, and which parts went in; empty when nothing was said. */
    used: ({ quantities, parts }: Pick<WorkDetail, "quantities" | "parts">): readonly string[] => [
      ...quantities.map(({ value, unit, of }) => `${p.figure(value, 2)} ${symbolOf(unit)}${of === null ? "" : ` ${of}`}`),
      ...parts.map(({ words, made }) => (made === null ? words : `${words} made in week ${Number(made.slice(0, 2))} of 20${made.slice(2)}`)),
    ],
    /** With a comma before it, to follow a sentence's main part; empty when nothing was said. */
    tail(detail: WorkDetail): string {
      const with_ = this.used(detail);
      return [
        ...(with_.length === 0 ? [] : [`with ${p.list(with_)}`]),
        ...(detail.cost === null ? [] : [`for ${cost(detail.cost.minor, detail.cost.currency)}`]),
        ...(detail.by === null ? [] : [`by ${byWhom(detail.by)}`]),
      ]
        .map((text) => `, ${text}`)
        .join("");
    },
    /** A brake reservoir that needed topping up. */
    lookAtPads: (): string => "Fluid that has sunk is mostly worn pads, else a leak: look at both. A top-up restarts no clock.",
    /** A clutch's reservoir that needed topping up: as its plates wear, the fluid rises. */
    lookForLeak: (): string =>
      "A clutch's fluid rises as the plates wear: if it has sunk, look for a leak at the lever, hose and slave cylinder. A top-up restarts no clock.",
  };
};
