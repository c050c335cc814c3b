import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";

export const endRules = {
  "tap-limits": {
    title: "A tap fits both its conductors",
    why: "On a conductor too thick its blade does not reach the copper; on one too thin it cuts the strands.",
    mend: "A sealed butt for all of them, or a bus.",
    says: (say) =>
      `The tap of ${say.at} at ${say.others} is on a conductor of ${say.figure} with one of ${say.term("size")}; no usual tap takes the two.`,
  },
  "barrel-fit": {
    title: "Conductors fill the barrel they are crimped in",
    why: "A loose crimp pulls out and warms; strands cut off to make them fit carry nothing.",
    mend: "Fewer conductors in one joint, a bus, or a terminal made for the size.",
    says: (say) => {
      const where = `${say.at} at ${say.others} (${say.term("joint")})`;
      switch (say.term("problem")) {
        case "too-thin-for-barrel":
          return `${where}: ${say.figure} of copper is too thin for any usual barrel, which needs ${say.limit}.`;
        case "too-thick-for-barrel":
          return `${where}: ${say.figure} of copper in one barrel is too much; the largest takes ${say.limit}.`;
        default:
          return `${where}: a sleeve would have to shrink ${say.figure} to 1; the best does ${say.limit} to 1.`;
      }
    },
  },
  "step-down": {
    title: "A butt between unlike conductors is made for both",
    why: "In a plain butt one of the two ends is loose.",
    mend: "A step-down butt of the two colours, or fold the thin conductor back in its end.",
    says: (say) =>
      `The butt of ${say.at} at ${say.others} joins two sizes: it needs one from ${say.term("one")} to ${say.term("other")}.`,
  },
  "stud-fit": {
    title: "Rings are made for their stud",
    why: "A ring too large for its stud sits off centre and works loose; one too small is drilled out and thin.",
    mend: "Rings of the stud's size; write the stud in the plan.",
    says: (say) => `No usual ring is made for the ${say.figure} stud of ${say.others} (${say.at}).`,
    unchecked: (say) => `The stud of ${say.all} is not in the plan (\`stud\`): its rings cannot be chosen.`,
  },
  "tab-fit": {
    title: "Push-on terminals are made for their tab",
    why: "A loose push-on warms and falls off.",
    mend: "Terminals of the tab's width; a ring under a screw for anything thicker.",
    says: (say) =>
      say.term("problem") === "tab-not-made"
        ? `No usual push-on is made for the ${say.figure} tab of ${say.others} (${say.at}).`
        : `The ${say.term("tab")} tab of ${say.others} takes ${say.limit}; the conductor of ${say.at} has ${say.figure}.`,
    unchecked: (say) => `The tab of ${say.all} is not in the plan (\`tab\`): its push-ons cannot be chosen.`,
  },
  "strain-relief": {
    title: "A strain relief holds its cable",
    why: "A cable it does not grip is held by its joints alone; one too thick is crushed.",
    mend: "A sleeve over the cable to bring it up, another cable, or another fitting.",
    says: (say) =>
      say.term("side") === "thin"
        ? `${say.others} is ${say.figure} thick; the strain relief of ${say.at} holds from ${say.limit}.`
        : `${say.others} is ${say.figure} thick; the strain relief of ${say.at} takes ${say.limit} at most.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
