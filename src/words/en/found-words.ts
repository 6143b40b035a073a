// What people type as found at an item of a job, in English: the signs of a fault, and what says that all is well.

import type { FoundWords } from "../../core/reading/found-words.ts";

export const ENGLISH_FOUND_WORDS: FoundWords = {
  wrong: [
    ...["cracked", "crack", "cracks", "cracking", "split", "splits", "perished", "crazed", "torn", "tear", "frayed", "fraying", "chafed", "chafing"],
    ...["kinked", "bulging", "bulge", "swollen", "leak", "leaks", "leaking", "weeping", "weeps", "dripping", "seeping", "damp", "wet", "soaked"],
    ...["play", "loose", "slack", "wobbles", "wobbly", "rattles", "notchy", "rough", "grinding", "grinds", "seized", "stuck", "sticks", "sticking", "sticky"],
    ...["binding", "binds", "dragging", "drags", "jammed", "stiff", "bent", "dented", "dent", "buckled", "warped", "twisted", "broken", "broke", "snapped"],
    ...["missing", "damaged", "burnt", "melted", "corroded", "contaminated", "oily", "glazed", "scored", "hooked", "out of true", "worn out", "worn through"],
    ...["worn down", "past it", "finished", "shot", "knackered", "dead", "failed", "faulty", "not working", "doesn't work", "does not work", "won't close"],
    ...["beyond limit", "below limit", "past the limit", "below the limit", "below minimum", "under the minimum", "cut", "punctured", "nail"],
  ],
  fine: [
    ...["ok", "okay", "fine", "good", "great", "perfect", "all good", "all right", "alright", "well", "clean", "tight", "dry", "smooth", "free", "sound"],
    ...["as new", "like new", "within limits", "in limits", "within spec", "in spec", "nothing", "nothing found", "no problem", "no problems", "no wear"],
    ...["no play", "no cracks", "no leaks", "in order", "healthy", "plenty left", "snaps shut", "snaps back"],
  ],
  none: ["no", "not", "none", "without", "nor", "isn't", "aren't", "never", "free of", "for", "against", "if"],
  setRight: [
    "loose",
    "slack",
    "tight",
    "too tight",
    "too loose",
    "stiff",
    "play",
    "oily",
    "sticky",
    "worn out",
    "worn down",
    "worn through",
    "finished",
    "dead",
    "shot",
  ],
};
