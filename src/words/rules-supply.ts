import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";

const looseKinds: Readonly<Record<string, string>> = {
  "gear not fed": "piece of gear",
  "panel not fed": "panel",
  "box not fed": "junction box",
  "converter not fed": "converter",
};

export const supplyRules = {
  "not-fed": {
    title: "Everything is reached by a circuit",
    why: "What no run leads to stays dark, and none of its figures can be worked out.",
    mend: "Draw a run to it from a way, a box or the battery, or take it out of the plan.",
    says: (say) => `No run brings current to ${say.at} (${looseKinds[say.term("kind")] ?? "thing"}).`,
  },
  "run-carries-nothing": {
    title: "Every run carries a circuit",
    why: "A cable that no circuit comes along is either drawn from the wrong place or not needed.",
    mend: "Check the two places the run stands between, and the ways under `carries`.",
    says: (say) => `No circuit comes along ${say.at}: where it starts, nothing that it could carry arrives.`,
  },
  "way-unclear": {
    title: "It is plain which way feeds what",
    why: "Where several ways reach a box, a run from it must say which one it takes.",
    mend: "Name the way at the run's start (`fore box / lamps`) or under `carries`.",
    says: (say) => `${say.at} could take any of ${say.others}; the plan does not say which.`,
  },
  "two-circuits": {
    title: "Gear hangs on one circuit only",
    why: "With two feeds, pulling one fuse leaves the gear live, and a fault on one circuit is fed through the other.",
    mend: "Take away one of the two runs.",
    says: (say) => `${say.at} is fed by ${say.others} at once.`,
  },
  "converter-loop": {
    title: "No converter feeds itself",
    why: "A converter whose input hangs on its own output, directly or through others, never starts.",
    mend: "Feed the first converter from a battery.",
    says: (say) => `The input of ${say.at} leads back to its own output (${say.all}).`,
  },
  "converter-overloaded": {
    title: "A converter gives what is asked of it",
    why: "Over its limit a converter lowers its voltage or switches off, and takes all its gear with it.",
    mend: "A larger converter, or some gear on another supply, or put the gear in a `one at a time` group.",
    says: (say) => `${say.at} is asked for ${say.figure} ${say.when}; it can give ${say.limit}.`,
  },
  "converter-input": {
    title: "A converter's input stays within its range",
    why: "Under its least voltage a converter switches off; over its greatest it is destroyed.",
    mend: "Thicker conductors before it where the voltage is too low; a converter of a wider range where it is too high.",
    says: (say) =>
      say.term("side") === "over"
        ? `The input of ${say.at} sees ${say.figure} ${say.when}; it bears no more than ${say.limit}.`
        : `The input of ${say.at} gets only ${say.figure} ${say.when}; it needs ${say.limit} and switches off.`,
  },
  "outing-reserve": {
    title: "An outing ends above the reserve",
    why: "The reserve is for the day that goes wrong: a pump that must run, a light one must show, a tow that comes late.",
    mend: "A larger battery, less on, a shorter outing, or charging on the way.",
    says: (say) =>
      `On ${say.at}, ${say.others} falls below its reserve of ${say.step("reserve kept")} after ${say.figure}; the outing lasts ${say.limit} and ends with ${say.step("charge left")}.`,
  },
  "outing-cut-off": {
    title: "No battery gives out during an outing",
    why: "At its cut-off the battery, or its electronics, stop: everything that hangs on it goes dark at once.",
    mend: "A larger battery, less on, a shorter outing, or charging on the way.",
    says: (say) =>
      `On ${say.at}, ${say.others} stops after ${say.figure} of ${say.limit}: it has ${say.step("usable")} to give at this temperature and age.`,
  },
  "outing-brown-out": {
    title: "Nothing browns out during an outing",
    why: "As the battery empties its voltage falls; gear at the end of a long run is the first to stop.",
    mend: "Thicker conductors to that gear, a larger battery, or gear with a wider working range.",
    says: (say) =>
      `On ${say.term("outing")}, ${say.at} falls to ${say.figure} after ${say.step("after")}; it needs ${say.limit}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
