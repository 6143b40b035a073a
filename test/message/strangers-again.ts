// A second 150 messages by someone who had seen neither the reader, its corpora nor the first set: the issue and the trade were all they had.
// On their first run 128 came out as meant (three of them under our names of kinds and units), 3 were saved in silence under another day
// (a look with its day, "the 12th or the 13th", 03/04), 4 were asked without need, 9 were missed and 6 taken in part. The days were mended since:
// what the test prints today is no longer blind.

import type { Stranger } from "./strangers.ts";

type Reading = NonNullable<Stranger["readings"]>[number];
type Work = NonNullable<Stranger["work"]>[number];

const TODAY = "2026-11-26";

const r = (kind: string, place: string | null, value: number, unit: string | null, on: string = TODAY, bike: string = "Heron"): Reading => ({
  kind,
  place,
  value,
  unit,
  on,
  bike,
});

const odo = (value: number, unit: string | null = null, on: string = TODAY, bike: string = "Heron"): Reading => r("odometer", null, value, unit, on, bike);

const psi = (place: string, value: number, on: string = TODAY, bike: string = "Heron"): Reading => r("cold pressure", place, value, "psi", on, bike);

const bar = (place: string, value: number, on: string = TODAY, bike: string = "Heron"): Reading => r("cold pressure", place, value, "bar", on, bike);

const w = (what: string, on: string = TODAY, bike: string = "Heron"): Work => ({ what, on, bike });

export const STRANGERS_AGAIN: readonly Stranger[] = [
  // --- logged: odometer ---
  { say: "14,262 on the clock this morning", is: "logged", readings: [odo(14262)] },
  { say: "heron 14.3k", is: "logged", readings: [odo(14300)] },
  { say: "Odo: 14285 mi", is: "logged", readings: [odo(14285, "mi")] },
  { say: "clock's on 14 318 now", is: "logged", readings: [odo(14318)] },
  { say: "mileage 14,331 as of last night", is: "logged", readings: [odo(14331, null, "2026-11-25")] },
  { say: "parked heron up yesterday on 14,244 miles", is: "logged", readings: [odo(14244, "mi", "2026-11-25")] },
  { say: "Heron's at 14,290mi, finally a dry day", is: "logged", readings: [odo(14290, "mi")] },
  { say: "odometer reads 14271.6", is: "logged", readings: [odo(14271.6)] },
  { say: "odo 14,255 last Sunday, 14,297 today", is: "logged", readings: [odo(14255, null, "2026-11-22"), odo(14297)] },
  { say: "hern 14,266 mi", is: "logged", readings: [odo(14266, "mi")] },
  { say: "odomoter 14277 miles", is: "logged", readings: [odo(14277, "mi")] },
  { say: "put heron down as 14,308 for today pls", is: "logged", readings: [odo(14308)] },
  {
    say: "Home. 14,389 on the odo, 131 miles door to door and I can't feel my hands",
    is: "logged",
    readings: [odo(14389)],
  },
  { say: "odo was 14,226 on Tuesday", is: "logged", readings: [odo(14226, null, "2026-11-24")] },
  {
    say: "Heron 14,233, Bramble 42,004",
    bikes: "two",
    is: "logged",
    readings: [odo(14233), odo(42004, null, TODAY, "Bramble")],
  },
  { say: "bramble is on 42 017 km", bikes: "two", is: "logged", readings: [odo(42017, "km", TODAY, "Bramble")] },
  {
    say: "Both bikes: heron 14250mi / bramble 41988km",
    bikes: "two",
    is: "logged",
    readings: [odo(14250, "mi"), odo(41988, "km", TODAY, "Bramble")],
  },
  { say: "just rolled over 14,300 miles outside the chip shop", is: "logged", readings: [odo(14300, "mi")] },

  // --- logged: pressures ---
  {
    say: "tyres 33 front 36 rear cold",
    is: "logged",
    readings: [r("cold pressure", "front", 33, null), r("cold pressure", "rear", 36, null)],
  },
  { say: "psi this morning before I set off: f 32 r 35", is: "logged", readings: [psi("front", 32), psi("rear", 35)] },
  { say: "front 2.3 bar, rear 2.5 bar, stone cold", is: "logged", readings: [bar("front", 2.3), bar("rear", 2.5)] },
  { say: "rear tyre was down to 28psi cold", is: "logged", readings: [psi("rear", 28)] },
  {
    say: "front tyre 225 kPa rear tyre 250 kPa",
    is: "logged",
    readings: [r("cold pressure", "front", 225, "kPa"), r("cold pressure", "rear", 250, "kPa")],
  },
  {
    say: "tyres: 36 in the back, 33 in the front, both cold",
    is: "logged",
    readings: [r("cold pressure", "rear", 36, null), r("cold pressure", "front", 33, null)],
  },
  {
    say: "Bramble front 2.4 bar rear 2.8 bar",
    bikes: "two",
    is: "logged",
    readings: [bar("front", 2.4, TODAY, "Bramble"), bar("rear", 2.8, TODAY, "Bramble")],
  },
  {
    say: "heron 33f 36r psi, bramble 35f 40r psi",
    bikes: "two",
    is: "logged",
    readings: [psi("front", 33), psi("rear", 36), psi("front", 35, TODAY, "Bramble"), psi("rear", 40, TODAY, "Bramble")],
  },
  {
    say: "checked the tyres yesterday, 31 psi front 34 psi rear",
    is: "logged",
    readings: [psi("front", 31, "2026-11-25"), psi("rear", 34, "2026-11-25")],
  },
  { say: "front tyre lost 2 psi since last week, reads 31 psi cold now", is: "logged", readings: [psi("front", 31)] },
  { say: "frnt tyre 33psi raer 37psi", is: "logged", readings: [psi("front", 33), psi("rear", 37)] },
  {
    say: "2 °C in the garage this morning, front 31 psi rear 34 psi",
    is: "logged",
    readings: [r("ambient temperature", null, 2, "°C"), psi("front", 31), psi("rear", 34)],
  },

  // --- logged: tread, pads, discs ---
  {
    say: "tread 4.5 mm front, 3 mm rear",
    is: "logged",
    readings: [r("tread", "front", 4.5, "mm"), r("tread", "rear", 3, "mm")],
  },
  { say: "rear tread 3/32, time to start saving", is: "logged", readings: [r("tread", "rear", 3 / 32, null)] },
  {
    say: "measured the rear tread last Sunday: 3.2 mm",
    is: "logged",
    readings: [r("tread", "rear", 3.2, "mm", "2026-11-22")],
  },
  {
    say: "2mm tread left on the rear tyre, front still has 4mm",
    is: "logged",
    readings: [r("tread", "rear", 2, "mm"), r("tread", "front", 4, "mm")],
  },
  {
    say: "bramble rear tyre tread 2.5mm",
    bikes: "two",
    is: "logged",
    readings: [r("tread", "rear", 2.5, "mm", TODAY, "Bramble")],
  },
  { say: "rear pads 3.5mm", is: "logged", readings: [r("pad thickness", "rear", 3.5, "mm")] },
  {
    say: "pads: front left 4 mm, front right 3.5 mm, rear 5 mm",
    is: "logged",
    readings: [r("pad thickness", "front left", 4, "mm"), r("pad thickness", "front right", 3.5, "mm"), r("pad thickness", "rear", 5, "mm")],
  },
  {
    say: "left front pads 3 mm, right front pads 3.2 mm",
    is: "logged",
    readings: [r("pad thickness", "front left", 3, "mm"), r("pad thickness", "front right", 3.2, "mm")],
  },
  {
    say: "front left disc 4.6mm front right disc 4.5mm",
    is: "logged",
    readings: [r("disc thickness", "front left", 4.6, "mm"), r("disc thickness", "front right", 4.5, "mm")],
  },
  { say: "rear disc measured 4.8 mm with the micrometer", is: "logged", readings: [r("disc thickness", "rear", 4.8, "mm")] },

  // --- logged: chain, battery, sag, the rest ---
  { say: "chain slack at 32mm, spot on", is: "logged", readings: [r("chain slack", null, 32, "mm")] },
  {
    say: "chian slack 33 mm odo 14,281",
    is: "logged",
    readings: [r("chain slack", null, 33, "mm"), odo(14281)],
  },
  { say: "chain length 318 mm over 20 links", is: "logged", readings: [r("chain length", null, 318, "mm")] },
  { say: "battery 12.6V this morning", is: "logged", readings: [r("battery voltage", null, 12.6, "V")] },
  {
    say: "battery 12.5 V at rest, charging 14.2 V at 4k rpm",
    is: "logged",
    readings: [r("battery voltage", null, 12.5, "V"), r("charging voltage", null, 14.2, "V")],
  },
  { say: "batt 12.4v yesterday evening", is: "logged", readings: [r("battery voltage", null, 12.4, "V", "2026-11-25")] },
  {
    say: "bramble battery 12.7 V, heron battery 12.5 V",
    bikes: "two",
    is: "logged",
    readings: [r("battery voltage", null, 12.7, "V", TODAY, "Bramble"), r("battery voltage", null, 12.5, "V")],
  },
  {
    say: "static sag front 28 mm rear 10 mm",
    is: "logged",
    readings: [r("static sag", "front", 28, "mm"), r("static sag", "rear", 10, "mm")],
  },
  {
    say: "rider sag 38 mm front, 35 mm rear",
    is: "logged",
    readings: [r("rider sag", "front", 38, "mm"), r("rider sag", "rear", 35, "mm")],
  },
  { say: "clutch free play 12 mm at the lever end", is: "logged", readings: [r("clutch free play", null, 12, "mm")] },
  { say: "throttle free play 3mm", is: "logged", readings: [r("throttle free play", null, 3, "mm")] },
  { say: "coolant tested good to -34 °C", is: "logged", readings: [r("coolant strength", null, -34, "°C")] },

  // --- logged: work ---
  {
    say: "did the oil and filter at 14,260",
    is: "logged",
    readings: [odo(14260)],
    work: [w("engine oil"), w("oil filter")],
  },
  {
    say: "oil and filter done today, 3.2 L of 10W-40, 48.60 all in",
    is: "logged",
    work: [w("engine oil"), w("oil filter")],
  },
  { say: "lubed the chain", is: "logged", work: [w("chain lube")] },
  { say: "chain cleaned and lubed after that salty ride", is: "logged", work: [w("chain clean"), w("chain lube")] },
  {
    say: "new rear tyre fitted at 14,240 mi, 165 with balancing",
    is: "logged",
    readings: [odo(14240, "mi")],
    work: [w("rear tyre")],
  },
  {
    say: "swapped the rear pads, 6 mm on the new ones",
    is: "logged",
    readings: [r("pad thickness", "rear", 6, "mm")],
    work: [w("rear pads")],
  },
  { say: "bled the front brake yesterday", is: "logged", work: [w("front brake bleed", "2026-11-25")] },
  {
    say: "brake fluid changed front and rear on Saturday",
    is: "logged",
    work: [w("front brake fluid", "2026-11-21"), w("rear brake fluid", "2026-11-21")],
  },
  { say: "changed the coolant on 14 November", is: "logged", work: [w("coolant", "2026-11-14")] },
  { say: "cleaned the air filter last Sunday", is: "logged", work: [w("air filter clean", "2026-11-22")] },
  { say: "new chain and sprockets on, 189.90", is: "logged", work: [w("chain"), w("sprockets")] },
  { say: "battery replaced 2026-11-20", is: "logged", work: [w("battery", "2026-11-20")] },
  {
    say: "shop did the valve check on 12 Nov, all in spec",
    is: "logged",
    work: [w("valve clearances check", "2026-11-12")],
  },
  {
    say: "oil and filter on Bramble at 42,000 km today",
    bikes: "two",
    is: "logged",
    readings: [odo(42000, "km", TODAY, "Bramble")],
    work: [w("engine oil", TODAY, "Bramble"), w("oil filter", TODAY, "Bramble")],
  },
  {
    say: "heron got a new clutch cable, bramble got new rear pads",
    bikes: "two",
    is: "logged",
    work: [w("clutch cable"), w("rear pads", TODAY, "Bramble")],
  },
  {
    say: "did teh oil and fliter yesterday arvo",
    is: "logged",
    work: [w("engine oil", "2026-11-25"), w("oil filter", "2026-11-25")],
  },
  {
    say: "Oil change, filter, plugs all done. 14,305 mi. 112.40 in parts.",
    is: "logged",
    readings: [odo(14305, "mi")],
    work: [w("engine oil"), w("oil filter"), w("spark plugs")],
  },
  {
    say: "chain lubed n adjusted slack now 30mm 14,268 on the odo",
    is: "logged",
    readings: [r("chain slack", null, 30, "mm"), odo(14268)],
    work: [w("chain lube"), w("chain adjust")],
  },
  {
    say: "new spark plugs in today, plug gap 0.8 mm",
    is: "logged",
    readings: [r("plug gap", null, 0.8, "mm")],
    work: [w("spark plugs")],
  },

  // --- logged: defects ---
  { say: "rear brake light's out", is: "logged", defects: 1 },
  { say: "front brake feels spongy since the rain", is: "logged", defects: 1 },
  { say: "fork seal's weeping oil on the left", is: "logged", defects: 1 },
  { say: "Bramble left indicator dead", bikes: "two", is: "logged", defects: 1 },
  { say: "horn packed up on heron, 14,276 mi", is: "logged", readings: [odo(14276, "mi")], defects: 1 },

  // --- logged: several things in one message ---
  {
    say: "14,278 on heron, 32 front 35 rear, rear tread about 4/32",
    is: "logged",
    readings: [odo(14278), r("cold pressure", "front", 32, null), r("cold pressure", "rear", 35, null), r("tread", "rear", 4 / 32, null)],
  },
  {
    say: "Weekly check:\nodo 14,301 mi\nfront 33 psi\nrear 36 psi\nchain slack 31 mm",
    is: "logged",
    readings: [odo(14301, "mi"), psi("front", 33), psi("rear", 36), r("chain slack", null, 31, "mm")],
  },
  {
    say: "Heron 14,299 mi. Oil and filter done. Rear brake light out.",
    is: "logged",
    readings: [odo(14299, "mi")],
    work: [w("engine oil"), w("oil filter")],
    defects: 1,
  },
  {
    say: "morning all! 14,287 mi, front tyre 33 psi cold, rear tread 3.5 mm. see you at 7",
    is: "logged",
    readings: [odo(14287, "mi"), psi("front", 33), r("tread", "rear", 3.5, "mm")],
  },

  // --- logged: German, and German or French ways of writing numbers ---
  { say: "Bramble Kilometerstand 42.010 km", bikes: "two", is: "logged", readings: [odo(42010, "km", TODAY, "Bramble")] },
  { say: "Heron steht bei 14.320 Meilen", is: "logged", readings: [odo(14320, "mi")] },
  { say: "Luftdruck kalt vorne 2,3 bar hinten 2,5 bar", is: "logged", readings: [bar("front", 2.3), bar("rear", 2.5)] },
  {
    say: "Ölwechsel mit Filter gestern gemacht",
    is: "logged",
    work: [w("engine oil", "2026-11-25"), w("oil filter", "2026-11-25")],
  },
  { say: "Kette geschmiert", is: "logged", work: [w("chain lube")] },
  { say: "Profil hinten noch 3,5 mm", is: "logged", readings: [r("tread", "rear", 3.5, "mm")] },
  { say: "Bremsbeläge hinten 4 mm", is: "logged", readings: [r("pad thickness", "rear", 4, "mm")] },
  { say: "Batterie heute früh 12,6 V", is: "logged", readings: [r("battery voltage", null, 12.6, "V")] },
  { say: "Kettendurchhang 30 mm", is: "logged", readings: [r("chain slack", null, 30, "mm")] },
  {
    say: "Bremsflüssigkeit vorne und hinten am 14.11. gewechselt",
    is: "logged",
    work: [w("front brake fluid", "2026-11-14"), w("rear brake fluid", "2026-11-14")],
  },
  {
    say: "Neuer Hinterreifen drauf bei 14.250 Meilen",
    is: "logged",
    readings: [odo(14250, "mi")],
    work: [w("rear tyre")],
  },
  { say: "Rücklicht an der Heron geht nicht", is: "logged", defects: 1 },
  { say: "letzten Sonntag Zündkerzen gewechselt", is: "logged", work: [w("spark plugs", "2026-11-22")] },
  {
    say: "Bramble 42 015 km, Öl und Filter neu, 3,5 Liter 20W-50",
    bikes: "two",
    is: "logged",
    readings: [odo(42015, "km", TODAY, "Bramble")],
    work: [w("engine oil", TODAY, "Bramble"), w("oil filter", TODAY, "Bramble")],
  },
  {
    say: "Heron 14\u202f295 mi, front 2,3 bar, rear 2,6 bar",
    is: "logged",
    readings: [odo(14295, "mi"), bar("front", 2.3), bar("rear", 2.6)],
  },

  // --- asked ---
  { say: "tyre was 33 psi cold", is: "asked" },
  { say: "odo 14,020 today", is: "asked" },
  { say: "heron 142,600 miles", is: "asked" },
  { say: "odometer 1426", is: "asked" },
  { say: "did the oil and filter this morning", bikes: "two", is: "asked" },
  { say: "front tyre 36 psi cold", bikes: "two", is: "asked" },
  { say: "tread's down to 3 mm", is: "asked" },
  { say: "pads measured 3 mm", is: "asked" },
  { say: "changed the oil on the 12th or the 13th, can't remember which", is: "asked" },
  { say: "odo 14,260 or 14,280, photo came out blurry", is: "asked" },
  { say: "front tyre 330 psi", is: "asked" },
  { say: "chain slack 300 mm", is: "asked" },
  { say: "battery 21.6 V", is: "asked" },
  { say: "new tyre fitted today", is: "asked" },
  { say: "new rear tyre fitted today", bikes: "two", is: "asked" },
  { say: "front brake feels spongy", bikes: "two", is: "asked" },
  { say: "oil changed on 03/04", is: "asked" },
  { say: "static sag came out at 30 mm", is: "asked" },
  { say: "Luftdruck 2,4 bar", is: "asked" },
  { say: "Batterie 12,5 V", bikes: "two", is: "asked" },

  // --- silence ---
  { say: "need to change the oil at 15,000", is: "silence" },
  { say: "see you at 7:30 by the bridge", is: "silence" },
  { say: "anyone want my old screen, 40 plus postage", is: "silence" },
  { say: "part number for the filter is 1541-07-220 if anyone needs it", is: "silence" },
  { say: "ring me on 07700 900123 when you get there", is: "silence" },
  { say: "A44 is shut past junction 6, take the B4077 instead", is: "silence" },
  { say: "looking for a 120/70-17, anyone got one lying about", is: "silence" },
  { say: "10W-40 or 20W-50 for winter?", is: "silence" },
  { say: "my brother's bike is on 31,200 already", is: "silence" },
  { say: "what do you lot run, 33 front 36 rear?", is: "silence" },
  { say: "manual says 33 psi front 36 psi rear", is: "silence" },
  { say: "> front 33 psi rear 36 psi\nsounds about right to me", is: "silence" },
  { say: "forecast says rain until 3 then 12 degrees and sunny", is: "silence" },
  { say: "planning about 240 miles on Saturday, leaving at 8", is: "silence" },
  { say: "my knees have done 60,000 miles without a service", is: "silence" },
  { say: "number 73 was flying at the track day", is: "silence" },
  { say: "club dinner is 5 December at 19:00, 28 a head", is: "silence" },
  { say: "going to fit new rear pads this weekend", is: "silence" },
  { say: "should I change the chain at 15k?", is: "silence" },
  { say: "seen the price of tyres?? 189 for a rear", is: "silence" },
  { say: "is the axle nut 98 Nm or 108 Nm?", is: "silence" },
  { say: "Jonas reckons his front tyre is at 28 psi, no wonder it wanders", is: "silence" },
  { say: "wish I had 14.4 V coming out of my old charger haha", is: "silence" },
  { say: "ordered an oil filter and plugs, should be here friday", is: "silence" },
  { say: "Treffen um 18:30 an der Tankstelle", is: "silence" },
  { say: "Suche Hinterreifen 180/55 ZR17", is: "silence" },
  { say: "muss demnächst mal Öl wechseln", is: "silence" },
  { say: "Wer fährt am 5.12. mit?", is: "silence" },
  { say: "selling a chain kit, 118 links, never fitted, 60 ono", is: "silence" },
  { say: "```\nrear 36 psi\n```", is: "silence" },
  { say: "do you change brake fluid every 2 years or every 12,000 miles?", is: "silence" },
  { say: "great loop this one https://example.org/rides/14300", is: "silence" },
  { say: "fuel is 1.52 at the services, 1.44 in the village", is: "silence" },
  { say: "haven't done the oil yet, too cold", is: "silence" },
  { say: "if the rear tread gets to 2 mm I'm binning it", is: "silence" },
];
