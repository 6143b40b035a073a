// read(text, known): what a message meant. Pure: it fetches nothing, and what it is not sure of becomes a question.
// The worst outcome is a wrong reading logged in silence; a question too many is better, and silence on small talk best.

import type { BikeId } from "../core/ids.ts";
import type { Intent, LogReading, Meant, NoteDefect } from "../core/reading/intent.ts";
import type { Known, Vocabulary } from "../core/reading/vocabulary.ts";
import { wantedIn } from "./airs.ts";
import { among, under } from "./among.ts";
import { withBeside } from "./beside-look.ts";
import { chargedSaid } from "./charged-said.ts";
import { defectsSaid } from "./defects-said.ts";
import { withDetails } from "./details-said.ts";
import { withJoints } from "./joints-said.ts";
import { inItsLanguage } from "./language.ts";
import { layOut } from "./layout.ts";
import { withFiguresKept, withTwiceAsked } from "./leftover.ts";
import { headingFor, NO_HEADING } from "./measured-said.ts";
import { withMended } from "./mended.ts";
import { isOthers } from "./others.ts";
import { cutAtFaults } from "./readings-beside-faults.ts";
import { readingsSaid } from "./readings-said.ts";
import { refitSaid } from "./refit-said.ts";
import { foldWord, ownWords, scan } from "./scan.ts";
import { servicesSaid } from "./service-said.ts";
import { sharesSaid } from "./shares-said.ts";
import { signsBeside, subjectOf } from "./signs-beside.ts";
import { withoutSlips } from "./slips.ts";
import { bikesLeft, leftIn, unreadOf } from "./unread.ts";
import { saysWorkDone } from "./work-lacking.ts";
import { workSaid } from "./work-said.ts";

/** Longer messages are answered, not read. */
export const LONGEST_MESSAGE = 2000;

const NOTHING: Meant = { intents: [], bikes: [], nearMiss: false, unread: [], tooLong: false, indoors: null };

/** "33f 36r": letters that touch figures stand for the ends of a bike only where both ends are said so. */
function endsTouching(text: string, { places }: Vocabulary): (letter: string) => boolean {
  const isFront = (letter: string): boolean => among(places.front, letter);
  const isRear = (letter: string): boolean => among(places.rear, letter);
  // Few messages have such a letter: the rest need not be looked through.
  let both: boolean | null = null;
  const saysBoth = (): boolean => {
    const touching = [...text.matchAll(/\d ?(\p{L})(?![\p{L}\p{N}_-])/gu)].map(([, letter = ""]) => foldWord(letter));
    return touching.some(isFront) && touching.some(isRear);
  };
  return (letter) => {
    if (!isFront(letter) && !isRear(letter)) return false;
    both ??= saysBoth();
    return both;
  };
}

/** "Front pads 3 l 2.5 r": a figure each for left and right, one behind the other, and no litres. */
function leftTouching(text: string, { measuring }: Vocabulary): (letter: string) => boolean {
  const { left, right } = measuring.sideLetters;
  let said: boolean | null = null;
  const saysSo = (): boolean =>
    [...text.matchAll(/\d ?(\p{L})[ ,/;]{1,3}\d[\d.,]{0,5} ?(?:mm)? ?(\p{L})(?![\p{L}\p{N}])/gu)].some(([, one = "", other = ""]) => {
      const [a, b] = [foldWord(one), foldWord(other)];
      return (among(left, a) && among(right, b)) || (among(right, a) && among(left, b));
    });
  return (letter) => {
    if (!among(left, letter)) return false;
    said ??= saysSo();
    return said;
  };
}

/** Reads a whole message. */
export function read(text: string, of: Known): Meant {
  if (text.length > LONGEST_MESSAGE) return { ...NOTHING, tooLong: true };
  const own = ownWords(text);
  const known = inItsLanguage(own, of);
  const layout = layOut(
    own,
    withoutSlips(
      scan(own, known.vocabulary.units, known.numbers, {
        isDateWord: (word) => {
          const { months, seasons, spanBefore } = known.vocabulary;
          return under(months, word) !== undefined || under(seasons, word) !== undefined || among(spanBefore, word);
        },
        isEnd: endsTouching(own, known.vocabulary),
        isLeft: leftTouching(own, known.vocabulary),
        isShort: (word) => among(known.vocabulary.shortWords, word),
      }),
      known,
    ),
    known,
  );
  const wanted = wantedIn(layout.tokens, layout.airs, layout.taken, known.vocabulary);
  if (wanted !== null && layout.airs?.is === "said") return { ...NOTHING, indoors: { want: wanted.text, air: layout.airs.air } };
  const intents: Intent[] = [];
  const left: (() => ReturnType<typeof leftIn>)[] = [];
  let heard = false;
  let lacks = false;
  let heading = NO_HEADING;
  for (const whole of layout.clauses) {
    if (isOthers(layout, whole)) continue;
    const back = refitSaid(layout, whole);
    const { said, rest: unfitted } = sharesSaid(layout, back?.rest ?? whole);
    const shares = said.map(({ reading }) => reading);
    if (back !== null) intents.push(...back.intents);
    intents.push(...shares);
    const services = servicesSaid(layout, unfitted);
    const clause = services?.rest ?? unfitted;
    if (services !== null) intents.push(...services.intents);
    if (clause.parts.length === 0 && (shares.length > 0 || (back ?? services) !== null)) continue;
    const charged = chargedSaid(layout, clause);
    const wrong = defectsSaid(layout, charged.rest);
    const { unlessRead } = known.vocabulary.defects;
    const done = workSaid(layout, wrong.rest);
    // What a service cost is no cost of what was done beside it.
    const beside = services === null ? done : { ...done, used: new Set([...done.used, ...services.used]) };
    const { work, readings: measured } = withDetails(layout, wrong.rest, withMended(layout, wrong.rest, withJoints(layout, wrong.rest, beside)));
    heard ||= work.heard;
    const lacking = work.heard && work.intents.length === 0 && saysWorkDone(layout, wrong.rest);
    lacks ||= lacking;
    const accounted = new Set([...work.used, ...wrong.used, ...charged.used]);
    // "Adjusted the contact breaker points at 14,300", of a bike that has none: the figure is that of the work.
    const isOfLacking = ({ kind }: LogReading): boolean => lacking && kind === "odometer";
    const shown = readingsSaid(layout, cutAtFaults(layout, clause, wrong.used), accounted, heading);
    const readings = [...(shown.every(isOfLacking) ? [] : shown), ...measured];
    heading = headingFor(layout, clause, heading, readings.length > 0);
    const signs = signsBeside(layout, clause, accounted, readings, subjectOf(intents));
    // All of a message or none: a reading is not logged past work that was said with it and not understood.
    const jobs = withBeside(layout, clause, withFiguresKept(layout, clause, work.intents, accounted, readings), accounted, readings);
    // "Rear tyre low, 28 psi": how low it is says the figure.
    const isRead = ({ kind }: NoteDefect): boolean => kind !== null && readings.some((reading) => under(unlessRead, kind)?.includes(reading.kind) === true);
    const faults = wrong.intents.filter((each) => !isRead(each));
    const came = [...withTwiceAsked(readings), ...jobs, ...charged.intents, ...faults, ...signs, ...(readings.length + shares.length > 0 ? work.missing : [])];
    intents.push(...came);
    left.push(() => leftIn(layout, clause, accounted, [...shares, ...readings, ...came, ...(services?.intents ?? [])]));
  }
  const bikes = [...new Set(layout.named.flatMap((name): readonly BikeId[] => (name.bikes.length === 1 ? name.bikes : [])))];
  // Beside nothing that was understood nothing is left to tell, and most messages come to nothing.
  const unread =
    intents.length === 0
      ? []
      : [
          ...unreadOf(
            left.flatMap((each) => each()),
            intents,
          ),
          ...bikesLeft(layout, intents),
        ];
  const nearMiss = intents.length === 0 && (heard || layout.named.length > 0 || layout.tokens.some((token) => token.is === "number" && token.units.length > 0));
  return { intents, bikes, nearMiss, unread, tooLong: false, indoors: null, ...(lacks && intents.length === 0 ? { lacks: true as const } : {}) };
}
