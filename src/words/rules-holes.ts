import type { RuleId } from "../core/findings/rules.js";
import { percent } from "./numbers.js";
import type { RuleWords, Say } from "./rule-words.js";

const lies = ({ many }: Say) => (many ? "lie" : "lies");

export const holeRules = {
  "fixture-size": {
    title: "Holes are cut for the fitting in the hand",
    why: "Catalogues round. A hole too large is not made smaller.",
    mend: "Measure the body with a caliper across several directions and cut for what comes out.",
    says: (say) =>
      `${say.all} measures ${say.figure} where the catalogue says ${say.limit}: cut ${say.step("right")}.`,
  },
  "hole-backing": {
    title: "On thin sheet the clamp is spread",
    why: "A nut on thin sheet dents it, works loose and leaks.",
    mend: "A plate or large washers behind, then say so in the plan: backed.",
    says: (say) =>
      `${say.all} would clamp on ${say.figure} of sheet; under ${say.limit} a plate behind spreads it.`,
  },
  "hole-depth": {
    title: "There is room behind",
    why: "Thread and nut take depth, a cable bends in its own time, and a hand must hold the nut.",
    mend: "Put it where there is room, or choose one that is shorter behind.",
    says: (say, { terms }) =>
      terms?.for === "hand"
        ? `Behind ${say.all} ${say.many ? "are" : "is"} ${say.figure}; a hand on the nut takes ${say.limit}.`
        : `Behind ${say.all} ${say.many ? "are" : "is"} ${say.figure}; it takes ${say.limit}.`,
  },
  "hole-edge": {
    title: "Holes keep their distance from the edge",
    why: "The strip that is left between hole and edge cracks or tears.",
    mend: "Move it inwards.",
    says: (say, { terms }) =>
      `${say.at} lies ${say.figure} from ${edge(terms?.by)}; ${say.limit} is the least for its ${terms?.kind === "flange over the edge" ? "flange" : "hole"}${also(say.others)}.`,
  },
  "hole-off-face": {
    title: "What stands on a face lies within its edges",
    why: "Outside there is nothing to drill.",
    mend: "Count from the right end, or let the face reach farther.",
    says: (say, { terms }) =>
      terms?.what === "counted from"
        ? `${say.at} is counted from ${terms.by ?? "a point"}, which does not lie on its face.`
        : `${say.all} ${say.many ? "fall" : "falls"} off the face.`,
  },
  "hole-reach": {
    title: "The back of every hole can be reached",
    why: "Someone must put the nut on, and take it off again in ten years.",
    mend: "Another opening, or another place. Write down how far your own arm reaches through it.",
    says: (say, { terms, figure }) =>
      figure === undefined
        ? `No opening leads to the back of ${say.all}.`
        : `The back of ${say.at} is ${say.figure} from ${terms?.by ?? "the nearest opening"}; an arm reaches ${say.limit}${also(say.others)}.`,
  },
  "hole-spacing": {
    title: "Holes keep their distance from each other",
    why: "What is left between two holes carries nothing, and flanges do not lie on each other.",
    mend: "Move them apart.",
    says: (say, { terms }) =>
      `${say.at} lies ${say.figure} from ${terms?.by ?? "the next"}, centre to centre; ${say.limit} is the least for ${terms?.kind === "flanges overlap" ? "their flanges" : "their holes"}.`,
  },
  "hole-unknown": {
    title: "What a hole is judged by is known",
    why: "Without size, sheet or rule nothing can be said of its distances and its tool. That is not the same as fine.",
    mend: "Add it to the plan.",
    says: (say, { terms }) => `For ${say.all} ${terms?.what ?? "something"} is not known.`,
    unchecked: (say, { terms }) =>
      `The ${say.many ? "holes" : "hole"} of ${say.all} could not be judged: ${terms?.what ?? "something"} is not known.`,
  },
  "hole-zone": {
    title: "Nothing is drilled where something is",
    why: "A seam leaks for ever, a frame is weakened, and a drill in a fuel tank is the end of the day.",
    mend: "Move it clear of the zone, flange and all.",
    says: (say, { terms }) =>
      terms?.kind === "flange over a zone"
        ? `The flange of ${say.at} lies over ${terms.by ?? "a zone"}: ${say.figure} from its middle, ${say.limit} would be clear${also(say.others)}.`
        : `${say.at} would be drilled into ${terms?.by ?? "a zone"}${also(say.others)}.`,
  },
  "pull-passes": {
    title: "What is drawn through a hole passes it",
    why: "One finds out with the cable in and the plug outside.",
    mend: "Draw the largest first, without its plug, or cut the hole larger.",
    says: (say, { terms, figure, limit }) =>
      terms?.what === "fill"
        ? `Cables would fill ${share(figure)} of ${say.at}; ${share(limit)} is the most that can still be drawn.`
        : `The end of ${say.at} is ${say.figure} across, tape and knot counted; in ${terms?.by ?? "the hole"} ${say.limit} are free.`,
    unchecked: (say) =>
      `What must pass the ${say.many ? "holes" : "hole"} of ${say.all} was not judged: say with passes how large it is.`,
  },
  "row-fit": {
    title: "A row has room for all its pieces",
    why: "Squeezed in, they stand uneven, and everyone sees it for as long as the boat lasts.",
    mend: "Fewer pieces, smaller margins, or a longer row.",
    says: (say) => `The row of ${say.at} has ${say.figure}; it needs ${say.limit}.`,
  },
  "sealant-bond": {
    title: "Sealant is used where it holds",
    why: "Ordinary sealant, silicone above all, lies on plastics like polyethylene without holding. It leaks in the first season.",
    mend: "A gasket under the flange, or a fitting that clamps from both sides.",
    says: (say, { terms }) =>
      `${say.all} would be sealed on ${terms?.material ?? "a plastic"} with a surface energy of ${say.figure}; sealants want ${say.limit}.`,
  },
  "step-drill-sheet": {
    title: "Step drills cut thin sheet only",
    why: "In sheet thicker than a step the next step starts before the hole is through: it comes out tapered and torn.",
    mend: "A hole saw.",
    says: (say) =>
      `For ${say.all} a step drill is asked for in ${say.figure} of sheet; its steps are ${say.limit} high.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

const edge = (name = "") =>
  ["lower", "upper", "aft", "fore"].includes(name) ? `the ${name} edge` : "the edge of its face";
/** Said beside a limit that was not read in its source. */
const recalled = (known: string | undefined) =>
  known === "memory" ? ", a limit from memory: confirm it before relying on it" : "";
const share = (of = Number.NaN) => percent(of, 0);
const also = (others: string) => (others === "" ? "" : `; so for ${others}`);
export const floatRules = {
  "float-unknown": {
    title: "It is known what she weighs",
    why: "Heights over the water are of no use for a boat that is not the one afloat.",
    mend: "Say under float what the bare boat, people and gear weigh and where; batteries and gear: weight and stands at.",
    says: (say) => `How she floats is not known for ${say.all}.`,
    unchecked: (say, { terms }) =>
      terms?.what === "weights"
        ? `The weight of ${say.all} is left out, for want of a figure or a place: she floats otherwise than told.`
        : `How high ${say.all} ${say.many ? "lie" : "lies"} over the water is not known: the plan gives no ${terms?.what === "form" ? "form that can be used" : "weights under float"}.`,
  },
  floats: {
    title: "She carries what is put aboard",
    why: "There is no remedy for this one afloat.",
    mend: "Leave things ashore.",
    says: (say) => `With ${say.figure} aboard she sinks: full to the sheer she carries ${say.limit}.`,
  },
  "freeboard-low": {
    title: "An open boat keeps her sheer well over the water",
    why: "The first wave that is higher comes in, and with it in, the next need not be.",
    mend: "Less weight, or spread better. The plate on the boat and her maker come first.",
    says: (say, { terms }) =>
      `At rest the sheer is ${say.figure} over still water at station ${say.step("station")}; ${say.limit} is the least for her length${recalled(terms?.known)}.`,
    unchecked: (say) =>
      `At rest the sheer is ${say.figure} over still water at station ${say.step("station")}; no rule that was found fits boats narrower than ${say.limit}.`,
  },
  "hole-low": {
    title: "Open holes lie well over the water",
    why: "Outlets ship water when she heels or squats, and the pump then pumps it round.",
    mend: "Put it higher, or give it a loop above the water and a valve.",
    says: (say, { terms }) =>
      terms?.kind === "heel"
        ? `${say.all} goes under at ${say.figure} of heel; an open hole should stay dry to ${say.limit}${recalled(terms?.known)}.`
        : `${say.all} ${lies(say)} ${say.figure} over still water; ${say.limit} is the least for an open hole.`,
  },
  "hole-under-water": {
    title: "What lies under water is sealed",
    why: "It fills her while one is away.",
    mend: "Move it up, or close it so that it holds by itself. Never drill below the water on the strength of a plan alone.",
    says: (say, { level, terms }) =>
      level === "stop"
        ? `${say.all} ${lies(say)} ${say.figure} under still water and ${say.many ? "are" : "is"} ${terms?.water ?? "open"}.`
        : `${say.all} ${lies(say)} ${say.figure} under still water: all that keeps it out is ${say.many ? "their" : "its"} seal.`,
  },
  "stands-upright": {
    title: "She stands upright by herself",
    why: "Without that she lies over to one side, or goes right round.",
    mend: "Weights lower down; people seated.",
    says: (say, { unit }) =>
      unit === "°"
        ? `She finds no rest short of ${say.limit} of heel.`
        : `Upright, her metacentric height is ${say.figure}: she will not stand so.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
