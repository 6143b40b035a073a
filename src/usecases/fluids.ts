// What was poured into the brakes or the clutch, held against what the bike is fitted with: families that must not meet, and what a mix is then worth.

import type { Equipment, EquipmentPart } from "../core/equipment.ts";
import { mixing } from "../core/fluid/mixing.ts";
import type { BikeId } from "../core/ids.ts";
import type { DetailWords } from "../core/reading/detail-words.ts";
import { isLeft } from "../core/schedule/mending.ts";
import { fluidsNamed, strangeNamed } from "../message/fluids-named.ts";
import type { WorkRecord } from "../store/work.ts";
import { FLUID_CLASSES, type FluidClassName, STRANGE_FLUIDS, type StrangeFluidName } from "../trade/fluids.ts";
import type { Garaged } from "./garage.ts";

export const FLUID_NAMES = Object.keys(FLUID_CLASSES) as readonly FluidClassName[];

/** The classes that must never meet this one in one circuit. */
export const neverWith = (name: FluidClassName): readonly FluidClassName[] =>
  FLUID_NAMES.filter((other) => !mixing(FLUID_CLASSES[name], FLUID_CLASSES[other]).may);

/** A class that a spec names, with what never mixes with it; `fitted`: what the circuit is entered with, where the two never mix. */
export type FluidNamed = {
  readonly of: "brakes" | "clutch";
  readonly name: FluidInside;
  readonly never: readonly FluidClassName[];
  readonly fitted: FluidInside | null;
};

/** What a spec of a circuit's fluid says, held against what the bike is fitted with; null for words that name no class. */
export function fluidOfSpec(
  of: "brakes" | "clutch",
  typed: string,
  equipment: Pick<Equipment, "brakeFluid" | "clutch">,
  languages: readonly Pick<DetailWords, "fluids">[],
): FluidNamed | null {
  const [said] = fluidsNamed(typed, languages).flatMap(({ name }) => FLUIDS_INSIDE.find((each) => each === name) ?? []);
  const name = fluidNamed(typed) ?? said ?? null;
  // Of the brakes "brake fluid" says nothing.
  if (name === null || (of === "brakes" && name === "brake fluid")) return null;
  const never = name === "brake fluid" ? (["mineral oil"] as const) : neverWith(name);
  const inside = insideOf(of, equipment);
  return { of, name, never, fitted: inside === null || mayMeet(inside, name) ? null : inside };
}

/** What hydraulics were just entered as holding, and what they held by the entry before; null where that was none. */
export type FluidEntered =
  | { readonly of: "brakes"; readonly now: FluidClassName; readonly before: FluidClassName | null; readonly never: readonly FluidClassName[] }
  | { readonly of: "clutch"; readonly now: "brake fluid" | "mineral oil"; readonly before: "brake fluid" | "mineral oil" | null };

/** A part of the equipment that says which fluid is in there; null for every other. */
export function fluidEntered(part: EquipmentPart, before: string, now: string): FluidEntered | null {
  if (part === "brakeFluid") {
    const [was, is] = [fluidNamed(before), fluidNamed(now)];
    return is === null ? null : { of: "brakes", now: is, before: was, never: neverWith(is) };
  }
  const clutch = (choice: string) => (choice === "hydraulic brake fluid" ? "brake fluid" : choice === "hydraulic mineral oil" ? "mineral oil" : null);
  const is = part === "clutch" ? clutch(now) : null;
  return is === null ? null : { of: "clutch", now: is, before: clutch(before) };
}

/** A class, or brake fluid of which no class was said: glycol, where nothing says otherwise. */
export type FluidInside = FluidClassName | "brake fluid";

/** A fluid put in that is not the one the bike is fitted with. `worth`: the class that the mix is worth; null where the two must not meet. */
export type FluidPut = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly of: "brakes" | "clutch";
  readonly inside: FluidInside;
  readonly added: FluidInside | StrangeFluidName;
  readonly worth: FluidClassName | null;
  /** °C at which the class boils at the least once it has drawn water; null where none is laid down. */
  readonly wet: number | null;
  /** It spoils the rubber that it reaches: a flush alone does not undo that. */
  readonly seals?: true;
  /** All of it was changed for a lower class: no mix, and less than the bike is entered with. */
  readonly changed?: true;
  /** The record that says so. */
  readonly work: string;
};

/** What opens a circuit, and so says what is in it. */
const CIRCUITS = [
  { of: "brakes", items: ["brake-fluid.inspect", "brake-fluid.replace", "brake-hoses.inspect", "brake-hoses.replace"] },
  { of: "clutch", items: ["clutch-fluid.replace"] },
] as const;

/**
 * What work says was put into the brakes or the clutch of its bike, where it differs from what the bike is fitted with.
 * @param languages how fluids are called beside their classes
 */
export function fluidsPut(
  work: readonly WorkRecord[],
  bikes: readonly Pick<Garaged, "bike">[],
  languages: readonly Pick<DetailWords, "fluids">[],
): readonly FluidPut[] {
  return work.flatMap((record) => {
    const bike = bikes.find((g) => g.bike.id === record.bike)?.bike;
    if (bike === undefined) return [];
    const said = [...(record.detail?.quantities ?? []).map(({ of }) => of ?? ""), ...(record.detail?.parts ?? []).map(({ words }) => words)];
    const added = said.flatMap((words) => fluidsNamed(words, languages)).flatMap(({ name }) => FLUIDS_INSIDE.find((each) => each === name) ?? []);
    const strange = strangeIn(record, languages);
    const opened = CIRCUITS.flatMap(({ of, items }) => {
      const came = record.items.find(({ item, outcome }) => (items as readonly string[]).includes(item) && !isLeft(outcome));
      const inside = insideOf(of, bike.equipment);
      return came === undefined || inside === null ? [] : [{ of, inside, topped: came.outcome === "topped up" }];
    });
    return opened.flatMap(({ of, inside, topped }): readonly FluidPut[] => {
      const wrong = added.filter((each) => !mayMeet(inside, each));
      // Brakes and clutch of one record may each have had its own.
      const [first] = opened.length > 1 && wrong.length < added.length ? strange : [...strange, ...wrong];
      const put = { bike: bike.id, nickname: bike.nickname, of, inside, work: record.id };
      if (first !== undefined) return [{ ...put, added: first, worth: null, wet: null, ...(spoilsSeals(inside, first) ? { seals: true as const } : {}) }];
      const other = added.find((each) => each !== inside);
      if (of !== "brakes" || other === undefined || other === "brake fluid" || inside === "brake fluid") return [];
      const met = mixing(FLUID_CLASSES[inside], FLUID_CLASSES[other]);
      // All of it changed: another class of the same family is no mix, and only a lower one wants a word.
      if (!topped) return met.may && met.worth === 1 ? [{ ...put, added: other, worth: other, wet: FLUID_CLASSES[other].wet, changed: true }] : [];
      const worth = met.may ? ([inside, other][met.worth] ?? null) : null;
      return [{ ...put, added: other, worth, wet: worth === null ? null : FLUID_CLASSES[worth].wet }];
    });
  });
}

/** Work on a circuit whose note names a class that never meets what the bike is fitted with: in or out, a note does not say which, so it mends nothing by itself. */
export function namesWrongInNote(
  { bike: id, items, note }: WorkRecord,
  bikes: readonly Pick<Garaged, "bike">[],
  languages: readonly Pick<DetailWords, "fluids">[],
): boolean {
  const bike = bikes.find((g) => g.bike.id === id)?.bike;
  if (bike === undefined || note === null) return false;
  const named = fluidsNamed(note, languages).flatMap(({ name }) => FLUIDS_INSIDE.find((each) => each === name) ?? []);
  return CIRCUITS.some(({ of, items: opened }) => {
    const inside = insideOf(of, bike.equipment);
    return inside !== null && items.some(({ item }) => (opened as readonly string[]).includes(item)) && named.some((each) => !mayMeet(inside, each));
  });
}

const isOfCircuit = (item: string): boolean => CIRCUITS.some(({ items }) => (items as readonly string[]).includes(item));

/** What went in by a record and belongs into no circuit. Oil beside a job that takes oil is of that job. */
function strangeIn({ detail, items }: WorkRecord, languages: readonly Pick<DetailWords, "fluids">[]): readonly StrangeFluidName[] {
  const alone = items.every(({ item }) => isOfCircuit(item));
  const parts = detail.parts.flatMap(({ words, item }) => ((item === null ? alone : isOfCircuit(item)) ? [words] : []));
  const amounts = alone ? detail.quantities.map(({ of }) => of ?? "") : [];
  return [...parts, ...amounts].flatMap((said) => strangeNamed(said, languages)).flatMap(({ name }) => STRANGE_NAMES.find((each) => each === name) ?? []);
}
export const STRANGE_NAMES = Object.keys(STRANGE_FLUIDS) as readonly StrangeFluidName[];

/** Of which rubber a fluid spoils the other kind: oil the seals for brake fluid, brake fluid those for oil. Common practice. */
const rubberOf = (name: FluidInside | StrangeFluidName): "oil" | "brake fluid" | null => {
  if (name in STRANGE_FLUIDS) return STRANGE_FLUIDS[name as StrangeFluidName] === "petroleum" ? "oil" : null;
  return name === "mineral oil" ? "oil" : "brake fluid";
};
const spoilsSeals = (inside: FluidInside, added: FluidInside | StrangeFluidName): boolean => {
  const [for_, by] = [rubberOf(inside), rubberOf(added)];
  return by !== null && for_ !== by;
};

/** A fluid named at work on a circuit and known to nobody here. */
export type FluidUnknown = Pick<FluidPut, "bike" | "nickname" | "of" | "inside" | "work"> & { readonly words: string };

/** What work says went into a circuit, and which is no fluid that is known. */
export function fluidsUnknown(
  work: readonly WorkRecord[],
  bikes: readonly Pick<Garaged, "bike">[],
  languages: readonly Pick<DetailWords, "fluids">[],
): readonly FluidUnknown[] {
  return work.flatMap((record) => {
    const bike = bikes.find((g) => g.bike.id === record.bike)?.bike;
    if (bike === undefined) return [];
    return record.detail.parts.flatMap(({ words, item }): readonly FluidUnknown[] => {
      const named = fluidsNamed(words, languages);
      const isKnown = named.some(({ name }) => FLUIDS_INSIDE.some((each) => each === name)) || strangeNamed(words, languages).length > 0;
      const of = CIRCUITS.find(({ items }) => record.items.some((each) => (items as readonly string[]).includes(each.item)))?.of;
      // What came with a job by command may be washers too; a class that there is not is no washer.
      if (isKnown || of === undefined || (named.length === 0 && (item === null || !isOfCircuit(item)))) return [];
      const inside = insideOf(of, bike.equipment);
      return inside === null ? [] : [{ bike: bike.id, nickname: bike.nickname, of, inside, words, work: record.id }];
    });
  });
}

const FLUIDS_INSIDE: readonly FluidInside[] = [...FLUID_NAMES, "brake fluid"];

/** What a circuit holds by what the bike is entered with; null where it has none, or nothing says. A clutch on brake fluid holds that of the brakes, where they have any. */
function insideOf(of: "brakes" | "clutch", { brakeFluid, clutch }: Pick<Equipment, "brakeFluid" | "clutch">): FluidInside | null {
  const brakes = FLUID_NAMES.find((name) => name === brakeFluid) ?? null;
  if (of === "brakes") return brakes;
  if (clutch === "hydraulic mineral oil") return "mineral oil";
  return clutch === "hydraulic brake fluid" ? (brakes === null || brakes === "mineral oil" ? "brake fluid" : brakes) : null;
}

/** Of brake fluid without a class it is known only that it is no mineral oil; in a circuit, that it is glycol unless the cap says otherwise. */
function mayMeet(inside: FluidInside, added: FluidInside): boolean {
  if (added === "brake fluid") return inside !== "mineral oil";
  return mixing(FLUID_CLASSES[inside === "brake fluid" ? "DOT 4" : inside], FLUID_CLASSES[added]).may;
}

/** "dot5.1", "DOT 4": the class; null for anything else. */
function fluidNamed(typed: string): FluidClassName | null {
  const plain = typed.trim().toLowerCase().replaceAll(" ", "");
  return FLUID_NAMES.find((name) => name.toLowerCase().replaceAll(" ", "") === plain) ?? null;
}
