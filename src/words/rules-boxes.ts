import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords, Say } from "./rule-words.js";

const proof = (say: Say) =>
  say.term("proof") === "proven" ? "" : "; no arrangement was found, though one might exist";
const cracks = (say: Say) => (say.term("cracks") === "yes" ? "; this material cracks there" : "");

const holePlaces: Readonly<Record<string, (say: Say) => string>> = {
  "near-corner": (say) => `sits ${say.figure} from the corner inside; its nut needs ${say.limit}`,
  "near-base": (say) => `sits ${say.figure} above the base; its nut needs ${say.limit}`,
  "near-lid": (say) => `sits ${say.figure} under the lid's lip; ${say.limit} keeps it clear of the seal`,
  "on-boss": (say) => `sits ${say.figure} from a corner post; its nut needs ${say.limit}`,
  "off-the-face": () => "reaches over the edge of its face",
  "closed-face": () => "is in a face that is not to be drilled",
};

export const boxRules = {
  "gland-fit": {
    title: "Every cable into a box has a gland that holds it",
    why: "A seal that does not close on the cable lets water run along it into the box, and does not hold it when it is pulled.",
    mend: "A gland of another size or with another insert, a rounder or thicker cable, or a thinner wall at the hole.",
    says: (say) => {
      switch (say.term("problem")) {
        case "cable-not-round":
          return `${say.others} into ${say.at} is flat (${say.figure} by ${say.limit}): a round seal leaks beside it.`;
        case "wall-too-thick":
          return `The wall of ${say.at} is ${say.figure}: the thread of an ${say.term("size")} gland for ${say.others} reaches through ${say.limit} at most.`;
        default:
          return say.term("side") === "between"
            ? `${say.others} into ${say.at} is ${say.figure} thick and falls between two glands of the series.`
            : `${say.others} into ${say.at} is ${say.figure} thick; the ${say.term("side") === "thin" ? "smallest gland holds from" : "largest gland takes"} ${say.limit}.`;
      }
    },
  },
  "entries-fit": {
    title: "A box has room for all its entries",
    why: "Nuts that touch cannot be tightened, and a wall that is more hole than wall breaks.",
    mend: "A larger box, fewer spare entries, or two ways in one cable.",
    says: (say) =>
      say.term("problem") === "entry-too-large"
        ? `No face of ${say.at} is large enough for ${say.others}.`
        : `${say.term("from") === "catalogue" ? `No box of the catalogue takes the ${say.figure} entries of ${say.at}; the largest has` : `${say.at} needs ${say.figure} entries and has`} room for ${say.limit}${proof(say)}.`,
  },
  "own-hole": {
    title: "Every cable finds a hole in a box that is drilled already",
    why: "A gland in a hole too wide for it turns with its nut and leaks; one in a hole too small does not go in.",
    mend: "Drill the hole it needs, or lead the cable elsewhere.",
    says: (say) =>
      `${say.others} needs a hole of ${say.figure} in ${say.at}; ${say.term("free") === "none" ? "no hole is left" : `those left are ${say.term("free")}`}.`,
  },
  "hole-web": {
    title: "Enough wall stays between two holes",
    why: "The strip between two holes carries the pull of both cables; too thin, it tears or cracks.",
    mend: "Move one of them, or leave one out and plug it from both sides.",
    says: (say) =>
      `In ${say.at} only ${say.figure} of wall is left between ${say.others}; ${say.limit} should be${cracks(say)}.`,
  },
  "hole-place": {
    title: "Holes keep clear of corners, posts, lid and seal",
    why: "A nut that sits on a rib or a lip seals on one side only, and a hole in the seal's land lets the lid leak.",
    mend: "Move the entry towards the middle of its face.",
    says: (say) =>
      `${say.others} in ${say.at} ${holePlaces[say.term("fault")]?.(say) ?? "is in the wrong place"}${cracks(say)}.`,
  },
  "nut-room": {
    title: "A spanner gets round every nut",
    why: "A gland that cannot be tightened does not seal, and it cannot be opened again either.",
    mend: "Move one of the two, or take the smaller gland that still holds the cable.",
    says: (say) =>
      say.term("fault") === "nuts-touch"
        ? `The nuts of ${say.others} in ${say.at} touch: their centres are ${say.figure} apart and need ${say.limit}.`
        : `No spanner gets between ${say.others} in ${say.at}: their centres are ${say.figure} apart and need ${say.limit}.`,
  },
  "upward-entry": {
    title: "Cables enter a box from below or from the side",
    why: "Water runs down a cable and stands on an entry that looks up; sooner or later it is inside.",
    mend: "Enter from below with a loop that drips, turn the box, or take one with more room on its lower faces.",
    says: (say) =>
      say.term("from") === "drilled"
        ? `${say.at} is entered from above by ${say.others}.`
        : `${say.at} has room only on its upper face for ${say.others}.`,
  },
  "box-contents": {
    title: "What is in a box has room there",
    why: "Conductors bent too sharply behind their glands break; where no finger gets in, nothing is tightened.",
    mend: "A larger box, smaller fittings, or entries on other faces.",
    says: (say) => {
      switch (say.term("problem")) {
        case "too-tall":
          return `${say.others} is ${say.figure} tall; ${say.at} has ${say.limit} under its lid.`;
        case "no-room-to-bend":
          return `${say.at} is ${say.figure} across behind its entries; their conductors need ${say.limit} to bend.`;
        default:
          return `${say.at} has no room for ${say.others} beside the rest${proof(say)}.`;
      }
    },
  },
  "box-opening": {
    title: "What must go through an opening goes through",
    why: "A box that is finished on the bench and does not pass the hatch is taken apart again in the boat.",
    mend: "A smaller box, a wider opening, or fit it from another side.",
    says: (say) =>
      say.term("state") === "bare"
        ? `${say.at} goes through ${say.others} only before its glands are fitted.`
        : `${say.at} does not go through ${say.others}: its smallest end is ${say.term("end")}.`,
    unchecked: (say) =>
      `Whether ${say.at} goes through ${say.others} could not be judged: its measures or those of the opening are not in the plan.`,
  },
  "box-water": {
    title: "A box keeps out the water of its place",
    why: "Spray finds every lid that is not made for it, and dries inside as salt.",
    mend: "A box of a higher IP code, or a drier place.",
    says: (say) =>
      `${say.at} is made for water numeral ${say.figure} of the IP code; its place is ${say.term("surroundings")} and asks for ${say.limit}.`,
    unchecked: (say) =>
      say.figure === "–"
        ? `What water ${say.all} ${say.many ? "keep" : "keeps"} out is not in the plan (\`ip\`).`
        : `${say.at} is tested under water (numeral ${say.figure}), which does not prove that it stands the jets of its place (${say.limit}).`,
  },
  "box-unmeasured": {
    title: "Boxes are measured before they are drilled",
    why: "A template is only as right as the box it was drawn for: a post or a lip in the wrong place spoils it.",
    mend: "Measure the box itself and write it in the plan.",
    says: (say) => `The ${say.term("what")} of ${say.at} is not in the plan.`,
    unchecked: (say) =>
      say.term("what") === "inside"
        ? `${say.at} is not laid out: neither its inside nor a catalogue of boxes is in the plan.`
        : `The ${say.term("what")} of ${say.others === "" ? say.at : `${say.others} (${say.at})`} ${say.term("what").includes(" and ") ? "are" : "is"} not in the plan: holes may meet them.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
