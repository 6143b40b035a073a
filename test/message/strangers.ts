// Messages written by someone who had seen neither the reader nor its corpus and had not run it: the issue, the README and the trade were all they had.
// On their first run 126 of the 150 came out as meant, and ten saved something else in silence (another's bike, a day of the month, the next sentence's bike,
// both ends' pads); those were mended since, so that what the test prints today is no longer blind.

export type Stranger = {
  /** As typed in a group's channel on Thursday 26 November 2026 (UTC) by a rider with one bike "Heron" (miles, a chain-drive twin with front discs, last odometer 14,210 mi) unless `bikes` is "two" (then also "Bramble", kilometres, belt-drive cruiser, last 41,950 km). */
  readonly say: string;
  readonly bikes?: "two";
  /** What must come of it: "logged" with all values as typed, "asked" (a question with buttons, nothing saved), or "silence". */
  readonly is: "logged" | "asked" | "silence";
  /** For "logged": one row a reading. */
  readonly readings?: readonly {
    readonly kind: string;
    readonly place: string | null;
    readonly value: number;
    readonly unit: string | null;
    readonly on: string;
    readonly bike: string;
  }[];
  /** For "logged": work done, in plain words of the plan item, and its date. */
  readonly work?: readonly { readonly what: string; readonly on: string; readonly bike: string }[];
  /** For "logged": how many defects are noted. */
  readonly defects?: number;
};

type Reading = NonNullable<Stranger["readings"]>[number];
type Work = NonNullable<Stranger["work"]>[number];

const TODAY = "2026-11-26";
const YESTERDAY = "2026-11-25";

/** A reading; of Heron and of today unless said otherwise. */
const r = (kind: string, place: string | null, value: number, unit: string | null, on: string = TODAY, bike: string = "Heron"): Reading => ({
  kind,
  place,
  value,
  unit,
  on,
  bike,
});

/** Work done; on Heron and today unless said otherwise. */
const w = (what: string, on: string = TODAY, bike: string = "Heron"): Work => ({ what, on, bike });

const LOGGED: readonly Stranger[] = [
  // Odometer
  { say: "heron 14263 mi, just back from the coast, hands frozen", is: "logged", readings: [r("odometer", null, 14263, "mi")] },
  { say: "14,305 on the clock this morning", is: "logged", readings: [r("odometer", null, 14305, null)] },
  { say: "yesterday evening 14,270 mi", is: "logged", readings: [r("odometer", null, 14270, "mi", YESTERDAY)] },
  { say: "last Sunday the dial said 14,233 mi, forgot to post", is: "logged", readings: [r("odometer", null, 14233, "mi", "2026-11-22")] },
  { say: "was at 14,215 mi on the 3rd, writing it down late", is: "logged", readings: [r("odometer", null, 14215, "mi", "2026-11-03")] },
  { say: "ok good ride all! for the log: about 14.3k mi on heron", is: "logged", readings: [r("odometer", null, 14300, "mi")] },
  { say: "Heron 14\u202f365,4 mi", is: "logged", readings: [r("odometer", null, 14365.4, "mi")] },
  { say: "heron now 14.322 mi", is: "logged", readings: [r("odometer", null, 14322, "mi")] },
  {
    say: "14'325 mi, front 2,2 bar rear 2,5 bar",
    is: "logged",
    readings: [r("odometer", null, 14325, "mi"), r("cold pressure", "front", 2.2, "bar"), r("cold pressure", "rear", 2.5, "bar")],
  },
  { say: "hour meter says 212.5 h", is: "logged", readings: [r("engine hours", null, 212.5, "h")] },

  // Tyres
  {
    say: "odo 14 288mi front 33 rear 36 psi cold",
    is: "logged",
    readings: [r("odometer", null, 14288, "mi"), r("cold pressure", "front", 33, "psi"), r("cold pressure", "rear", 36, "psi")],
  },
  {
    say: "frnt 32 rear 35 psi, cold, in teh garage",
    is: "logged",
    readings: [r("cold pressure", "front", 32, "psi"), r("cold pressure", "rear", 35, "psi")],
  },
  {
    say: "pumped the front up to 34 and the back to 38 psi before setting off",
    is: "logged",
    readings: [r("cold pressure", "front", 34, "psi"), r("cold pressure", "rear", 38, "psi")],
  },
  {
    say: "front 2.3 bar, rear 36 psi, two gauges dont ask",
    is: "logged",
    readings: [r("cold pressure", "front", 2.3, "bar"), r("cold pressure", "rear", 36, "psi")],
  },
  {
    say: "4 °C in the garage, tyres 33 front 36 rear",
    is: "logged",
    readings: [r("ambient temperature", null, 4, "°C"), r("cold pressure", "front", 33, null), r("cold pressure", "rear", 36, null)],
  },
  {
    say: "tread 4.2 mm front 3.1 back, better than I thought",
    is: "logged",
    readings: [r("tread", "front", 4.2, "mm"), r("tread", "rear", 3.1, "mm")],
  },
  { say: "rear tread 3/32 in, looks like its tyre money this month", is: "logged", readings: [r("tread", "rear", 3 / 32, "in")] },
  {
    say: "front tyre 5/32 tread, rear 4/32",
    is: "logged",
    readings: [r("tread", "front", 5 / 32, null), r("tread", "rear", 4 / 32, null)],
  },
  {
    say: "Heron\n14 410 mi\nF 33 psi\nR 37 psi\ntread F 4.0 R 3.2 mm",
    is: "logged",
    readings: [
      r("odometer", null, 14410, "mi"),
      r("cold pressure", "front", 33, "psi"),
      r("cold pressure", "rear", 37, "psi"),
      r("tread", "front", 4, "mm"),
      r("tread", "rear", 3.2, "mm"),
    ],
  },

  // Brakes
  {
    say: "front pads, left 3.5mm right 3mm",
    is: "logged",
    readings: [r("pad thickness", "front left", 3.5, "mm"), r("pad thickness", "front right", 3, "mm")],
  },
  { say: "rear pads down to 2 mm, new ones ordered", is: "logged", readings: [r("pad thickness", "rear", 2, "mm")] },
  {
    say: "discs miked at last. thickness front left 4.6mm, front right 4.5mm",
    is: "logged",
    readings: [r("disc thickness", "front left", 4.6, "mm"), r("disc thickness", "front right", 4.5, "mm")],
  },

  // Chain
  { say: "chain slack 35mm on the side stand, leaving it for now", is: "logged", readings: [r("chain slack", null, 35, "mm")] },
  { say: "slack in the chain is 1 1/4 in", is: "logged", readings: [r("chain slack", null, 1.25, "in")] },
  { say: 'chain slack 1½"', is: "logged", readings: [r("chain slack", null, 1.5, "in")] },
  { say: "chian slak 32 mm", is: "logged", readings: [r("chain slack", null, 32, "mm")] },
  { say: "20 links of chain measure 319 mm pulled tight", is: "logged", readings: [r("chain length", null, 319, "mm")] },

  // Battery, engine, suspension, fuel
  { say: "battery 12.7V this morning after a week in the shed", is: "logged", readings: [r("battery voltage", null, 12.7, "V")] },
  { say: "resting voltage 12,55 V", is: "logged", readings: [r("battery voltage", null, 12.55, "V")] },
  { say: "charging 14.2 V at 4,000 rpm, happy", is: "logged", readings: [r("charging voltage", null, 14.2, "V")] },
  {
    say: "borrowed the tester: compression cyl 1 168 psi, cyl 2 162 psi, engine warm",
    is: "logged",
    readings: [r("compression", "cylinder 1", 168, "psi"), r("compression", "cylinder 2", 162, "psi")],
  },
  {
    say: "rear sag: static 12 mm, rider 34 mm",
    is: "logged",
    readings: [r("static sag", "rear", 12, "mm"), r("rider sag", "rear", 34, "mm")],
  },
  {
    say: "clutch lever free play 12 mm, throttle play 3 mm",
    is: "logged",
    readings: [r("clutch free play", null, 12, "mm"), r("throttle free play", null, 3, "mm")],
  },
  { say: "coolant tested good to -28 °C", is: "logged", readings: [r("coolant strength", null, -28, "°C")] },
  {
    say: "filled up, tank full, 11.8 L at 14,341 mi, 19.20",
    is: "logged",
    readings: [r("fuel", null, 11.8, "L"), r("odometer", null, 14341, "mi")],
  },

  // Work
  {
    say: "did oil + filter today at 14,352, 3.1 L of 10W-40, 46.50",
    is: "logged",
    readings: [r("odometer", null, 14352, null)],
    work: [w("engine oil and filter")],
  },
  {
    say: "new rear tyre fitted on Saturday at 14,290 mi, 148 all in",
    is: "logged",
    readings: [r("odometer", null, 14290, "mi", "2026-11-21")],
    work: [w("new rear tyre", "2026-11-21")],
  },
  {
    say: "swapped the front pads yesterday evening, new ones measure 4.5mm",
    is: "logged",
    readings: [r("pad thickness", "front", 4.5, "mm", YESTERDAY)],
    work: [w("front brake pads", YESTERDAY)],
  },
  { say: "lubed the chain after that wet ride", is: "logged", work: [w("chain lubrication")] },
  {
    say: "14,377 mi, chain cleaned and lubed, slack 30 mm",
    is: "logged",
    readings: [r("odometer", null, 14377, "mi"), r("chain slack", null, 30, "mm")],
    work: [w("chain lubrication")],
  },
  { say: "changed the coolant on Sunday, 2 L of the blue stuff, 17.80", is: "logged", work: [w("coolant", "2026-11-22")] },
  {
    say: "new plugs in, gapped at 0.8 mm, 14,366 mi",
    is: "logged",
    readings: [r("plug gap", null, 0.8, "mm"), r("odometer", null, 14366, "mi")],
    work: [w("spark plugs")],
  },
  {
    say: "valves checked, intake 0.12 exhaust 0.24 mm, all in spec",
    is: "logged",
    readings: [r("valve clearance", "intake", 0.12, "mm"), r("valve clearance", "exhaust", 0.24, "mm")],
    work: [w("valve clearance")],
  },
  // A top-up restarts no clock: it must not stand as an oil change.
  { say: "topped up the engine oil, 200 ml", is: "logged", work: [w("engine oil topped up")] },
  {
    say: "on the 20th I changed the brake fluid, 14,298 mi then",
    is: "logged",
    readings: [r("odometer", null, 14298, "mi", "2026-11-20")],
    work: [w("brake fluid", "2026-11-20")],
  },
  {
    say: "2026-11-19 air filter replaced, 14,291 mi, 22 quid",
    is: "logged",
    readings: [r("odometer", null, 14291, "mi", "2026-11-19")],
    work: [w("new air filter", "2026-11-19")],
  },
  {
    say: "fork oil changed on 14 November by the shop, 95.00, odo 14,260",
    is: "logged",
    readings: [r("odometer", null, 14260, null, "2026-11-14")],
    work: [w("fork oil", "2026-11-14")],
  },
  { say: "new battery fitted Monday, 64.90", is: "logged", work: [w("new battery", "2026-11-23")] },
  { say: "lubed cables and levers yesterday, feels like new", is: "logged", work: [w("cable and lever lubrication", YESTERDAY)] },

  // Defects
  { say: "tail light's dead again on Heron", is: "logged", defects: 1 },
  { say: "front brake went mushy on the way home", is: "logged", defects: 1 },
  { say: "small oil leak under the engine, puddle this morning", is: "logged", defects: 1 },
  {
    say: "14,402 mi. left indicator not working. chain slack 33 mm.",
    is: "logged",
    readings: [r("odometer", null, 14402, "mi"), r("chain slack", null, 33, "mm")],
    defects: 1,
  },

  // Two bikes
  {
    say: "heron 14,390 mi bramble 42 310 km",
    bikes: "two",
    is: "logged",
    readings: [r("odometer", null, 14390, "mi"), r("odometer", null, 42310, "km", TODAY, "Bramble")],
  },
  {
    say: "14,333 mi on Heron, 33 psi front 37 rear. Bramble battery 12.6 V",
    bikes: "two",
    is: "logged",
    readings: [
      r("odometer", null, 14333, "mi"),
      r("cold pressure", "front", 33, "psi"),
      r("cold pressure", "rear", 37, "psi"),
      r("battery voltage", null, 12.6, "V", TODAY, "Bramble"),
    ],
  },
  { say: "Brambel 42,070 km", bikes: "two", is: "logged", readings: [r("odometer", null, 42070, "km", TODAY, "Bramble")] },
  {
    say: "Bramble got new rear pads yesterday, 5 mm. Heron got new plugs today at 14,344 mi",
    bikes: "two",
    is: "logged",
    readings: [r("pad thickness", "rear", 5, "mm", YESTERDAY, "Bramble"), r("odometer", null, 14344, "mi")],
    work: [w("rear brake pads", YESTERDAY, "Bramble"), w("spark plugs")],
  },
  {
    say: "rear light out on bramble, 42,133 km",
    bikes: "two",
    is: "logged",
    readings: [r("odometer", null, 42133, "km", TODAY, "Bramble")],
    defects: 1,
  },

  // German
  { say: "Heron 14.320 mi, alles gut", is: "logged", readings: [r("odometer", null, 14320, "mi")] },
  { say: "heut früh 14 361 mi aufm tacho", is: "logged", readings: [r("odometer", null, 14361, "mi")] },
  {
    say: "Luftdruck vorn 2,2 bar, hinten 2,5 bar",
    is: "logged",
    readings: [r("cold pressure", "front", 2.2, "bar"), r("cold pressure", "rear", 2.5, "bar")],
  },
  {
    say: "gestern Öl und Filter gemacht bei 14.345 mi, 3,1 l 10W-40, 52 €",
    is: "logged",
    readings: [r("odometer", null, 14345, "mi", YESTERDAY)],
    work: [w("engine oil and filter", YESTERDAY)],
  },
  { say: "so, Kette gereinigt und geschmiert, jetzt Kaffee", is: "logged", work: [w("chain lubrication")] },
  { say: "Kettendurchhang 30 mm auf dem Seitenständer", is: "logged", readings: [r("chain slack", null, 30, "mm")] },
  {
    say: "Profil hinten 3,4 mm vorne 4,1 mm",
    is: "logged",
    readings: [r("tread", "rear", 3.4, "mm"), r("tread", "front", 4.1, "mm")],
  },
  {
    say: "Bremsbeläge vorne links 3 mm, vorne rechts 3,5 mm",
    is: "logged",
    readings: [r("pad thickness", "front left", 3, "mm"), r("pad thickness", "front right", 3.5, "mm")],
  },
  { say: "Batterie 12,6 V, Ruhespannung", is: "logged", readings: [r("battery voltage", null, 12.6, "V")] },
  { say: "Ladespannung 14,3 V bei 5000/min", is: "logged", readings: [r("charging voltage", null, 14.3, "V")] },
  {
    say: "vollgetankt, 12,1 l bei 14.377 mi, 21,40 €",
    is: "logged",
    readings: [r("fuel", null, 12.1, "L"), r("odometer", null, 14377, "mi")],
  },
  {
    say: "am Sonntag neue Zündkerzen rein, bei 14.301",
    is: "logged",
    readings: [r("odometer", null, 14301, null, "2026-11-22")],
    work: [w("spark plugs", "2026-11-22")],
  },
  { say: "Mist, Bremslicht hinten geht nicht mehr", is: "logged", defects: 1 },
  { say: "vorgestern Kühlflüssigkeit gewechselt", is: "logged", work: [w("coolant", "2026-11-24")] },
  {
    say: "Ventile eingestellt: Einlass 0,12 Auslass 0,22 mm",
    is: "logged",
    readings: [r("valve clearance", "intake", 0.12, "mm"), r("valve clearance", "exhaust", 0.22, "mm")],
    work: [w("valve clearance")],
  },
  {
    say: "Neuer Vorderreifen am 21.11. bei 14.290 mi, 139 €",
    is: "logged",
    readings: [r("odometer", null, 14290, "mi", "2026-11-21")],
    work: [w("new front tyre", "2026-11-21")],
  },
  {
    say: "Bremsflüssigkeit gewechselt am 3. November, 14.215 mi",
    is: "logged",
    readings: [r("odometer", null, 14215, "mi", "2026-11-03")],
    work: [w("brake fluid", "2026-11-03")],
  },
  {
    say: "Bramble 42.118 km und Heron 14.333 mi",
    bikes: "two",
    is: "logged",
    readings: [r("odometer", null, 42118, "km", TODAY, "Bramble"), r("odometer", null, 14333, "mi")],
  },
];

const ASKED: readonly Stranger[] = [
  // Behind the last odometer, far beyond it, or a digit lost
  { say: "13,120 mi on Heron", is: "asked" },
  { say: "148,200 mi on heron", is: "asked" },
  { say: "odo 1432 mi, gloves on sorry", is: "asked" },
  { say: "Heron 14,400 km", is: "asked" },
  { say: "14,250 or 14,260 mi, could not read it in the rain", is: "asked" },
  // Front or rear?
  { say: "tyre's at 28 psi, must of lost some just standing", is: "asked" },
  { say: "tread's 3 mm", is: "asked" },
  { say: "brake pads 4 mm, loads left", is: "asked" },
  { say: "new tyre fitted today at 14,300 mi", is: "asked" },
  { say: "finaly changed the pads today, 29.90", is: "asked" },
  { say: "front 33 psi, rear 36 psi, tread 4 mm", is: "asked" },
  { say: "valve clearance 0.15 mm", is: "asked" },
  // A slip
  { say: "front 3.3 psi rear 36 psi brrr", is: "asked" },
  { say: "battery 126 V, cant read a thing w/o my glasses", is: "asked" },
  { say: "chain slack 300 mm", is: "asked" },
  { say: "rear tread 32 mm", is: "asked" },
  { say: "front tyre pressure 230", is: "asked" },
  // Which bike?
  { say: "morning all, tyres done, 33 psi front 37 psi rear", bikes: "two", is: "asked" },
  { say: "oil and filter changed today, hands like a coal miner", bikes: "two", is: "asked" },
  { say: "battery 12.4 V", bikes: "two", is: "asked" },
  { say: "rear brake light is out", bikes: "two", is: "asked" },
  { say: "filled up, 10.2 L, 18.40", bikes: "two", is: "asked" },
  // German
  { say: "Reifen 2,4 bar", is: "asked" },
  { say: "Heron 41.320 mi", is: "asked" },
  { say: "gestern Abend Öl gewechselt, 3,2 l rein", bikes: "two", is: "asked" },
];

const SILENCE: readonly Stranger[] = [
  // Meetings, roads, places
  { say: "see you at 7:30 by the pump station", is: "silence" },
  { say: "anyone riding the A82 on Sunday?", is: "silence" },
  { say: "the B3081 is closed both ways after 14 miles", is: "silence" },
  { say: "meet at junction 14, quarter past nine", is: "silence" },
  { say: "turn left after 3.2 miles, then 11 miles of gravel", is: "silence" },
  { say: "speed camera at mile 212 on the coast road, 50 limit", is: "silence" },
  { say: "Room 14 at the hostel, door code 4482", is: "silence" },
  { say: "the ferry is 48.00 per bike, leaves 06:45", is: "silence" },
  { say: "did 240 miles today, backside is numb", is: "silence" },
  { say: "wind 45 mph gusting 60 tomorrow, stay home", is: "silence" },
  // Prices, numbers, parts
  { say: "my number changed: 07700 900142", is: "silence" },
  { say: "part no. PK-33917-07 is the front pad set, 31.50", is: "silence" },
  { say: "parcel number 0034 1182 4471, should land Friday", is: "silence" },
  { say: "rear tyre prices: 128, 141, 155. ouch", is: "silence" },
  { say: "the shop wants 180 for a valve check", is: "silence" },
  { say: "insurance up to 312 this year, robbery", is: "silence" },
  { say: "selling a top box, 38 litres, 60 ono", is: "silence" },
  { say: "chain kit comes with 118 links, 525 pitch", is: "silence" },
  { say: "got 3 spare bottles of DOT 4 if anyone needs", is: "silence" },
  { say: "who borrowed my 12 mm spanner?", is: "silence" },
  // Other bikes
  { say: "Jonas hit 30,000 mi on his today, cake on me", is: "silence" },
  { say: "Tess's front tyre was at 18 psi, no wonder it wobbled", is: "silence" },
  { say: "Mara has 4 mm left on her rear pads", is: "silence" },
  { say: "my old bike made 62,000 miles on its first clutch", is: "silence" },
  { say: "got overtaken by a bloke on a 125 doing 80 lol", is: "silence" },
  // Plans, and what was not done
  { say: "going to do the oil on Saturday if it stays dry", is: "silence" },
  { say: "need to change my front pads before the trip in May", is: "silence" },
  { say: "inspection booked for 12 December at 10:15", is: "silence" },
  { say: "haven't done the oil yet", is: "silence" },
  { say: "not checked the tyres yet, too cold out", is: "silence" },
  { say: "thinking about 2 teeth more on the rear sprocket", is: "silence" },
  { say: "if the rear drops under 30 psi I'd look for a nail", is: "silence" },
  { say: "manual says 36 psi front, 42 rear two-up", is: "silence" },
  // Questions
  { say: "whats the torque on the rear axle, 98 or 100 Nm?", is: "silence" },
  { say: "does a 120/70-17 fit a 3.5 inch rim?", is: "silence" },
  { say: "10W-40 or 20W-50 for a wet clutch in winter?", is: "silence" },
  { say: "how many mm of tread before you'd bin it, 2?", is: "silence" },
  { say: "anyone know what 3725 on the sidewall means?", is: "silence" },
  { say: "should I change the coolant at 24,000 mi or go by the calendar?", is: "silence" },
  // Quotes, code, links, chat
  { say: "> 14,100 mi on Heron\nthat was ages ago mate", is: "silence" },
  { say: "`14,500 mi on Heron` is how you write it", is: "silence" },
  { say: "https://example.org/t/14820/33-psi-front have a read", is: "silence" },
  { say: "heron looks great after the wash, 10 out of 10", is: "silence" },
  // German
  { say: "Treffen um 7 an der Tanke, wer kommt mit?", is: "silence" },
  { say: "Morgen mach ich Öl, brauch noch 3,5 l 10W-40", is: "silence" },
  { say: "Auf der B500 war heute die Hölle los", is: "silence" },
  { say: "Hat wer einen 120/70-17 übrig? zahle 40 €", is: "silence" },
  { say: "Jonas hat jetzt 23.400 km drauf", is: "silence" },
  { say: "Wieviel Druck fahrt ihr vorne, 2,3 oder 2,5?", is: "silence" },
];

/** All of them; each is said alone, to a bot that knows nothing but the bikes. */
export const STRANGERS: readonly Stranger[] = [...LOGGED, ...ASKED, ...SILENCE];
