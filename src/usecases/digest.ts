// A group's week in a few figures: what was logged, which bikes fall due, how far the season is.
// A bike is named only where its owner said that the group may see it. Nothing found wrong is told, and nothing that a bike or a member lacks.

import type { Group } from "../core/bike.ts";
import { addDays } from "../core/calendar/arithmetic.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import { addDuration, localDateAt } from "../core/calendar/zones.ts";
import { type Countdown, seasonCountdown, windowOf } from "../core/season/season.ts";
import type { Repos } from "../store/store.ts";
import { garage } from "./garage.ts";
import { type GroupRow, groupRow } from "./picture-group.ts";

export type DigestBike = Pick<GroupRow, "nickname" | "owner" | "dueNow"> & {
  /** The likely day on which something falls due, where nothing is due now. */
  readonly next: LocalDate | null;
};
export type Digest = {
  readonly today: LocalDate;
  /** Null: nothing, or by so few members that a count would name them. */
  readonly logged: { readonly readings: number; readonly jobs: number; readonly bikes: number } | null;
  readonly due: readonly DigestBike[];
  readonly soon: readonly DigestBike[];
  readonly season: Countdown | null;
};

/** A count of fewer members says what one of them did. */
const FEWEST_MEMBERS = 3;
/** What falls due so soon is told. */
const AHEAD_DAYS = 28;
/** More bikes than this are not worked out for one message. */
const MOST = 60;

/** Null: this week there is nothing to say. */
export async function digestOf(q: Repos, home: Group, now: Instant): Promise<Digest | null> {
  const today = localDateAt(now, home.zone);
  const logged = await q.digests.loggedSince(home.id, addDuration(now, "-P7D"));
  const bikes = (await q.bikes.picturedIn(home.id)).filter(({ state }) => state === "riding").slice(0, MOST);
  const owners = await q.members.byIds([...new Set(bikes.map(({ owner }) => owner))]);
  const all = await garage(q, bikes, now, (bike) => ({ member: owners.get(bike.owner) ?? null, home }));
  const until = addDays(today, AHEAD_DAYS);
  const rows = all.map((g) => groupRow(g, owners.get(g.bike.owner)?.name ?? null, until));
  const shown = rows.map(({ nickname, owner, dueNow, next }): DigestBike => ({ nickname, owner, dueNow, next: next.map(({ on }) => on).sort()[0] ?? null }));
  const window = windowOf(home.riding);
  const digest: Digest = {
    today,
    logged: logged.members < FEWEST_MEMBERS ? null : { readings: logged.readings, jobs: logged.jobs, bikes: logged.bikes },
    due: shown.filter(({ dueNow }) => dueNow > 0),
    soon: shown.filter(({ dueNow, next }) => dueNow === 0 && next !== null && next <= until).sort((a, b) => ((a.next ?? "") < (b.next ?? "") ? -1 : 1)),
    season: window === null ? null : seasonCountdown(window, today),
  };
  return digest.logged === null && digest.due.length + digest.soon.length === 0 && digest.season === null ? null : digest;
}
