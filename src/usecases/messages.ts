// A plain message: read, and either logged whole, asked about, answered, or passed over in silence.

import type { BikeId } from "../core/ids.ts";
import type { Conversion } from "../core/quantity/conversion.ts";
import { askConvert } from "../core/quantity/convert-question.ts";
import type { AirSaid } from "../core/reading/detail.ts";
import type { Intent, Meant } from "../core/reading/intent.ts";
import { kindRow } from "../core/reading/kinds.ts";
import { tellsBeltWidth } from "../message/belt-width.ts";
import { bikesTold } from "../message/first-bikes.ts";
import { forCommand } from "../message/for-a-command.ts";
import { howAsked } from "../message/how-asked.ts";
import { read } from "../message/read.ts";
import { readChart } from "../message/read-chart.ts";
import type { Repos } from "../store/store.ts";
import { answeredPlainly } from "./answer-question.ts";
import { batteriesTold } from "./battery-put.ts";
import { asOpenPointAsks } from "./check-point.ts";
import type { Ctx } from "./context.ts";
import { withTools } from "./convert.ts";
import { askedOfFaults } from "./found-wrong.ts";
import type { Garaged } from "./garage.ts";
import { pressureIndoors } from "./judge-tyres.ts";
import { settle } from "./log-set.ts";
import type { FirstSeen, Heard, MessageOutcome } from "./message-outcome.ts";
import { itemNotFitted } from "./not-fitted.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { specsHeard } from "./specs-heard.ts";
import { tyreMarksHeard } from "./tyre-marks-heard.ts";

/** Reads a message and acts on it once. */
export async function hear(ctx: Ctx, heard: Heard): Promise<MessageOutcome> {
  // Small talk is by far the most of what is said in a channel: it is read without touching the database.
  if (!heard.addressed && !mayHoldAReading(heard.text)) return { is: "silence" };
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<MessageOutcome> => {
    const all = await ownGarage(q, ctx);
    const question = heard.addressed ? unitsAsked(ctx, heard.text) : null;
    // Whoever names the unit wanted asks; a figure alone may be a reading.
    if (question?.is === "converted" && question.named) return answeredIn(q, ctx, question);
    if (all.length === 0) {
      const known = knownOf(ctx, []);
      const { intents } = read(heard.text, known);
      const told = bikesTold(heard.text, known);
      const nothing = intents.length === 0 && told.length === 0;
      const answer = nothing && question !== null ? await unitsAnswered(q, ctx, question, heard.text) : null;
      if (answer !== null) return answer;
      if (nothing && !heard.addressed) return { is: "silence" };
      return { is: "no bikes", gone: (await q.bikes.ofOwner(ctx.who.member)).map((bike) => bike.nickname), seen: told.length > 0 ? told : firstSeen(intents) };
    }
    // Its figures are services, and no odometer was read.
    if (isChart(ctx, heard.text)) return heard.addressed ? { is: "file sent", file: "chart" } : { is: "silence" };
    const kinds = heard.addressed ? howAsked(heard.text, knownOf(ctx, all)) : [];
    if (kinds.length > 0) return { is: "how to", kinds };
    const meant = read(heard.text, knownOf(ctx, all));
    const batteries = heard.addressed ? batteriesTold(all, heard.text, knownOf(ctx, all)) : null;
    if (batteries !== null && meant.intents.every(({ gaps }) => gaps.length > 0)) return { is: "battery told", bikes: batteries };
    if (heard.again === true && meant.intents.length === 0) await q.drafts.letGoOfMessage(heard.message);
    if (meant.tooLong) return heard.addressed ? { is: "too long" } : { is: "silence" };
    if (meant.indoors !== null) return heard.addressed ? setIndoorsAsked(ctx, meant.indoors) : { is: "silence" };
    if (meant.intents.length === 0)
      return (
        (heard.addressed && /\p{Nd}/u.test(heard.text) && tellsBeltWidth(heard.text, ctx.vocabulary)
          ? { is: "cannot convert", why: { why: "belt width not kept" } }
          : null) ??
        (await answeredPlainly(q, ctx, all, heard)) ??
        (heard.addressed ? figureTold(all, heard.text) : null) ??
        (question === null ? null : await unitsAnswered(q, ctx, question, heard.text)) ??
        tyreMarksAsked(ctx, all, heard.text, meant.bikes, heard.addressed) ??
        (heard.addressed ? await specsHeard(q, ctx, all, heard.text) : null) ??
        (heard.addressed && heard.file !== undefined ? { is: "file sent", file: heard.file } : null) ??
        (heard.addressed ? notUnderstood(ctx, all, heard.text, meant.bikes) : (workLacking(ctx, all, heard.text, meant) ?? { is: "silence" }))
      );
    // "Tyres are from 2017", said to the others.
    if (!heard.addressed && meant.intents.every(isYearAlone)) return { is: "silence" };
    return settle(q, ctx, all, askedOfFaults(ctx, all, await asOpenPointAsks(q, ctx, meant.intents), heard.text), {
      source: heard.message,
      typed: heard.text,
      message: heard.message,
      unread: meant.unread,
      ...(heard.again === true ? { again: true } : {}),
    });
  });
  return acted.first ? acted.value : { is: "seen before" };
}

/** In a channel only where each says which end it is on: a size alone may be talk of tyres. */
function tyreMarksAsked(ctx: Ctx, all: readonly Garaged[], text: string, named: readonly BikeId[], addressed: boolean): MessageOutcome | null {
  const tyres = tyreMarksHeard(ctx, all, text, named);
  return tyres.length === 0 || (!addressed && tyres.some(({ place }) => place === null)) ? null : { is: "tyre marks", tyres };
}

const isYearAlone = (intent: Intent): boolean => intent.gaps.some((gap) => gap.need === "sure" && gap.because === "year alone");

function setIndoorsAsked(ctx: Ctx, { want, air }: NonNullable<Meant["indoors"]>): MessageOutcome {
  const typed = ({ value, unit }: AirSaid["garage"]): string => `${value} ${unit}`;
  const garage = typed(air.garage);
  // A bare figure is in the only unit that tyres are set so in.
  const usual = Object.entries(kindRow("cold pressure").usual).filter(([, [low, high]]) => Number(want) >= low && Number(want) <= high);
  const bare = /\p{L}/u.test(want) || ctx.who.pressure !== null || usual.length !== 1 ? "" : ` ${usual[0]?.[0] ?? ""}`;
  const answer = pressureIndoors(ctx, { want: `${want}${bare}`, garage, road: air.road === null ? garage : typed(air.road) });
  return answer.is === "done" ? { is: "indoors", answer: answer.value } : { is: "not indoors", why: answer.why };
}

/** Air that was added, or a value that is asked about: its figure is no question about units. */
function figureTold(all: readonly Garaged[], text: string): MessageOutcome | null {
  const command = forCommand(text);
  return command === "air changed" || command === "value asked" ? { is: "not understood", bikes: all.map((g) => g.bike.nickname), command } : null;
}

/** Work that was done, said in a channel, at what none of the bikes meant has: told there too, since it would else be lost. */
function workLacking(ctx: Ctx, all: readonly Garaged[], text: string, meant: Meant): MessageOutcome | null {
  if (meant.lacks !== true) return null;
  const told = notUnderstood(ctx, all, text, meant.bikes);
  return told.is === "not understood" && told.otherwise !== undefined && told.command === undefined ? told : null;
}

/** Where it names work at what the bikes meant have not, that is said. */
function notUnderstood(ctx: Ctx, all: readonly Garaged[], text: string, named: readonly BikeId[]): MessageOutcome {
  const meant = all.filter(({ bike }) => named.length === 0 || named.includes(bike.id));
  const otherwise = meant.map((g) => itemNotFitted(ctx, g, text));
  const [first] = otherwise;
  const command = forCommand(text);
  if (command !== null) return { is: "not understood", bikes: (meant.length > 0 ? meant : all).map((g) => g.bike.nickname), command };
  const nothing = { is: "not understood", bikes: all.map((g) => g.bike.nickname) } as const;
  return first === undefined || first === null || otherwise.includes(null) ? nothing : { ...nothing, otherwise: first };
}

/** A manual's chart pasted as it is: a line of services, and lines with letters below it. */
function isChart(ctx: Ctx, text: string): boolean {
  if (text.split("\n").length < 3 || text.length > LONGEST_CHART) return false;
  const chart = readChart(text, "mi", { vocabulary: ctx.vocabulary, numbers: ctx.who.numbers });
  return chart !== null && chart.marks.length > 1 && chart.rows.filter(({ cells }) => cells.some((letters) => letters.length > 0)).length > 1;
}
/** More than any platform takes in one message. */
const LONGEST_CHART = 4000;

function firstSeen(intents: readonly Intent[]): readonly FirstSeen[] {
  const odometer = intents.find((intent) => intent.do === "log reading" && intent.kind === "odometer");
  const named = intents.flatMap((intent) => intent.gaps).find((gap) => gap.need === "bike");
  const seen = { name: named?.need === "bike" ? named.named : null, odometer: odometer?.do === "log reading" ? odometer.typed.text : null };
  return seen.name === null && seen.odometer === null ? [] : [seen];
}

/** "60-80 in-lb in Nm?", "what's 7/16 in metric": answered where it is a question, or says into what. */
function unitsAsked(ctx: Ctx, text: string): Conversion | null {
  return text.length > LONGEST_QUESTION || !/\p{Nd}|[¼½¾⅛⅜⅝⅞]/u.test(text) ? null : askConvert(text, null, ctx.vocabulary, ctx.who.numbers);
}

const answeredIn = async (q: Repos, ctx: Ctx, question: Extract<Conversion, { is: "converted" }>): Promise<MessageOutcome> => ({
  is: "converted",
  conversion: await withTools(question, () => q.wrenches.ofOwner(ctx.who.member)),
});

/** A question that cannot be answered says why, if it is certainly one or only the unit is in doubt; else it is none. */
async function unitsAnswered(q: Repos, ctx: Ctx, question: Conversion, typed: string): Promise<MessageOutcome | null> {
  if (question.is === "converted") return answeredIn(q, ctx, question);
  const { why: because, candidates, word, said } = question;
  if (!question.named && candidates.length === 0) return null;
  return { is: "cannot convert", why: { why: "cannot convert", typed: said ?? typed, because, to: null, candidates, word } };
}
const LONGEST_QUESTION = 80;

/** Anything with a digit, or long enough to name work; the reader decides the rest. */
const mayHoldAReading = (text: string): boolean => /\p{Nd}|[¼½¾⅛⅜⅝⅞]/u.test(text) || /\b\w{3,}\s+\w{3,}/u.test(text);
