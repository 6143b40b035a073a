// The drawing of an adapter: every figure in it, nothing over anything else, and really drawn.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type AdapterDrawing, drawAdapter } from "../../src/picture/adapter-drawing.ts";
import { render } from "../../src/picture/render.ts";

const texts = { set: "set 59.7 N·m", wanted: "T = 65 to 70 N·m", lever: "L = 15.75 in", adapter: "E = 12.25 in", angle: "α = 45°", grip: "pull here" };
const drawing = (more: Partial<AdapterDrawing> = {}): AdapterDrawing => ({ lever: 400, adapter: 50, angle: 45, texts, ...more });

type Box = { readonly text: string; readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
/** Where the labels stand; letters of the font are on average at most some six tenths as wide as high. */
function labelsOf(svg: string): Box[] {
  return [...svg.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)" font-size="(\d+)" text-anchor="(\w+)"[^>]*>([^<]*)</gu)].map(
    ([, x, y, size, anchor, text = ""]) => {
      const wide = [...text].length * Number(size) * 0.58;
      const left = Number(x) - (anchor === "start" ? 0 : anchor === "end" ? wide : wide / 2);
      return { text, left, right: left + wide, top: Number(y) - Number(size) * 0.75, bottom: Number(y) };
    },
  );
}
const touch = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

describe("an adapter's drawing", () => {
  test("names T, L, E and α with their figures, and what is set; in line there is no α", () => {
    expect(labelsOf(drawAdapter(drawing())).map(({ text }) => text)).toEqual([texts.set, texts.lever, texts.adapter, texts.grip, texts.wanted, texts.angle]);
    expect(drawAdapter(drawing({ angle: 0 }))).not.toContain("α");
  });
  test("no label lies over another or out of the picture, at any angle and any lengths that have a setting", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 700 }), fc.integer({ min: 10, max: 500 }), fc.integer({ min: 0, max: 180 }), (lever, adapter, angle) => {
        // Folded back so far that it takes the lever away there is no setting, and no drawing.
        fc.pre(lever + adapter * Math.cos((angle * Math.PI) / 180) > lever / 4);
        const svg = drawAdapter(drawing({ lever, adapter, angle }));
        const labels = labelsOf(svg);
        const [x = 0, y = 0, wide = 0, high = 0] = /viewBox="([^"]*)"/u.exec(svg)?.[1]?.split(" ").map(Number) ?? [];
        for (const [n, a] of labels.entries()) {
          for (const b of labels.slice(n + 1)) if (touch(a, b)) throw new Error(`${lever} and ${adapter} at ${angle}°: ${a.text} over ${b.text}`);
          expect([a.left >= x, a.right <= x + wide, a.top >= y, a.bottom <= y + high]).toEqual([true, true, true, true]);
        }
      }),
      { numRuns: 1000 },
    );
  });
  test("what a member typed cannot break the drawing", async () => {
    const svg = drawAdapter(drawing({ texts: { ...texts, lever: `L = <b>&"` } }));
    expect(svg).toContain("L = &#60;b&#62;&#38;&#34;");
    expect((await render(svg, 300, "")).length).toBeGreaterThan(1000);
  });
});

describe("a picture", () => {
  const written = (text: string): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50" font-family="DejaVu Sans"><text x="5" y="30" font-size="20">${text}</text></svg>`;
  test("is a PNG as wide as asked for, its letters drawn though the machine has no font", async () => {
    const png = Buffer.from(await render(written("65 N·m α°"), 200, ""));
    expect(png.subarray(1, 4).toString("latin1")).toBe("PNG");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([200, 100]);
    const [bare, other] = [await render(written(""), 200, ""), await render(written("66 N·m α°"), 200, "")];
    expect(png.length).toBeGreaterThan(bare.length * 2);
    expect(Buffer.from(other).equals(png)).toBe(false);
  });
  test("that cannot be drawn is an error, and the next one is drawn", async () => {
    await expect(render("no picture at all", 100, "")).rejects.toThrow();
    expect((await render(written("T"), 100, "")).length).toBeGreaterThan(100);
  });
  test("several asked for at once each come back as asked", async () => {
    const [a, b] = await Promise.all([render(written("A"), 120, ""), render(written("B"), 180, "")]);
    expect([Buffer.from(a).readUInt32BE(16), Buffer.from(b).readUInt32BE(16)]).toEqual([120, 180]);
  });
});
