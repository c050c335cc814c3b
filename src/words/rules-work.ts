import type { RuleId } from "../core/findings/rules.js";
import { precedenceReasons } from "../core/work/step.js";
import type { RuleWords } from "./rule-words.js";
import { reasonWords } from "./work-words.js";

export const workRules = {
  "built-conductor": {
    title: "What was drawn is of the size the plan reckons with",
    why: "Every drop, fuse and hour was worked out with the size in the plan. A thinner one drops more and burns sooner.",
    mend: "Tell the plan what lies there and look at what it then says, or draw the size it wants.",
    says: (say) =>
      `${say.at} was drawn in ${say.term("built")}; the plan reckons with ${say.term("wanted")}.`,
  },
  "built-fuse": {
    title: "Every fuse fitted is the one the plan wants",
    why: "A larger one lets the conductor burn before it opens; a smaller one opens at dusk.",
    mend: "Fit the rating of the plan.",
    says: (say, { terms }) =>
      `${say.at} holds ${say.figure}; the plan wants ${say.limit}${terms?.large === "yes" ? ", and nothing larger protects what is behind it" : ""}.`,
  },
  "built-hole": {
    title: "A hole that exists is where the plan wants it",
    why: "A hole can't be moved. What goes into it, covers it and passes it must know where it really is.",
    mend: "Give the plan the place of the hole that exists, or close it and drill anew.",
    says: (say, { terms }) => {
      switch (terms?.kind) {
        case "face":
          return `The hole for ${say.at} exists in ${say.term("built")} (${say.term("builtSide")}); the plan now wants it in ${say.term("wanted")} (${say.term("wantedSide")}).`;
        case "size":
          return `A hole for ${say.at} is ${say.figure}; the plan now wants ${say.limit}.`;
        case "entry":
          return `The entry of ${say.others} into ${say.at} exists elsewhere than the plan now wants it.`;
        default:
          return `The hole for ${say.at} exists; the plan now wants it ${say.figure} further.`;
      }
    },
    unchecked: (say) =>
      `Whether ${say.many ? "the holes" : "the hole"} for ${say.all} ${say.many ? "are" : "is"} where the plan wants ${say.many ? "them" : "it"} could not be told: the places are counted from different points.`,
  },
  "built-joint": {
    title: "Joints are of the kind the plan reckons with",
    why: "Each kind has its own resistance, its own limit and its own fear of water.",
    mend: "Tell the plan which kind was made, and look at what it then says.",
    says: (say) =>
      `The joint of ${say.at} at its ${say.term("end")} is a ${say.term("built")}; the plan reckons with a ${say.term("wanted")}.`,
  },
  "built-length": {
    title: "The plan reckons with the lengths that lie in the boat",
    why: "A longer cable drops more. The next cut list and the meter's expected readings follow the plan's length.",
    mend: "Give the plan the length that was measured.",
    says: (say) => `${say.at} lies ${say.figure} long; the plan says ${say.limit}.`,
  },
  "record-of-nothing": {
    title: "What was built and is wanted no more is not forgotten",
    why: "An unused hole lets water in; a dead cable in the boat confuses whoever looks for a fault.",
    mend: "Close the hole or use it, take the cable out or mark it at both ends; where only a name changed, change it in the record too.",
    says: (say, { terms }) => {
      switch (terms?.kind) {
        case "hole":
          return `A hole exists in ${say.term("in")} for ${say.at}, and the plan has no use for it: it must be closed or used.`;
        case "entry":
          return `${say.at} has an entry for ${say.term("in")}, which does not go there: it must be plugged.`;
        case "run":
          return `${say.at} lies in the boat, and the plan has no such run.`;
        case "joint":
          return `A joint is on record at ${say.at}, and the plan has nothing called so.`;
        case "device":
          return `${say.at} is on record as fitted, and the plan has no such device.`;
        default:
          return `The step ${say.at} is on record, and the plan has no such step.`;
      }
    },
  },
  "step-out-of-order": {
    title: "Steps are ticked in an order in which none must be undone",
    why: "A lid closed before the proof is opened again; sealant over an unmade joint is cut off again.",
    mend: "Do what is missing, or tick what was done; undo a tick that was a slip.",
    says: (say, { terms }) => {
      if (terms?.kind === "twice") return `The step ${say.at} is ticked more than once.`;
      const reason = precedenceReasons.find((one) => one === terms?.reason);
      return `The step ${say.at} is ticked, but not ${say.others}${reason === undefined ? "" : `: ${reasonWords[reason]}`}.`;
    },
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
