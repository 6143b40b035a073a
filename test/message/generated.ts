// Readings printed in random styles, as riders write them, with what each must be read as.

import fc from "fast-check";

/** A message and the readings in it: kind/place value unit. */
export type Generated = { readonly say: string; readonly means: readonly string[] };

const grouped = (n: number, mark: string): string => String(n).replace(/\B(?=(\d{3})+$)/gu, mark);
const figure = fc.constantFrom<(n: number) => string>(
  (n) => String(n),
  (n) => grouped(n, ","),
  (n) => grouped(n, " "),
  (n) => grouped(n, "'"),
  (n) => grouped(n, "\u202f"),
  (n) => grouped(n, "\u00a0"),
);
const miles = fc.constantFrom(" mi", " miles", "mi", " Miles", "");
const point = fc.constantFrom<(n: number) => string>(
  (n) => String(n),
  (n) => String(n).replace(".", ","),
);
const tenths = (from: number, to: number): fc.Arbitrary<number> => fc.integer({ min: from * 10, max: to * 10 }).map((n) => n / 10);

const odometer = fc
  .tuple(fc.integer({ min: 14_211, max: 17_000 }), figure, miles, fc.constantFrom("", "odo ", "now at ", "Heron ", "Heron is at ", "clock "))
  .map(([n, write, unit, before]): Generated => ({ say: `${before}${write(n)}${unit}`, means: [`odometer ${n} mi`] }));

const FRONT = ["front", "fr", "F", "Front"];
const REAR = ["rear", "back", "R", "Rear"];
const ends = fc.constantFrom<(f: string, r: string, a: string, b: string) => string>(
  (f, r, a, b) => `${f} ${a} ${r} ${b}`,
  (f, r, a, b) => `${f} ${a}, ${r} ${b}`,
  (f, r, a, b) => `${a} ${f}, ${b} ${r}`,
  (f, r, a, b) => `${f} ${a}\n${r} ${b}`,
  (f, r, a, b) => `${a} ${f} and ${b} ${r}`,
  (f, r, a, b) => `${f}: ${a} ${r}: ${b}`,
);
const names = fc.tuple(fc.constantFrom(...FRONT), fc.constantFrom(...REAR));
const pair = (kind: string, value: fc.Arbitrary<number>, units: readonly string[], unit: string, before: readonly string[]): fc.Arbitrary<Generated> =>
  fc.tuple(value, value, names, ends, fc.constantFrom(...units), point, fc.constantFrom(...before)).map(([front, rear, [f, r], order, typed, write, word]) => ({
    say: `${word}${order(f, r, `${write(front)}${typed}`, `${write(rear)}${typed}`)}`,
    means: [`${kind}/front ${front} ${unit}`, `${kind}/rear ${rear} ${unit}`],
  }));

const pressures = fc.oneof(
  pair("cold pressure", fc.integer({ min: 18, max: 48 }), [" psi", "psi", " PSI"], "psi", ["", "pressures ", "tyres "]),
  pair("cold pressure", tenths(1, 4), [" bar", "bar"], "bar", ["", "pressures ", "tyres "]),
  pair("cold pressure", fc.integer({ min: 120, max: 330 }), [" kPa", "kPa"], "kPa", ["", "pressures "]),
);
const treads = pair("tread", tenths(1, 9), [" mm", "mm"], "mm", ["tread ", "treads: ", "tread depth "]);
const pads = pair("pad thickness", tenths(1, 8), [" mm", "mm"], "mm", ["pads ", "brake pads ", "pads: "]);

const discs = pair("disc thickness", tenths(3, 6), [" mm", "mm"], "mm", ["discs ", "disc thickness ", "discs: ", "rotors "]);
const sags = fc.oneof(
  pair("static sag", fc.integer({ min: 5, max: 30 }), [" mm", "mm"], "mm", ["static sag ", "free sag: "]),
  pair("rider sag", fc.integer({ min: 25, max: 60 }), [" mm", "mm"], "mm", ["rider sag ", "laden sag: "]),
);
/** Tread as a gauge of thirty-seconds of an inch shows it. */
const thirtySeconds = fc.tuple(fc.integer({ min: 1, max: 11 }), fc.integer({ min: 1, max: 11 }), names, fc.constantFrom(" in", '"', "")).map(
  ([front, rear, [f, r], unit]): Generated => ({
    say: `tread ${f} ${front}/32${unit}, ${r} ${rear}/32${unit}`,
    means: [`tread/front ${front / 32} in`, `tread/rear ${rear / 32} in`],
  }),
);
const hundredths = (from: number, to: number): fc.Arbitrary<number> => fc.integer({ min: from, max: to }).map((n) => n / 100);
const valves = fc.tuple(hundredths(5, 20), hundredths(15, 35), fc.constantFrom(" mm", "mm", ""), fc.constantFrom("valves ", "valve clearances: ", "")).map(
  ([intake, exhaust, unit, before]): Generated => ({
    say: `${before}intake ${intake}${unit}, exhaust ${exhaust}${unit}`,
    means: [`valve clearance/intake ${intake} mm`, `valve clearance/exhaust ${exhaust} mm`],
  }),
);
const compressions = fc.tuple(fc.integer({ min: 110, max: 200 }), fc.integer({ min: 110, max: 200 }), fc.constantFrom("cyl", "cylinder", "Cyl")).map(
  ([one, two, cylinder]): Generated => ({
    say: `compression ${cylinder} 1 ${one} psi, ${cylinder} 2 ${two} psi`,
    means: [`compression/cylinder 1 ${one} psi`, `compression/cylinder 2 ${two} psi`],
  }),
);
const fills = fc
  .tuple(
    tenths(4, 18),
    fc.constantFrom(" L", "L", " litres", " l"),
    fc.constantFrom("filled up ", "fuel ", "brimmed it, "),
    fc.constantFrom("", ", 21.40 €", " for £18.20"),
  )
  .map(([litres, unit, before, price]): Generated => ({ say: `${before}${litres}${unit}${price}`, means: [`fuel ${litres} L`] }));

const single = (kind: string, value: fc.Arbitrary<number>, unit: string, frames: readonly ((v: string) => string)[]): fc.Arbitrary<Generated> =>
  fc.tuple(value, point, fc.constantFrom("", " "), fc.constantFrom(...frames)).map(([n, write, gap, frame]) => ({
    say: frame(`${write(n)}${gap}${unit}`),
    means: [`${kind} ${n} ${unit}`],
  }));
const singles = fc.oneof(
  single("chain slack", fc.integer({ min: 15, max: 60 }), "mm", [(v) => `chain slack ${v}`, (v) => `slack ${v}`, (v) => `${v} chain slack`]),
  // "Battery 12 V" is what it is sold as.
  single(
    "battery voltage",
    tenths(11, 13).filter((n) => n !== 12),
    "V",
    [(v) => `battery ${v}`, (v) => `batt: ${v}`, (v) => `battery at ${v}`],
  ),
  single("charging voltage", tenths(13, 15), "V", [(v) => `charging ${v}`, (v) => `charging at ${v}`]),
  single("belt deflection", fc.integer({ min: 5, max: 20 }), "mm", [(v) => `belt deflection ${v}`]),
  single("clutch free play", fc.integer({ min: 2, max: 30 }), "mm", [(v) => `clutch free play ${v}`, (v) => `${v} clutch play`]),
  single("ambient temperature", fc.integer({ min: 1, max: 35 }), "°C", [(v) => `ambient ${v}`, (v) => `air temp ${v}`]),
  single("plug gap", hundredths(60, 110), "mm", [(v) => `plug gap ${v}`, (v) => `plugs gapped ${v}`]),
  single("brake pedal height", fc.integer({ min: 3, max: 25 }), "mm", [(v) => `brake pedal ${v} below the footrest`]).map(
    ({ say, means }): Generated => ({ say, means: means.map((each) => each.replace("height ", "height -")) }),
  ),
  single("throttle free play", fc.integer({ min: 1, max: 6 }), "mm", [(v) => `throttle free play ${v}`, (v) => `throttle play ${v}`]),
  single("coolant strength", fc.integer({ min: -45, max: -15 }), "°C", [(v) => `coolant good to ${v}`, (v) => `antifreeze ${v}`]),
  single("engine hours", fc.integer({ min: 10, max: 900 }), "h", [(v) => `engine hours ${v}`]),
);

/** The same in German, with its comma. */
const comma = (n: number): string => String(n).replace(".", ",");
const german = fc.oneof(
  fc
    .tuple(
      fc.oneof(
        fc.tuple(fc.constant("cold pressure"), fc.constantFrom("Luftdruck ", "Reifendruck ", ""), tenths(1.5, 3.5), tenths(1.5, 3.5), fc.constant("bar")),
        fc.tuple(fc.constant("tread"), fc.constantFrom("Profil ", "Profiltiefe "), tenths(1, 9), tenths(1, 9), fc.constant("mm")),
        fc.tuple(fc.constant("pad thickness"), fc.constantFrom("Bremsbeläge ", "Beläge "), tenths(1, 8), tenths(1, 8), fc.constant("mm")),
      ),
      fc.constantFrom("vorn", "vorne"),
      fc.constantFrom(", ", " und ", " "),
    )
    .map(
      ([[kind, word, front, rear, unit], ahead, between]): Generated => ({
        say: `${word}${ahead} ${comma(front)} ${unit}${between}hinten ${comma(rear)} ${unit}`,
        means: [`${kind}/front ${front} ${unit}`, `${kind}/rear ${rear} ${unit}`],
      }),
    ),
  fc
    .tuple(fc.integer({ min: 15, max: 60 }), fc.constantFrom("Kettendurchhang", "Durchhang der Kette"))
    .map(([slack, word]): Generated => ({ say: `${word} ${slack} mm`, means: [`chain slack ${slack} mm`] })),
  tenths(12.1, 13).map((volts): Generated => ({ say: `Batterie ${comma(volts)} V`, means: [`battery voltage ${volts} V`] })),
);
/** What says when, and changes nothing else. */
const whens = fc.constantFrom("", " yesterday", ", measured on 3 November", " on 2026-11-20", " last Sunday");

const one = fc.oneof(odometer, pressures, treads, pads, singles, discs, sags, thirtySeconds, valves, compressions, fills);
/** Chat around readings that says nothing of them. */
const chat = fc.constantFrom("", "hi all. ", "Cold out there today.\n", "thanks all!\n", "what a day. ");

/** One or two readings of different kinds, in either order, between chat. */
export const generated: fc.Arbitrary<Generated> = fc.oneof(
  fc.tuple(chat, one, whens).map(([before, { say, means }, when]) => ({ say: `${before}${say}${when}`, means })),
  german,
  fc.tuple(odometer, fc.oneof(pressures, treads, singles), fc.constantFrom("\n", ". ", "; "), fc.boolean()).map(([a, b, between, turned]) => {
    const [first, second] = turned ? [b, a] : [a, b];
    return { say: `${first.say}${between}${second.say}`, means: [...first.means, ...second.means] };
  }),
);
