// What is looked at before a lay-up, for a trip, at buying and after a fall, in English; beside check-points.ts.

import type { PointKey } from "../../trade/checklists/points.ts";

/** What is said of a point; `buy`: what is bought when it is not good. */
export type PointWords = { readonly name: string; readonly look: string; readonly good: string; readonly more?: string; readonly buy?: string };

export const RARE_POINTS = {
  "wash-and-dry": {
    name: "Wash and dry",
    look: "Wash off salt and flies with little pressure, never at bearings or seals; dry it.",
    good: "Clean and dry to the last corner.",
    more: "Dry the brakes by a few gentle pulls before it is put away.",
  },
  "fuel-stabiliser": {
    name: "Stabiliser in a full tank",
    look: "Stabiliser in, tank filled up, engine run ten minutes in the open.",
    good: "Tank full, and the treated fuel has reached the engine.",
    buy: "fuel stabiliser",
  },
  "carburettor-bowls": {
    name: "Carburettor bowls empty",
    look: "Tap off, let it idle until it stops by itself.",
    good: "Stopped for want of fuel, tap left off.",
    more: "What is left comes out by the screw at each bowl, into a can, once the engine is cold.",
  },
  "oil-before-rest": {
    name: "Oil changed warm",
    look: "Change oil and filter while it is warm: used oil eats bearings over the winter.",
    good: "Fresh oil at its mark, drain plug with a new washer at the manual's torque.",
    buy: "engine oil and filter",
  },
  "chain-before-rest": {
    name: "Chain cleaned and oiled",
    look: "Clean, dry and oil it while it is warm, wheel turned by hand.",
    good: "Every link coated.",
    buy: "chain lubricant",
  },
  "cool-down": { name: "Let it get cold", look: "Leave it overnight before you go on.", good: "Cold to the hand, exhaust too." },
  "bare-metal": {
    name: "Bare metal",
    look: "A thin film of oil or wax on what rusts, never on brakes or tyres.",
    good: "Tubes, spokes, bolts and exhaust covered; discs and pads untouched.",
  },
  "tyres-at-rest": {
    name: "Tyres at rest",
    look: "Wheels clear of the ground on a safe stand, or pressures up to the sidewall's cold maximum at most.",
    good: "Clear, or pumped up and rolled on every few weeks.",
  },
  "battery-at-rest": {
    name: "Battery at rest",
    look: "Charge it, then out into a frost-free dry place, or on a maintainer made for its kind.",
    good: "Full, and looked at every month or held by the maintainer.",
    more: "A lithium battery wants a charger made for it. Never charge a frozen battery.",
  },
  "stop-openings": {
    name: "Exhaust and intake stopped",
    look: "Engine cold: a bright rag in each silencer and in the intake, and a tag on the bars that says so.",
    good: "Stopped, counted, tagged. I shall ask for them in spring.",
  },
  cover: { name: "Cover", look: "A cover that breathes, over a cold dry bike.", good: "On, not touching hot parts, never plastic sheet." },
  "no-short-starts": {
    name: "Let it sleep",
    look: "Put the key away.",
    good: "Not started until it is ridden: five minutes a month bring water into oil and exhaust, and no charge.",
  },
  "load-settings": {
    name: "Set for the load",
    look: "Pressures, preload and headlamp aim for the load, from the plate and the manual.",
    good: "Set, and what is normal written down for the way back.",
  },
  luggage: {
    name: "Luggage",
    look: "Racks, bags and straps; shake each; weigh what you guess.",
    good: "Fast, heavy things low and forward, within the load of bike and rack.",
  },
  "tools-and-spares": {
    name: "Tools and spares",
    look: "Tool roll, tyre repair that fits tube or tubeless, fuses, bulbs, links, tape.",
    good: "On board, and you have used each once.",
    buy: "tyre repair kit, fuses, bulbs",
  },
  papers: { name: "Papers", look: "Licence, registration, insurance, inspection, breakdown number.", good: "All with you, none running out on the way." },
  "numbers-and-papers": {
    name: "Numbers and papers",
    look: "Frame number against the papers, seller against the papers.",
    good: "All agree, no filed or restamped figure.",
  },
  history: { name: "History", look: "Service book, receipts, inspection sheets: do dates and odometer run on?", good: "A story that fits the wear you see." },
  recalls: { name: "Recalls", look: "Ask the maker or a dealer with the frame number.", good: "None open, or done on paper." },
  keys: { name: "Keys", look: "All keys, the code card, the alarm.", good: "All there, each turns every lock." },
  "engine-is-cold": { name: "Cold when you come", look: "A hand near the exhaust.", good: "Cold: a warm engine hides a bad start." },
  "signs-of-a-fall": {
    name: "Signs of a fall",
    look: "Lever ends, footrests, covers, steering stops, new paint on one side only.",
    good: "Wear alike on both sides, stops unmarked.",
  },
  smoke: {
    name: "Smoke",
    look: "Watch the exhaust at the start, warm, and at a blip.",
    good: "None, but for white steam in the cold; blue is oil, black is fuel, white that stays is coolant.",
  },
  "test-ride": {
    name: "Test ride",
    look: "Insured, with the seller's word: brakes, each gear, hands light on the bars.",
    good: "Stops straight, every gear holds, no weave, clutch does not slip.",
  },
  "rider-first": {
    name: "You first",
    look: "Off the road, helmet on until you are sure. Head, neck, back, breath, then hands and feet.",
    good: "Nobody hurt. If in doubt, call help and stay; shock hides pain.",
  },
  "helmet-and-kit": { name: "Helmet and kit", look: "Look at helmet and jacket.", good: "The helmet took no knock. One that did is replaced.", buy: "helmet" },
  "engine-off": { name: "Engine off, tap off", look: "Stop switch and key off, tap off, no smoke about.", good: "Off, upright, no fuel on the ground." },
  "fork-and-wheel-in-line": {
    name: "Fork and wheel in line",
    look: "Stand in front: bars, fork and wheel in one line; look along both tubes.",
    good: "In line, tubes straight, axle and clamps unmoved.",
  },
  "footrests-and-pedals": {
    name: "Footrests and pedals",
    look: "Brake pedal, gear lever, footrests: each through its travel.",
    good: "Not bent, not fouled; the pedal does not hold the brake on.",
  },
  "lain-on-its-side": {
    name: "After lying on its side",
    look: "Airbox for oil or fuel; oil and coolant level; wait a few minutes upright.",
    good: "Airbox dry, levels right.",
    more: "Liquid in a cylinder stops the engine dead: if it will not turn, do not force it.",
  },
  "covers-and-radiators": { name: "Covers and radiators", look: "Engine covers, oil cooler, radiator, hoses.", good: "No crack, no drip." },
  "roll-first": {
    name: "Roll first",
    look: "Walking pace: each brake, then a turn each way.",
    good: "Stops, steers and runs straight. If not, have it carried.",
  },
} as const satisfies Partial<Record<PointKey, PointWords>>;
