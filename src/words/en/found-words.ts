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
    ...["stripped", "sheared", "came off", "fell off", "tight spot", "tight spots", "stiff spot", "rough spot", "too tight", "useless", "unusable"],
    ...["beyond limit", "below limit", "past the limit", "below the limit", "below minimum", "under the minimum", "cut", "punctured", "nail"],
  ],
  fine: [
    ...["ok", "okay", "fine", "good", "great", "perfect", "all good", "all right", "alright", "well", "clean", "smooth", "free", "sound", "clear"],
    ...["as new", "like new", "new", "within limits", "within limit", "in limits", "within spec", "in spec", "nothing", "nothing found"],
    ...["in order", "healthy", "plenty left", "plenty", "snaps shut", "snaps back", "snap shut"],
    ...["snap back", "springs back", "spring back", "works", "work", "working", "cuts the engine", "cut the engine", "cuts out", "stops the engine"],
    ...["stop the engine", "moves freely", "move freely", "turns freely", "turn freely", "spins freely", "spin freely", "freely", "true", "straight"],
  ],
  tight: ["tight", "all tight", "dry", "firm", "snug"],
  beside: [
    ...["all", "both", "each", "everything", "the", "is", "are", "was", "were", "be", "it", "they", "them", "that", "looks", "look", "looked", "looking"],
    ...["seems", "seem", "feels", "feel", "still", "very", "really", "quite", "perfectly", "completely", "and", "to", "so", "found", "now", "there", "here"],
    ...["has", "have", "had", "front", "rear", "left", "right", "inner", "outer", "upper", "lower", "side", "sides", "end", "ends", "checked", "inspected"],
    ...["sign", "signs", "of", "a", "an", "any", "visible", "obvious", "noticeable", "oil", "fluid", "fuel", "coolant", "more", "further", "or"],
  ],
  none: ["no", "not", "none", "nothing", "without", "nor", "isn't", "aren't", "wasn't", "weren't", "never", "doesn't", "don't", "won't", "can't", "cannot"],
  sought: ["free of", "free from", "for", "against", "if"],
  blemish: [
    ...["wear", "worn", "rust", "rusty", "corrosion", "damage", "movement", "wobble", "noise", "noises", "problem", "problems", "issue", "issues", "fault"],
    ...["faults", "defect", "defects", "notch", "notches", "scoring", "scratches", "marks", "bad", "wrong", "hanging", "seepage", "sweating", "runout"],
  ],
  setRight: {
    set: ["loose", "slack", "too tight", "too loose", "play", "out of adjustment"],
    cleaned: ["stiff", "sticky", "oily", "dirty", "dusty", "dry", "filthy", "gummed up", "clogged", "blocked"],
    renewed: [
      ...["worn", "worn out", "worn down", "worn through", "finished", "dead", "shot", "past it", "black", "dark", "brown", "sooty", "old", "used up"],
      ...["very dark", "clogged", "blocked"],
    ],
    filled: ["low", "empty", "a bit low", "a little low"],
  },
  made: ["greased", "regreased", "lubricated", "lubed", "oiled", "cleaned", "tightened", "torqued", "adjusted", "set", "renewed", "replaced", "bled", "full"],
};
