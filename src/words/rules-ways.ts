import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";

const hazards: Readonly<Record<string, string>> = {
  "wet exhaust": "a water-cooled exhaust",
  "dry exhaust": "a dry exhaust",
  "hot surface": "something hot",
  "fuel part": "a fuel part",
};

export const wayRules = {
  "way-missing": {
    title: "A run that is led along legs has a way",
    why: "Without a way its length is a guess, and the guess goes into its size, its drop and the cut list.",
    mend: "Add the leg that is missing, or give the run a length.",
    says: (say) => {
      switch (say.term("problem")) {
        case "unknown-waypoint":
          return `${say.at} is to pass ${say.others}, which no leg reaches.`;
        case "leg-without-length":
          return `${say.at} has no way: the leg ${say.others} has no length, and where its ends are is not known.`;
        default:
          return `${say.at} has no way: no legs lead between ${say.others}.`;
      }
    },
  },
  "bend-radius": {
    title: "No corner is tighter than its cables allow",
    why: "A cable bent too sharply breaks strand by strand inside its insulation, where nobody sees it.",
    mend: "Round the corner off, lead the cable wider, or take a thinner one.",
    says: (say) =>
      `The corner at ${say.at} has a radius of ${say.figure}; the thickest cable round it (${say.others}) needs ${say.limit}.`,
    unchecked: (say) =>
      `How sharply cables bend at ${say.all} is not in the plan (\`bend\`, or \`none\` where they run straight).`,
  },
  "edge-bare": {
    title: "No cable lies on a bare edge",
    why: "A boat never lies still: an edge saws through sheath and insulation in a season.",
    mend: "A grommet, a gland, or an edge that is rounded and smooth.",
    says: (say, { with: runs = [] }) =>
      `${say.others} ${runs.length > 1 ? "pass" : "passes"} the bare edge of ${say.at}.`,
    unchecked: (say) => `What the edge of ${say.all} has is not in the plan (\`edge\`).`,
  },
  "opening-room": {
    title: "The cables that pass a hole go through it together",
    why: "The last cable is pulled through by force, and scrapes the others.",
    mend: "A larger hole, or a second one.",
    says: (say) =>
      `${say.at} is ${say.figure} wide; the cables through it (${say.others}) together are ${say.limit}.`,
    unchecked: (say) => `How wide ${say.all} ${say.many ? "are" : "is"} is not in the plan.`,
  },
  "clearance-heat": {
    title: "Cables keep away from heat",
    why: "Warm insulation ages fast and carries less; hot, it melts onto the copper of its neighbour.",
    mend: "Lead them another way, or put a shield between and measure again.",
    says: (say) =>
      `On ${say.at} the cables (${say.others}) come within ${say.figure} of ${hazards[say.term("hazard")] ?? "something hot"}; they should keep ${say.limit}.`,
    unchecked: (say) => `How near ${say.all} ${say.many ? "come" : "comes"} to heat is not in the plan.`,
  },
  "clearance-fuel": {
    title: "Cables keep away from fuel",
    why: "A chafed conductor beside a fuel pipe is a spark where it must never be.",
    mend: "Lead them another way, above and apart.",
    says: (say) =>
      `On ${say.at} the cables (${say.others}) come within ${say.figure} of a fuel part; they should keep ${say.limit}.`,
    unchecked: (say) =>
      `How near ${say.all} ${say.many ? "come" : "comes"} to fuel parts is not in the plan.`,
  },
  "compass-near": {
    title: "The compass is left alone",
    why: "Every current makes a field; a pair near the compass turns the needle when the lamps go on.",
    mend: "Twist out and return together, or lead them farther off; then swing the compass with everything on and off.",
    says: (say) =>
      `${say.all} may turn the compass by ${say.figure === "–" ? "any amount" : say.figure}; ${say.limit} is the most.`,
    unchecked: (say) =>
      `What ${say.all} ${say.many ? "do" : "does"} to the compass could not be worked out: a conductor without its return beside it.`,
  },
  "leg-supports": {
    title: "Cables are held as often as the rule asks",
    why: "A cable that hangs swings, and every swing bends it at the same place.",
    mend: "More clips or ties, or conduit all along.",
    says: (say) =>
      `On ${say.at} the supports are ${say.figure} apart; ${say.limit} is the most for ${say.others}.`,
  },
  "slack-short": {
    title: "Cables have the slack to draw a box out",
    why: "A box that does not come out on its cables is never opened again, or its cables are cut.",
    mend: "Let the slack be worked out, or give it that much.",
    says: (say) =>
      `${say.at} has ${say.figure} of slack at ${say.others}; to draw it out and work on it ${say.limit} is needed.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
