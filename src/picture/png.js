// Pixels as a PNG (W3C, Portable Network Graphics, third edition) with a palette: a drawing has few inks. A third of the time and half the size of one that names
// each pixel's colour, which the drawing library would write. Plain JavaScript, since the drawing thread starts without a loader.

import { deflateSync } from "node:zlib";

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
/** As many as a byte names. */
const MOST_COLORS = 256;
/** Bits of each channel that are told apart: all of them, else fewer until the palette holds. The edges of letters differ in the last ones, and no eye sees it. */
const MASKS = [0xff, 0xfc, 0xf8, 0xf0, 0xe0, 0xc0];
/** Of zlib's levels the last of the quick ones. */
const LEVEL = 2;

/** The polynomial's table (annex D of the standard). */
const CRC = new Uint32Array(256).map((_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

/**
 * A PNG of opaque pixels.
 * @param {Uint8Array} pixels red, green, blue and alpha of each, row by row; alpha is taken to be full
 * @param {number} width in pixels
 * @param {number} height in pixels
 * @returns {Uint8Array} the file
 */
export function pngOf(pixels, width, height) {
  // Signed, since the engine keeps those as plain numbers: an opaque pixel has its highest bit set, and unsigned it would be boxed.
  const words = new Int32Array(pixels.slice().buffer);
  for (const mask of MASKS) {
    const indexed = indexedBy(words, width, height, mask);
    if (indexed === null) continue;
    const head = Buffer.alloc(13);
    head.writeUInt32BE(width, 0);
    head.writeUInt32BE(height, 4);
    // A byte a pixel, each naming a colour of the palette.
    head.set([8, 3, 0, 0, 0], 8);
    const palette = Uint8Array.from(indexed.colors.flatMap((color) => bytesOf(color).slice(0, 3)));
    return Buffer.concat([
      SIGNATURE,
      chunk("IHDR", head),
      chunk("PLTE", palette),
      chunk("IDAT", deflateSync(indexed.rows, { level: LEVEL })),
      chunk("IEND", []),
    ]);
  }
  throw new Error("no palette holds the picture");
}

/**
 * Each pixel's place in the palette, every row after a byte that says it is not filtered; null when the palette does not hold. Colours that a mask makes one are drawn as the first of them.
 * @param {Int32Array} words
 * @param {number} width
 * @param {number} height
 * @param {number} mask
 * @returns {{ rows: Uint8Array, colors: number[] } | null}
 */
function indexedBy(words, width, height, mask) {
  const all = mask | (mask << 8) | (mask << 16) | (mask << 24);
  const places = new Map();
  const colors = [];
  const rows = new Uint8Array(height * (width + 1));
  // The first pixel is as none before it.
  let [from, to, last, place] = [0, 0, ~(words[0] ?? 0), 0];
  for (let y = 0; y < height; y++) {
    to++;
    for (let x = 0; x < width; x++) {
      const color = /** @type {number} */ (words[from++]);
      // Most pixels are as the one before.
      if (color !== last) {
        last = color;
        const key = color & all;
        const known = places.get(key);
        if (known === undefined) {
          if (colors.length === MOST_COLORS) return null;
          places.set(key, colors.length);
          place = colors.push(color) - 1;
        } else place = known;
      }
      rows[to++] = place;
    }
  }
  return { rows, colors };
}

/** @param {number} word @returns {number[]} its four bytes as they lie in memory */
const bytesOf = (word) => [...new Uint8Array(Int32Array.of(word).buffer)];

/** @param {string} name @param {ArrayLike<number>} data */
function chunk(name, data) {
  const made = Buffer.alloc(12 + data.length);
  made.writeUInt32BE(data.length, 0);
  made.write(name, 4, "latin1");
  made.set(data, 8);
  let crc = 0xffffffff;
  for (let at = 4; at < 8 + data.length; at++) crc = /** @type {number} */ (CRC[(crc ^ /** @type {number} */ (made[at])) & 0xff]) ^ (crc >>> 8);
  made.writeUInt32BE((crc ^ 0xffffffff) >>> 0, 8 + data.length);
  return made;
}
