// A due list as words: what is due first, then coming up, then the rest, each with its reason.

import type { Said } from "../../src/chat/reply.ts";
import type { LocalDate } from "../../src/core/calendar/dates.ts";
import type { Ridden } from "../../src/core/quantity/distance.ts";
import type { Status } from "../../src/core/schedule/facts.ts";
import type { DueBike, DueLine } from "../../src/usecases/due.ts";
import type { Words } from "../../src/words/en/english.ts";
import { showEach } from "./defects.ts";
import { said } from "./said.ts";

/** Lines that fit a phone before the rest is counted; one bike asked for by name is shown whole. */
const MOST_OF_ONE = 40;
const MOST_OF_MANY = 6;
const ORDER: readonly Status[] = ["overdue", "due", "soon", "no record", "good"];

/** One bike whole, or several in short. */
export function sayDue(bikes: readonly DueBike[], words: Words): Said {
  const whole = bikes.length === 1;
  const lines = bikes.flatMap((bike, n) => [...(n > 0 ? [""] : []), ...linesOf(bike, whole, words)]);
  const urgent = bikes.flatMap((bike) => bike.dues).filter((line) => !line.habit && ["overdue", "due", "soon"].includes(line.status));
  const defects = bikes.flatMap((bike) => bike.defects ?? []);
  const [worst] = defects.filter((defect) => defect.grade === "do not ride" && defect.caution !== null);
  return said(lines, { caution: words.caution(worst?.caution ?? null) ?? cautionOf(urgent, words), actions: showEach(defects, words) });
}

function linesOf(bike: DueBike, whole: boolean, words: Words): string[] {
  const { due } = words;
  const lines = [due.bike(bike.nickname, bike)];
  for (const defect of bike.defects ?? []) lines.push(`- ${words.defects.due(defect, words.today)}`);
  for (const judged of bike.measured ?? []) lines.push(`- ${words.judge.line(judged)}`);
  if (bike.laidUp) lines.push(due.laidUp());
  if (bike.standing != null) lines.push(...words.outlook.whileItStands(bike.standing, words.today));
  const habits = bike.dues.filter((line) => line.habit);
  const marked = bike.dues.filter((line) => !line.habit);
  if (!marked.some((line) => ["overdue", "due", "soon"].includes(line.status))) lines.push(due.nothingDue());
  if (bike.first.length > 0) lines.push(due.first(bike.first.map((key) => bike.dues.find((line) => line.item === key)?.name ?? key)));
  for (const status of ORDER) {
    const here = marked.filter((line) => line.status === status);
    if (here.length === 0) continue;
    lines.push("", `${due.heading(status, here.length)}`);
    lines.push(...section(here, status, whole, bike, words));
  }
  const worn = bike.worn ?? [];
  if (worn.length > 0) lines.push("", ...worn.map((each) => words.tyres.left(each, bike.unit, words.today)));
  if (habits.length > 0) lines.push("", due.habits(habits.map((line) => line.name)));
  const basis = due.basis(bike);
  if (basis !== null) lines.push(basis);
  return lines;
}

/** Of several bikes, what is good is counted; of one bike every item has its reason. */
function section(here: readonly DueLine[], status: Status, whole: boolean, bike: DueBike, words: Words): string[] {
  if (!whole && (status === "good" || status === "no record")) return [];
  if (status === "no record") return unrecorded(here, bike, words);
  const most = whole ? MOST_OF_ONE : MOST_OF_MANY;
  const lines = here
    .slice(0, most)
    .map((line) => `- ${words.due.line(line, bike)}${line.putOff === undefined ? "" : ` ${words.reminders.silent(line.putOff)}`}`);
  return here.length > most ? [...lines, words.due.more(here.length - most, status)] : lines;
}

/** A used bike may have no record of most of its plan: items that share a reason share a line, and so do those of which nothing at all is known. */
export function unrecorded(
  here: readonly DueLine[],
  bike: Pick<DueBike, "unit" | "offset" | "today" | "perWeek" | "basis" | "odometer">,
  words: Words,
): string[] {
  const groups = new Map<string, string[]>();
  const unknown: { readonly name: string; readonly next: Ridden; readonly on: LocalDate | null }[] = [];
  for (const line of here) {
    const { because } = line;
    if (because.why === "never recorded" && because.passedAt === null && because.nextMark !== null) {
      unknown.push({ name: line.name, next: because.nextMark, on: because.nextOn });
      continue;
    }
    const reason = words.due.reason(line, bike);
    groups.set(reason, [...(groups.get(reason) ?? []), line.name]);
  }
  const soonest = unknown.toSorted((a, b) => a.next - b.next);
  return [...[...groups].map(([reason, names]) => words.due.shared(reason, names)), ...(unknown.length === 0 ? [] : [words.due.unknown(soonest, bike)])].map(
    (text) => `- ${text}`,
  );
}

/** One caution, that of the first item which can hurt. */
export const cautionOf = (lines: readonly DueLine[], words: Words): string | null =>
  words.caution(lines.find((line) => line.caution !== null)?.caution ?? null);
