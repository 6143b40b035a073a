// Tyres: loads and speeds by their marks, and how pressure, leaks and age are judged.

import type { AgeRule } from "../core/tyre/age.ts";
import type { LeakRule } from "../core/tyre/leak.ts";
import type { MarkTables } from "../core/tyre/marking.ts";
import type { PressureRule } from "../core/tyre/pressure.ts";

/** Kilograms by load index. Source: UN Regulation No. 75, Annex 4, which is the table of the ETRTO: 42 to 85. */
export const LOAD_KILOGRAMS: MarkTables["loads"] = Object.fromEntries(
  // biome-ignore format: a table of figures
  [
    150, 155, 160, 165, 170, 175, 180, 185, 190, 195, 200, 206, 212, 218, 224, 230, 236, 243, 250, 257, 265, 272,
    280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475, 487, 500, 515,
  ].map((kilograms, n) => [42 + n, kilograms]),
);

/** Kilometres an hour by speed symbol. Source: UN Regulation No. 75, 2.33. B and G from memory. */
export const SPEED_KMH = {
  ...{ B: 50, F: 80, G: 90, J: 100, K: 110, L: 120, M: 130, N: 140, P: 150, Q: 160, R: 170, S: 180, T: 190, U: 200, H: 210, V: 240, W: 270, Y: 300 },
} as const satisfies MarkTables["speeds"];

/** 7 kPa is 1 psi, which common gauges are off by. The shares are those at which a car must warn its driver: a quarter below the placard (49 CFR 571.138 S4.2(a)). */
export const PRESSURE_RULE: PressureRule = {
  slack: 7,
  low: 0.25,
  high: 0.25,
  source: "common practice; the quarter from 49 CFR 571.138 S4.2(a), which is for cars",
};

/** kPa below which a tyre is flat whatever the bike (8 psi): on so little no road motorcycle is ridden. Trials bikes go lower off the road, by their own figure. Common practice. */
export const FLAT_BELOW = { kPa: 55, source: "common practice" } as const;

/** Common practice: a sound tyre loses some 7 to 14 kPa (1 to 2 psi) in a month through its rubber. From a warm afternoon to a cold morning, or from one season into the next, it grows colder by some 25 K where bikes are ridden. To less than 100 kPa (15 psi) nobody lets one down, on sand neither. */
export const LEAK_RULE: LeakRule = { usual: 14, noise: 3.5, pumped: 10, fewestDays: 14, fall: 25, back: 60, flat: 100, source: "common practice" };

/** Indoors a tyre is filled over what is wanted by so great a share at the most: where garage and road are further apart, it is set where the ride starts. Common practice. */
export const MOST_OVER = 0.2;

/** Age in months from the week of the date code: tyre makers ask for a yearly look from five years on, and for a change after ten at the latest, whatever the tread; the bike's maker may ask for less, which is then in its plan. It comes up half a year before. */
export const TYRE_AGE: AgeRule = { look: 60, replace: 120, notice: 6, source: "common practice" };
