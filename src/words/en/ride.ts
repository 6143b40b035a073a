// A ride that several bikes are on, in English: who, when and how far, each in its own unit, and what need not be carried twice.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { DistanceUnit, Stretch } from "../../core/quantity/distance.ts";
import type { KitKey } from "../../trade/trip.ts";
import type { Printer } from "../printer.ts";
import { KIT_WORDS } from "./trip.ts";

type Ride = {
  readonly from: LocalDate;
  readonly to: LocalDate;
  readonly distance: Stretch;
  readonly along: readonly { readonly nickname: string; readonly owner: string | null; readonly unit: DistanceUnit; readonly kit: readonly KitKey[] }[];
  readonly more: number;
};

/** What one of between several bikes may do for all that need it; everything else each rider carries. */
const SHARED = ["gauge", "plug kit", "tube kit", "chain link", "chain oil", "first aid"] as const satisfies readonly KitKey[];

export const rideWords = (p: Printer, today: LocalDate) => ({
  title: ({ from, to }: Ride): string => `Riding together, ${p.date(from, today)} to ${p.date(to, today)}`,
  lines: ({ along, distance, more }: Ride): readonly string[] => [
    ...along.map(({ nickname, owner, unit }) => `- ${nickname}${owner === null ? "" : ` (${owner})`}: ${p.distance(distance, { unit })}`),
    ...(more === 0 ? [] : [`and ${more} more`]),
    ...(along.length < 2 ? ["Nobody else is on the list yet."] : [`Between you, carry: ${SHARED.flatMap((key) => carriers(along, key)).join("; ")}.`]),
    "Whoever rides along is on this list with their bike's name, and nothing else of it is told here. What the trip asks of your bike comes to you alone.",
  ],
  joined: (nickname: string): string => `${nickname} is on the list. “Call it off” takes it off again.`,
  which: (): string => "Which of your bikes?",
  labels: {
    share: "Ask who rides along",
    along: "I ride along",
    who: "Who rides along",
    with: (nickname: string): string => `With ${nickname}`.slice(0, 80),
  },
});

/** "plug kit for tubeless tyres (Heron and Bramble)", or the thing alone where all of them can use it. */
function carriers(along: Ride["along"], key: KitKey): string[] {
  const need = along.filter(({ kit }) => kit.includes(key));
  if (need.length === 0) return [];
  return [need.length === along.length ? KIT_WORDS[key] : `${KIT_WORDS[key]} (${need.map(({ nickname }) => nickname).join(", ")})`];
}
