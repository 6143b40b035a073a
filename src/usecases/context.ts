// What every use case is handed: the store, the moment, fresh ids, the speaker, and the words people type.

import type { Group, Member } from "../core/bike.ts";
import type { Instant, LocalDate, Zone } from "../core/calendar/dates.ts";
import { isSouthern, localDateAt, zone } from "../core/calendar/zones.ts";
import type { EventId, GroupId, MemberId } from "../core/ids.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { NumberStyle } from "../core/quantity/number.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { DetailWords } from "../core/reading/detail-words.ts";
import type { Spoken, Vocabulary } from "../core/reading/vocabulary.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import type { Speaker } from "../store/members.ts";
import { USUAL_WISHES } from "../store/members.ts";
import type { Store } from "../store/store.ts";

/** The member who is speaking, with every choice settled by one rule: their own, else the group's, else a default. */
export type Actor = {
  readonly member: MemberId;
  readonly group: GroupId | null;
  readonly channel: "reading" | "other" | "dm";
  /** The platform's id of the channel spoken in. */
  readonly place: string;
  /** May change the group's settings. */
  readonly admin: boolean;
  readonly zone: Zone;
  readonly language: "en";
  readonly locale: string;
  readonly numbers: NumberStyle;
  /** Units for showing, and for reading what was typed bare; null asks. */
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  readonly depth: UnitId | null;
  readonly torque: UnitId | null;
  /** What is stored; `known` false until something of theirs is saved. */
  readonly self: Member;
  readonly known: boolean;
  readonly home: Group | null;
  /** Is spring in September for this member: by the group spoken in, else by their zone. */
  readonly south: boolean;
};

export type Ctx = {
  readonly store: Store;
  readonly now: Instant;
  readonly newId: () => string;
  readonly who: Actor;
  readonly event: EventId;
  readonly vocabulary: Vocabulary;
  /** Other languages that messages are read in. */
  readonly also: readonly Spoken[];
  /** Can the face hear whole channels, or only what is addressed to the bot? */
  readonly hearsChannels: boolean;
  /** May the speaker manage another group than the one spoken in: asked of the platform. */
  readonly mayManage: (group: GroupId) => Promise<boolean>;
  /** A plan item in the member's language: their own words, else the standard ones. */
  readonly itemName: (key: string, called: string | null) => string;
  /** What a record of work on an item is called, by its outcome. */
  readonly workName: (key: string, called: string | null, outcome: Outcome) => string;
};

const POINT: NumberStyle = { decimal: ".", group: "," };
const UTC = zone("UTC");

/** Settles who is speaking from what is stored of them. */
export function actorOf(
  from: { member: MemberId; name: string | null; group: GroupId | null; channel: Actor["channel"]; place: string; admin: boolean },
  stored: Speaker,
): Actor {
  const self: Member = stored.member ?? {
    id: from.member,
    name: from.name,
    zone: null,
    language: null,
    distance: null,
    pressure: null,
    depth: null,
    torque: null,
    reminders: USUAL_WISHES,
  };
  return {
    member: from.member,
    group: from.group,
    channel: from.channel,
    place: from.place,
    admin: from.admin,
    zone: self.zone ?? stored.group?.zone ?? UTC,
    language: "en",
    locale: "en-GB",
    numbers: POINT,
    distance: self.distance ?? stored.group?.distance ?? null,
    pressure: self.pressure ?? stored.group?.pressure ?? null,
    depth: self.depth,
    torque: self.torque,
    self,
    known: stored.member !== null,
    home: stored.group,
    south: isSouth(stored.group, self.zone ?? stored.group?.zone ?? UTC),
  };
}

/** The one rule for seasons: what the group says, else where the zone lies. */
export const isSouth = (group: Group | null, at: Zone): boolean => (group?.season == null ? isSouthern(at) : group.season === "south");

/** The one rule for a bike's zone: its owner's, else its home group's, else UTC. */
export function zoneOfBike(owner: Member | null, home: Group | null): Zone {
  return owner?.zone ?? home?.zone ?? UTC;
}

/** How the details of a job are called in every language that is read. */
export const languagesOf = ({ vocabulary, also }: Pick<Ctx, "vocabulary" | "also">): readonly DetailWords[] =>
  [vocabulary, ...also.map((each) => each.vocabulary)].map(({ details }) => details);

/** Today where the speaker is. */
export const todayOf = (ctx: Ctx): LocalDate => localDateAt(ctx.now, ctx.who.zone);

/** Is a plain message read where the speaker is, without naming the bot? */
export function isPlainlyHeard({ who, hearsChannels }: Ctx): boolean {
  if (who.channel === "dm") return true;
  if (!hearsChannels || who.home?.reads === false) return false;
  return who.home?.readingChannel == null ? who.channel === "reading" : who.place === who.home.readingChannel;
}
