// What a bike asks for by itself, in English.

import type { LocalDate } from "../../core/calendar/dates.ts";
import { type DistanceUnit, TENTHS_OF_MM } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";

export const askWords = (p: Printer, today: LocalDate) => {
  const about = (dial: number, unit: DistanceUnit): string => p.figure(Math.round(dial / TENTHS_OF_MM[unit] / 10) * 10, 0);
  return {
    reading: (
      nickname: string,
      { on, unit, low, high }: { readonly on: LocalDate; readonly unit: DistanceUnit; readonly low: number; readonly high: number },
    ): string =>
      `${nickname}: last read on ${p.date(on, today)}; by now it may show anything from ${about(low, unit)} to ${about(high, unit)} ${unit}. What does it say? Just write it.`,
    charge: (
      nickname: string,
      { on, low, lithium }: { readonly on: LocalDate; readonly low: { readonly on: LocalDate; readonly typed: string } | null; readonly lithium: boolean },
    ): string =>
      `${nickname}: charge its battery, ${low === null ? `due since ${p.date(on, today)}` : `${low.typed} at rest ${low.on === today ? "today" : `on ${p.date(low.on, today)}`}`}, unless it hangs on a maintenance charger. ${lithium ? "Use a charger made for lithium" : "Charge it where air moves, away from sparks"}; then measure it rested and write it, and I count that.`,
    defect: (nickname: string, { on, words, graded }: { readonly on: LocalDate; readonly words: string; readonly graded: boolean }): string =>
      graded
        ? `${nickname}: do not ride. “${words}”, found on ${p.date(on, today)}, is still open.`
        : `${nickname}: “${words}”, found on ${p.date(on, today)}. How bad is it? You have not said; until you know, do not ride.`,
  };
};
