// What was poured into the brakes, held against what the bike is fitted with: families that must not meet, and what a mix is then worth.

import type { Equipment, EquipmentPart } from "../core/equipment.ts";
import { mixing } from "../core/fluid/mixing.ts";
import type { BikeId } from "../core/ids.ts";
import { isLeft } from "../core/schedule/mending.ts";
import type { WorkRecord } from "../store/work.ts";
import { FLUID_CLASSES, type FluidClassName } from "../trade/fluids.ts";
import type { Garaged } from "./garage.ts";

export const FLUID_NAMES = Object.keys(FLUID_CLASSES) as readonly FluidClassName[];

/** The classes that must never meet this one in one circuit. */
export const neverWith = (name: FluidClassName): readonly FluidClassName[] =>
  FLUID_NAMES.filter((other) => !mixing(FLUID_CLASSES[name], FLUID_CLASSES[other]).may);

/** A class that a spec names, with what never mixes with it; `fitted`: what the bike is entered with, where the two never mix. */
export type FluidNamed = { readonly name: FluidClassName; readonly never: readonly FluidClassName[]; readonly fitted: FluidClassName | null };

/** What a spec of the brakes' fluid says, held against what the bike is fitted with; null for words that name no class. */
export function fluidOfSpec(typed: string, equipment: Pick<Equipment, "brakeFluid">): FluidNamed | null {
  const name = fluidNamed(typed);
  if (name === null) return null;
  const never = neverWith(name);
  return { name, never, fitted: never.find((other) => other === equipment.brakeFluid) ?? null };
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

/** A fluid put in that is not the one the bike is fitted with. `worth`: the class that the mix is worth; null where the two must not meet. */
export type FluidPut = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly inside: FluidClassName;
  readonly added: FluidClassName;
  readonly worth: FluidClassName | null;
  /** °C at which the class boils at the least once it has drawn water; null where none is laid down. */
  readonly wet: number | null;
};

const BRAKES = ["brake-fluid.inspect", "brake-fluid.replace"];

/** What work says was put into the brakes of its bike, where it differs from what the bike is fitted with. */
export function fluidsPut(work: readonly WorkRecord[], bikes: readonly Pick<Garaged, "bike">[]): readonly FluidPut[] {
  return work.flatMap((record) => {
    const bike = bikes.find((g) => g.bike.id === record.bike)?.bike;
    const inside = FLUID_NAMES.find((name) => name === bike?.equipment.brakeFluid);
    const came = record.items.find(({ item, outcome }) => BRAKES.includes(item) && !isLeft(outcome));
    if (bike === undefined || inside === undefined || came === undefined) return [];
    const said = [...(record.detail?.quantities ?? []).map(({ of }) => of ?? ""), ...(record.detail?.parts ?? []).map(({ words }) => words)];
    const added = said.map(fluidNamed).find((name) => name !== null);
    if (added === undefined || added === null || added === inside) return [];
    const met = mixing(FLUID_CLASSES[inside], FLUID_CLASSES[added]);
    // All of it changed: another class of the same family is no mix.
    if (met.may && came.outcome !== "topped up") return [];
    const worth = met.may ? [inside, added][met.worth] : undefined;
    return [{ bike: bike.id, nickname: bike.nickname, inside, added, worth: worth ?? null, wet: worth === undefined ? null : FLUID_CLASSES[worth].wet }];
  });
}

/** "dot5.1", "DOT 4": the class; null for anything else. */
function fluidNamed(typed: string): FluidClassName | null {
  const plain = typed.trim().toLowerCase().replaceAll(" ", "");
  return FLUID_NAMES.find((name) => name.toLowerCase().replaceAll(" ", "") === plain) ?? null;
}
