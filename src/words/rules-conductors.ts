import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";

const colourFaults: Readonly<Record<string, string>> = {
  same: "Out and return have the same colour",
  "red return": "Red is used for the return",
  "dark live": "The colour of a return is used for the live conductor",
  bonding: "A colour kept for bonding is used",
};

export const conductorRules = {
  ampacity: {
    title: "No conductor carries more than it may",
    why: "Past its limit the insulation softens and ages until it shorts; behind a panel nobody sees it.",
    mend: "A thicker conductor, insulation of a higher rating, or less on the run.",
    says: (say) =>
      `A conductor of ${say.at} (${say.term("size")}) carries ${say.figure}; ${say.limit} is allowed here.`,
    unchecked: (say) => `What the conductors of ${say.all} carry could not be worked out.`,
  },
  "engine-space-ampacity": {
    title: "Conductors allow for the heat of an engine space",
    why: "Hot air takes away what the insulation could bear: a conductor that is right on deck may be too thin beside an engine.",
    mend: "A thicker conductor, insulation of a higher rating, or a way around the engine space.",
    says: (say) =>
      `In the engine space a conductor of ${say.at} (${say.term("size")}) may carry ${say.limit}; it carries ${say.figure}.`,
    unchecked: (say) =>
      `What the conductors of ${say.all} carry in the engine space could not be worked out.`,
  },
  "shared-return": {
    title: "A shared return is fit for the sum",
    why: "Each outgoing conductor has its fuse, but the return they share has none and carries all their currents together.",
    mend: "A thicker return, or a return of its own for each way.",
    says: (say) =>
      `The return of ${say.at} carries the sum of ${say.others}: ${say.figure}; its ${say.term("size")} allows ${say.limit}.`,
    unchecked: (say) => `What the shared return of ${say.at} carries could not be worked out.`,
  },
  "least-size": {
    title: "No conductor is thinner than the least size",
    why: "Very thin conductors break at the first tug or nick, whatever little current they carry.",
    mend: "Use the least size or a thicker one; in a sheath a thinner one is allowed than singly.",
    says: (say) =>
      `${say.at} is ${say.term("size")} run ${say.term("lies")}; the least size there is ${say.term("least")}.`,
  },
  "out-of-sheath": {
    title: "Thin conductors stay in their sheath",
    why: "The sheath is what holds a thin conductor; out of it the conductor hangs by its own few strands.",
    mend: "Strip less of the sheath, or use the least size for single conductors.",
    says: (say) =>
      `${say.at} (${say.term("size")}) runs ${say.figure} out of its sheath; ${say.limit} is the most for a size under ${say.term("least")}.`,
  },
  "solid-conductor": {
    title: "Conductors are stranded",
    why: "A boat shakes. Solid wire hardens where it bends and breaks inside its insulation.",
    mend: "Stranded copper, tinned where it may get wet.",
    says: (say) => `${say.at} is solid wire; on a boat conductors are stranded.`,
  },
  "hull-return": {
    title: "The hull carries no current",
    why: "A current through the metal of the boat eats it away under water, and any slack screw becomes a hot joint.",
    mend: "Run a return conductor beside every outgoing one.",
    says: (say) => `${say.at} uses the hull as its return.`,
  },
  "size-unmet": {
    title: "Some size meets every limit",
    why: "Where even the largest conductor one is willing to buy loses too much, the plan cannot be built as it stands.",
    mend: "Allow larger sizes, shorten the way, move the panel, or split the load.",
    says: (say, { terms }) =>
      `No set of the sizes allowed meets every limit${terms?.largest ? ` (largest: ${terms.largest})` : ""}; it fails at ${say.all}.`,
  },
  "run-length": {
    title: "Every run is measured",
    why: "Drop goes with length, and so does what one buys; a guess is good for neither.",
    mend: "Lay a string along the way the cable will take and write its length.",
    says: (say) => `${say.at} has no length yet.`,
    unchecked: (say) =>
      `${say.at} has no length yet: ${say.step("L assumed")} was assumed, and every figure behind it rests on that.`,
  },
  chafe: {
    title: "Runs are protected where they pass an edge",
    why: "An edge saws through insulation with every wave. The short comes years later and somewhere out of sight.",
    mend: "Grommet, split hose or edging at every hole and rim, and a clip close by.",
    says: (say) => `${say.at} is not protected from chafe.`,
    unchecked: (say) =>
      `The plan does not say whether ${say.all} ${say.many ? "are" : "is"} protected from chafe.`,
  },
  "conductor-colour": {
    title: "Colours tell the truth",
    why: "Whoever opens the box next, perhaps yourself in the dark, trusts the colours.",
    mend: "Red or another bright colour out, black or yellow back, green for bonding only.",
    says: (say) =>
      `${colourFaults[say.term("fault")] ?? "The colours mislead"} in ${say.at} (out ${say.term("out")}, return ${say.term("return")}).`,
    unchecked: (say) => `The plan does not say the colours of ${say.all}.`,
  },
  "untinned-wet": {
    title: "Copper is tinned where it is wet",
    why: "Water creeps along bare strands, turns them black, and the resistance grows from the end inward.",
    mend: "Tinned copper, and sealed ends.",
    says: (say) => `${say.at} is untinned copper in a place that is ${say.term("surroundings")}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
