// What the open tables say of a mark: the answer as data.

import type { FluidBase } from "../core/fluid/mixing.ts";
import type { FluidClassName } from "./fluids.ts";
import type { TreadLaw } from "./tread-law.ts";

export type LookedUp =
  | {
      readonly table: "oil grade";
      readonly grade: string;
      /** The parts of it that the standard has no grade for. */
      readonly unknown: readonly string[];
      readonly winter: { readonly cranks: number; readonly pumps: number } | null;
      readonly hot: { readonly from: number; readonly below: number } | null;
      readonly source: string;
    }
  | {
      readonly table: "oil grades";
      readonly winter: readonly { readonly grade: string; readonly cranks: number; readonly pumps: number }[];
      readonly hot: readonly { readonly grade: string; readonly from: number; readonly below: number }[];
      readonly source: string;
    }
  | {
      readonly table: "brake fluids";
      readonly rows: readonly { readonly name: string; readonly base: string; readonly dry: number | null; readonly wet: number | null }[];
    }
  | { readonly table: "inch thread"; readonly size: string; readonly coarse: number; readonly fine: number }
  /** Threads whose heads have that width across flats, mm; `before`: on older bolts only. */
  | { readonly table: "hex"; readonly width: number; readonly threads: readonly { readonly size: string; readonly before: boolean }[] }
  | {
      readonly table: "brake fluid";
      readonly name: FluidClassName;
      readonly base: FluidBase;
      /** The classes that never go into one circuit with it. */
      readonly never: readonly FluidClassName[];
      readonly dry: number | null;
      readonly wet: number | null;
      /** After so long it is changed, by common practice. */
      readonly months: number;
      readonly source: string;
    }
  | {
      readonly table: "tyre mark";
      /** As it was typed. */
      readonly mark: string;
      readonly load: { readonly index: number; readonly kilograms: number } | null;
      readonly speed: { readonly symbol: string; readonly kmh: number } | null;
    }
  | {
      readonly table: "thread";
      readonly size: string;
      readonly pitches: readonly number[];
      /** The pitch that was typed, in mm; null for the thread alone. */
      readonly pitch: number | null;
      readonly hex: { readonly now: number; readonly before: number } | null;
    }
  | {
      readonly table: "threads";
      readonly rows: readonly {
        readonly size: string;
        readonly pitches: readonly number[];
        readonly hex: { readonly now: number; readonly before: number } | null;
      }[];
    }
  | { readonly table: "load indexes"; readonly rows: readonly { readonly index: number; readonly kilograms: number }[] }
  | { readonly table: "speed symbols"; readonly rows: readonly { readonly symbol: string; readonly kmh: number }[] }
  | {
      readonly table: "tread law";
      /** A place was asked for that the table lacks, as typed: the rows are those there are. */
      readonly lacks: string | null;
      readonly rows: readonly ({ readonly place: string } & TreadLaw)[];
    }
  | {
      readonly table: "resting volts";
      readonly kinds: readonly {
        readonly kind: string;
        readonly points: readonly { readonly volts: number; readonly charge: number }[];
        readonly source: string;
      }[];
    };
