// What a text may repeat to be slow to read: figures, names, marks, dates and what is wrong.

export const SLOW_PIECES = [
  "front 33 rear 36 ",
  "33, ",
  "on Heron ",
  "did the oil ",
  "tread 4 ",
  "intake 0.10 ",
  "1.1.1.1.",
  "'3",
  "yesterday ",
  "3 May ",
  "£5 ",
  "Kette 30 mm ",
  "am 3. ",
  "milky oil and ",
  "valve cap missing and ",
  "front flat rear 36 ",
  "dot 22/23 ",
  "battery 12.6 V ",
  "a b c ",
];
