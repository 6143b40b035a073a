// Engine oil grades by what the standard asks of each. Source of every row: SAE J300:2015.

/** Winter grades: coldest cranking and pumping, degrees Celsius, at the standard's viscosities. */
export const WINTER_GRADES = {
  "0W": { cranks: -35, pumps: -40 },
  "5W": { cranks: -30, pumps: -35 },
  "10W": { cranks: -25, pumps: -30 },
  "15W": { cranks: -20, pumps: -25 },
  "20W": { cranks: -15, pumps: -20 },
  "25W": { cranks: -10, pumps: -15 },
} as const;

/** Grades when hot: kinematic viscosity at 100 °C in mm²/s, from (inclusive) to below. */
export const HOT_GRADES = {
  // The thinnest two are for cars; asked for, they are told.
  "8": { from: 4, below: 6.1 },
  "12": { from: 5, below: 7.1 },
  "16": { from: 6.1, below: 8.2 },
  "20": { from: 6.9, below: 9.3 },
  "30": { from: 9.3, below: 12.5 },
  "40": { from: 12.5, below: 16.3 },
  "50": { from: 16.3, below: 21.9 },
  "60": { from: 21.9, below: 26.1 },
} as const;

export const OIL_SOURCE = "SAE J300:2015";
