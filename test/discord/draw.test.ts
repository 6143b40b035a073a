// Replies as messages: within the platform's limits, and nothing is cut in silence. Source of the limits: its documentation, message and component reference.

import { describe, expect, test } from "vitest";
import type { Action, ActionId, Said } from "../../src/chat/reply.ts";
import { actionOfPart, markOf, modalOf, type Page, pagesOf } from "../../src/discord/draw.ts";
import { faultsOf } from "./schemas.ts";

const said = (more: Partial<Said>): Said => ({ title: null, lines: [], caution: null, actions: [], files: [], ...more });
const press = (n: number): Action => ({ id: `a${n}` as ActionId, label: `Action ${n}`, kind: "press" });
const pick = (options: number, id = "p"): Action => ({
  ...({ id: id as ActionId, label: "Which?", kind: "pick", min: 1, max: 1 } as const),
  options: Array.from({ length: options }, (_, n) => ({ value: `v${n}`, label: `Choice ${n}` })),
});
const sentOf = (page: Page) => ({ content: page.content, components: page.components.map((row) => row.toJSON()), flags: 4 });
type Part = { readonly type: number; readonly custom_id: string; readonly label?: string; readonly options?: readonly { value: string; label: string }[] };
const partsOf = (pages: readonly Page[]) => pages.flatMap((page) => page.components.map((row) => row.toJSON().components as unknown as readonly Part[]));
/** The pages, each held against the published description. */
function drawn(more: Partial<Said>): readonly Page[] {
  const pages = pagesOf(said(more), "More");
  for (const page of pages) expect(faultsOf("MessageCreateRequest", sentOf(page))).toEqual([]);
  return pages;
}

describe("text", () => {
  test("title, lines and caution, each where it belongs", () => {
    const [page] = drawn({ title: "Heron\n# big", lines: ["- Oil: due", "14 mi"], caution: "Mind your fingers." });
    expect(page?.content).toBe("**Heron \\# big**\n- Oil: due\n14 mi\n> Mind your fingers.");
  });
  test("a reply of buttons alone is still a message", () => {
    expect(drawn({ actions: [press(1)] })).toHaveLength(1);
  });
  test("40 due items of long names go on in further messages, in order, and the buttons come with the last", () => {
    const lines = Array.from({ length: 40 }, (_, n) => `- ${n} ${"_Front_brake_caliper_".repeat(6)}: due at 12,000 mi or May 2027`);
    const pages = drawn({ lines, actions: [press(1)] });
    expect(pages.length).toBeGreaterThan(2);
    expect(pages.flatMap((page) => page.content.split("\n")).map((line) => line.split(" ")[1])).toEqual(lines.map((_, n) => String(n)));
    expect(pages.map((page) => page.components.length)).toEqual([...pages.slice(1).map(() => 0), 1]);
  });
  test("a line longer than a message goes on in the next", () => {
    const words = Array.from({ length: 900 }, (_, n) => `w${n}`);
    const pages = drawn({ lines: [words.join(" ")] });
    expect(pages.flatMap((page) => page.content.split(/\s/u))).toEqual(words);
  });
});

describe("what can be pressed and picked", () => {
  test.each([
    [1, [1]],
    [5, [5]],
    [6, [5, 1]],
    [15, [5, 5, 5]],
  ])("%i buttons, five to a row", (count, rows) => {
    const actions = Array.from({ length: count }, (_, n) => press(n));
    expect(partsOf(drawn({ actions })).map((row) => row.length)).toEqual(rows);
  });
  test.each([16, 25, 26, 80])("%i buttons become lists, and each is there", (count) => {
    const actions = Array.from({ length: count }, (_, n) => press(n));
    const lists = partsOf(drawn({ actions })).flat();
    expect(lists.every(({ type }) => type === 3)).toBe(true);
    expect(lists.flatMap((list) => (list.options ?? []).map(({ value }) => value))).toEqual(actions.map(({ id }) => id));
  });
  test.each([25, 26, 60])("%i choices in lists of 25, and whichever is picked belongs to the same action", (count) => {
    const lists = partsOf(drawn({ actions: [pick(count)] })).flat();
    expect(lists.map(({ custom_id }) => actionOfPart(custom_id))).toEqual(lists.map(() => "p"));
    expect(lists.flatMap((list) => list.options ?? [])).toHaveLength(count);
  });
  test("nothing to choose from makes no list", () => {
    expect(partsOf(drawn({ lines: ["x"], actions: [pick(0)] }))).toEqual([]);
  });
  test("more than five rows go on in further messages", () => {
    const pages = drawn({ lines: ["x"], actions: Array.from({ length: 12 }, (_, n) => pick(3, `p${n}`)) });
    expect(pages.map((page) => page.components.length)).toEqual([5, 5, 2]);
    expect(
      partsOf(pages)
        .flat()
        .map(({ custom_id }) => custom_id),
    ).toEqual(Array.from({ length: 12 }, (_, n) => `p${n}`));
  });
  test("a label that is too long says that it goes on", () => {
    const [row] = partsOf(drawn({ actions: [{ ...press(1), label: "x".repeat(200) }] }));
    expect(row?.[0]?.label).toMatch(/^x{79}…$/u);
  });
});

describe("a reply that can be found again", () => {
  const MARK = "0193-delivery";
  const own: Action = { id: `1.done.${MARK}.bike.0` as ActionId, label: "Done", kind: "press" };
  const marks = (pages: readonly Page[]) =>
    pages.map((page) =>
      markOf(
        partsOf([page]).flatMap((row) => row.flatMap((part) => [part.custom_id, ...(part.options ?? []).map(({ value }) => value)])),
        MARK,
      ),
    );
  const marked = (more: Partial<Said>): readonly Page[] => {
    const pages = pagesOf(said(more), "More", { mark: MARK });
    for (const page of pages) expect(faultsOf("MessageCreateRequest", sentOf(page))).toEqual([]);
    return pages;
  };
  test("one page is known by its own buttons", () => {
    expect(marks(marked({ lines: ["x"], actions: [own] }))).toEqual(["whole"]);
  });
  test("each of several pages says which it is, and the last that it is the last", () => {
    const lines = Array.from({ length: 60 }, (_, n) => `${n} ${"x".repeat(90)}`);
    const pages = marked({ lines, actions: [own] });
    expect(marks(pages)).toEqual([...pages.slice(1).map((_, n) => n), "whole"]);
    expect(partsOf(pages.slice(0, 1)).flat()[0]?.label).toBe(`1/${pages.length}`);
  });
  test("rows enough to fill a message leave room for the mark", () => {
    const pages = marked({ lines: ["x"], actions: [...Array.from({ length: 9 }, (_, n) => pick(3, `p${n}`)), own] });
    expect(marks(pages)).toEqual([0, 1, "whole"]);
  });
  test("a list of its buttons is known too", () => {
    expect(marks(marked({ lines: ["x"], actions: Array.from({ length: 20 }, (_, n) => ({ ...own, id: `1.done.${MARK}.b${n}.0` as ActionId })) }))).toEqual([
      "whole",
    ]);
  });
  test("another's buttons are not taken for it", () => {
    expect(markOf(["1.done.0193.bike.0", "page.0.2.0193-delivery2"], MARK)).toBe(null);
  });
});

test("a picture comes with the words that stand for it", () => {
  const [page] = pagesOf(
    said({ lines: ["x"], files: [{ name: "wear.png", type: "image/png" as const, bytes: new Uint8Array([1]), alt: "Tread over distance, falling" }] }),
    "More",
  );
  expect(page?.files.map((file) => [file.name, file.description])).toEqual([["wear.png", "Tread over distance, falling"]]);
});

test("a form of five fields with long words fits", () => {
  const field = (n: number) => ({
    ...{ name: `f${n}`, label: "Last done, and how do you know? ".repeat(3), required: n === 0, value: "x", hint: "h".repeat(150) },
    ...(n === 4 ? ({ kind: "choice", options: [{ value: "x", label: "y".repeat(120) }] } as const) : ({ kind: "line", options: [] } as const)),
  });
  const modal = modalOf("form", { title: "t".repeat(60), fields: [0, 1, 2, 3, 4].map(field) });
  expect(faultsOf("ModalInteractionCallbackRequest", { type: 9, data: modal.toJSON() })).toEqual([]);
});
