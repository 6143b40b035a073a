// What a member and a group can switch on and off in reminders.

/** Matters that are told of, each switched by itself. */
export const TOPICS = ["services", "looks again", "defects", "season", "charging", "dates", "readings", "trips"] as const;
export type Topic = (typeof TOPICS)[number];

/** What was said of them; what is not named was not spoken of. */
export type Topics = Readonly<Partial<Record<Topic, boolean>>>;

/** The member's own word, else the group's, else it is told. */
export const isWished = (topic: Topic, member: Topics | undefined, group: Topics | undefined): boolean => member?.[topic] ?? group?.[topic] ?? true;

/** Topics that are off. */
export const offOf = (member: Topics | undefined, group: Topics | undefined): readonly Topic[] => TOPICS.filter((topic) => !isWished(topic, member, group));

/** A weekday and a time of day by the clock of a place. `weekday`: 1 Monday to 7 Sunday. */
export type WeekHour = { readonly weekday: number; readonly time: string };

/** The hour at which a group's digest comes while nothing was said: Sunday evening, when the weekend's rides are logged. */
export const USUAL_DIGEST: WeekHour = { weekday: 7, time: "18:00" };

/** What a notice can be about. "aside" is what earlier releases noted beside the plan. */
export type NoticeKind =
  | "item soon"
  | "item due"
  | "item overdue"
  | "look again"
  | "defect"
  | "season"
  | "date"
  | "charge"
  | "reading"
  | "trip ahead"
  | "trip back"
  | "aside";
