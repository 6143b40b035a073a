// A tyre's pressure that was read warm, in English: it is not judged, and what is too low even so is told at once.

import type { TooLow } from "../../core/tyre/too-low.ts";
import type { Printer } from "../printer.ts";
import { valueAsTyped } from "./reading-detail.ts";

/** @param about what was read, on which bike: how the sentence begins */
export function readWarm(p: Printer, about: string, tooLow: readonly TooLow[]): string {
  if (tooLow.length === 0)
    return `${about} was read warm, and a pressure is judged cold: read it again before a ride, or say that it was cold. Never let air out of a warm tyre.`;
  const fine = (kPa: number, { unit, typed }: TooLow): string => (unit === "level" ? "" : valueAsTyped(p, kPa, unit, typed, "cold pressure"));
  const [only] = tooLow;
  const which = (low: TooLow): string =>
    low === only && tooLow.length === 1 && about.includes(`“${low.typed}”`) ? "it" : `the ${low.place === null ? "" : `${low.place} `}“${low.typed}”`;
  const told = tooLow.map((low) => `${which(low)} is ${fine(low.under, low)} under the ${fine(low.wanted, low)} wanted`);
  const air = tooLow.some(({ far }) => far)
    ? "Put air in before you ride on, and look for what let it out; never let air out of a warm tyre."
    : "Put air in before you ride on; never let air out of a warm tyre.";
  return `${about} was read warm. Even so ${p.list(told)}, and cold it is lower still: certainly too low. ${air} To have it logged read it again cold, or say that it was cold.`;
}
