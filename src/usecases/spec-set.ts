// Entering a spec, and taking one back. A bike has one entry a key and load; another takes its place and the one before stays on record.

import type { BikeId } from "../core/ids.ts";
import type { SpecSource, SpecUse } from "../core/spec/spec.ts";
import { readSpecFigure, readSpecSource } from "../message/read-spec.ts";
import type { SpecRecord } from "../store/specs.ts";
import { Conflict, type Repos } from "../store/store.ts";
import { SPEC_KEYS, type SpecKey } from "../trade/spec-keys.ts";
import { keepMember } from "./add-bike.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, pick } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";
import { answerOf, keysMeant, type SpecAnswer } from "./spec-ask.ts";
import { whichBike } from "./which-bike.ts";

/** What was saved: the answer as it now stands, and the entry to take back. */
export type SpecSaved = { readonly spec: string; readonly rev: number; readonly key: SpecKey; readonly answer: SpecAnswer };

const LONGEST_WORDS = 120;

/** `source` as typed: "workshop manual, 2019 edition, p. 142". */
export type SpecInput = { readonly what: string; readonly value: string; readonly source?: string; readonly bike?: string };

export async function enterSpec(ctx: Ctx, input: SpecInput): Promise<Result<SpecSaved>> {
  return writing(ctx, async (q, all) => {
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const meant = keysMeant(ctx, which.value, input.what);
    if (meant.is === "refused") return meant;
    const { keys, own, use } = meant.value;
    const read = keys.map((key) => ({ key, holds: holdsOf(ctx, key, input.value) }));
    const fitting = read.flatMap(({ key, holds }) => (holds.is === "done" ? [{ key, holds: holds.value }] : []));
    // Anything can be words, so a figure that fits goes before them: "oil 3.2 L" is a fill, "plug QX-8" the plug.
    const figures = fitting.filter(({ holds }) => holds.is === "figure");
    const able = figures.length > 0 ? figures : fitting;
    const only = able.length === 1 ? able[0] : able.find(({ key }) => key === own);
    const [first] = read;
    if (only === undefined)
      return first?.holds.is === "refused" && read.length === 1
        ? first.holds
        : refused({ why: "which spec", typed: input.what, keys: able.length > 0 ? able.map(({ key }) => key) : keys });
    return save(q, ctx, which.value, only.key, use, only.holds, input.value, readSpecSource(input.source ?? ""));
  });
}

/** From a form, where each part has a field of its own. */
export async function enterSpecParts(
  ctx: Ctx,
  input: {
    readonly bike: BikeId;
    readonly key: SpecKey;
    readonly use: SpecUse | null;
    readonly value: string;
    readonly manual: string;
    readonly edition: string;
    readonly page: string;
  },
): Promise<Result<SpecSaved>> {
  return writing(ctx, async (q, all) => {
    const g = pick(all, input.bike);
    if (g === null) return refused({ why: "not yours" });
    const holds = holdsOf(ctx, input.key, input.value);
    if (holds.is === "refused") return holds;
    const [manual, edition, page] = [input.manual, input.edition, input.page].map((each) => each.trim());
    const source = manual === "" && page === "" ? null : { manual: manual || "manual", edition: edition || null, page: page || null };
    return save(q, ctx, g, input.key, input.use, holds.value, input.value, source);
  });
}

/** Takes an entry back: what it replaced stands again, else nothing does. */
export async function undoSpec(ctx: Ctx, input: { readonly spec: string; readonly rev: number }): Promise<Result<SpecSaved>> {
  return writing(ctx, async (q, all) => {
    const record = await q.specs.byId(input.spec);
    if (record === null) return refused({ why: "gone" });
    const g = pick(all, record.bike);
    if (g === null || record.by !== ctx.who.member) return refused({ why: "not yours" });
    if (record.rev !== input.rev || record.state === "withdrawn") return refused({ why: "already done" });
    const before = (await q.specs.history(record.id)).find(({ rev }) => rev === record.rev - 1);
    const stands = before === undefined || before.state === "withdrawn" ? { ...record, state: "withdrawn" as const } : before;
    return kept(q, ctx, g, { ...stands, rev: record.rev + 1, by: ctx.who.member, at: ctx.now, why: "undone" });
  });
}

function holdsOf(ctx: Ctx, key: SpecKey, typed: string): Result<SpecRecord["holds"]> {
  const { holds, end, unit } = SPEC_KEYS[key];
  if (typed.trim() === "" || typed.length > LONGEST_WORDS) return refused({ why: "not a spec", key, typed, because: "not read" });
  if (holds === "words") return done({ is: "words" });
  const usual = unit ?? (holds === "pressure" ? ctx.who.pressure : holds === "torque" ? ctx.who.torque : null);
  const read = readSpecFigure(typed, { holds, end, unit }, usual, ctx.vocabulary, ctx.who.numbers);
  return typeof read === "string" ? refused({ why: "not a spec", key, typed, because: read }) : done(read);
}

async function save(
  q: Repos,
  ctx: Ctx,
  g: Garaged,
  key: SpecKey,
  said: SpecUse | null,
  holds: SpecRecord["holds"],
  typed: string,
  source: SpecSource | null,
): Promise<Result<SpecSaved>> {
  const use = SPEC_KEYS[key].byUse === true ? said : null;
  const standing = (await q.specs.ofBikes([g.bike.id])).find((spec) => spec.key === key && spec.use === use);
  const rest = { bike: g.bike.id, key, use, holds, typed: typed.trim(), source, by: ctx.who.member, at: ctx.now, state: "live", why: null } as const;
  return kept(q, ctx, g, { ...rest, id: standing?.id ?? ctx.newId(), rev: (standing?.rev ?? 0) + 1 });
}

async function kept(q: Repos, ctx: Ctx, g: Garaged, record: SpecRecord): Promise<Result<SpecSaved>> {
  await keepMember(q, ctx);
  if (record.rev === 1) await q.specs.add(record);
  else if (!(await q.specs.revise(record))) throw new Conflict("spec changed meanwhile");
  await touch(q, ctx, [g.bike.id]);
  const key = record.key as SpecKey;
  return done({ spec: record.id, rev: record.rev, key, answer: await answerOf(q, ctx, g, { keys: [key], use: record.use }) });
}

async function writing(ctx: Ctx, work: (q: Repos, all: readonly Garaged[]) => Promise<Result<SpecSaved>>): Promise<Result<SpecSaved>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<SpecSaved>> => {
    const all = await ownGarage(q, ctx);
    return all.length === 0 ? noneLeft(q, ctx) : work(q, all);
  });
  return onceHeard(acted);
}
