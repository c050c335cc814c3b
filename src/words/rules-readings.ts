import type { RuleId } from "../core/findings/rules.js";
import { pointWords } from "./proving.js";
import type { RuleWords, Say } from "./rule-words.js";

const from = (say: Say) =>
  say.others ? `From ${pointWords(say.at)} to ${pointWords(say.others)}` : `At ${say.at}`;

const gone: Readonly<Record<string, string>> = {
  "no such point": "the plan has no such point now",
  "no such branch": "the plan has no such fuse, switch or wire now",
  "no such gear": "the plan has no such gear now",
  "no such way": "the plan has no such way now",
  "second point missing": "the point of the other probe is missing",
  "same point twice": "both probes are on one point of the circuit",
};

export const readingRules = {
  "reading-outside": {
    title: "Readings are those of a sound boat",
    why: "A reading outside its band is a joint, a wire, a fuse, a battery or gear that is not what the plan says.",
    mend: "`skiffloom prove` ranks what it may be and says what to measure next.",
    says: (say) =>
      say.term("kind") === "marking"
        ? `What is at ${say.at} is marked with ${say.figure}; the plan has ${say.limit} there.`
        : `${from(say)} the meter showed ${say.figure}; a sound boat shows ${say.term("side") === "low" ? "at least" : "at most"} ${say.limit}.`,
  },
  "reading-range": {
    title: "Readings are what a meter can show there",
    why: "Millivolts written as volts, or a wrong range, send the search for a fault astray.",
    mend: "Look at the range and the unit, and read again. The reading is left out of the search until then.",
    says: (say) =>
      `${from(say)} ${say.figure} are on record, which cannot be${say.term("fits") === "–" ? "" : `: ${say.term("fits")} would fit`}.`,
  },
  "readings-differ": {
    title: "Two readings of one thing agree",
    why: "Where two readings of one thing differ by more than their meters err, something moved between them: a loose contact, a warm joint, another load.",
    mend: "Read both again, moving the wires; the last one counts until then.",
    says: (say) => `${from(say)} the meter showed ${say.limit} once and ${say.figure} another time.`,
  },
  "reading-unplaced": {
    title: "Readings have a place in the plan",
    why: "A reading whose point is no longer in the plan stays on record, but nothing can be said about it.",
    mend: "Name the point as the plan has it now, or leave it as history.",
    says: (say) =>
      `${from(say)} a reading was taken, but ${gone[say.term("why")] ?? "it has no place"} (${say.term("name")}).`,
    unchecked: (say) =>
      `${from(say)} a reading was taken, but ${gone[say.term("why")] ?? "it has no place"} (${say.term("name")}).`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
