import type { RuleId } from "../core/findings/rules.js";
import { engineSpaceAir as blower } from "../core/reference/engine-space-air.js";
import type { RuleWords } from "./rule-words.js";

const lackedLights: Readonly<Record<string, string>> = {
  sidelights: "sidelights",
  "stern light": "sternlight",
};

export const layoutRules = {
  "ignition-protection": {
    title: "Nothing that sparks sits where petrol vapour gathers",
    why: "Vapour lies low and still. One switch or fuse that opens in it is enough.",
    mend: "Move it out of the space, or use one whose maker marks it as ignition protected.",
    says: (say) =>
      `The ${say.term("kind")} of ${say.at} sits in the engine space and is not ignition protected.`,
    unchecked: (say) =>
      `${say.all} ${say.many ? "sit" : "sits"} in an engine space, and the plan does not say that ${say.many ? "they are" : "it is"} ignition protected, or that there is no petrol.`,
  },
  "live-pump-behind-master": {
    title: "A float-switch pump stays live",
    why: "One turns the master off and goes home. It rains. The float rises and nothing happens.",
    mend: "Take its way before the panel's master, and its feed before the battery's, with a fuse of its own.",
    says: (say) => `${say.at} starts by its float, but it goes dead with the master switch of ${say.others}.`,
  },
  "float-pump-switched": {
    title: "No ordinary switch stands before a float-switch pump",
    why: "It will be off on the day it matters.",
    mend: "Leave the switch out, or use one that only chooses between float and by hand.",
    says: (say) => `${say.at} starts by its float, but the switch of ${say.others} can turn it off.`,
  },
  "float-pump-way": {
    title: "A float-switch pump has a way to itself",
    why: "A wet socket or a lamp that shorts blows the fuse they share, and the boat fills at her mooring.",
    mend: "Give the pump a way of its own, or move the rest to another.",
    says: (say) => `The float-switch pump on ${say.at} shares it with ${say.others}.`,
  },
  "bilge-pump-by-hand": {
    title: "A bilge pump starts by itself",
    why: "Nobody watches the bilge while steering, and nobody is there at the mooring.",
    mend: "A float switch, on a way that stays live.",
    says: (say) => `${say.at} runs only when someone turns it on.`,
  },
  "blower-missing": {
    title: "An engine space is cleared of petrol vapour",
    why: "Petrol vapour is heavier than air and stays in a closed space until a spark finds it.",
    mend: `A blower that is run ${blower.minutes} minutes before anything there is started or switched on, ducted from low down, and a label that says so by the starting switch. The US rule asks for it where a fixed petrol engine with a starter stands in a space that is not open: open is ${blower.openIn2PerFt3} square inches of opening for each cubic foot (${blower.openM2PerM3} m² for each m³). No spark before you have smelt the bilge, blower or not.`,
    says: (say) =>
      `There is petrol on board and an engine space (${say.all}), and no blower in the plan: if a petrol engine with a starter is fixed there, the space must either stand open to the air or have one.`,
  },
  "navigation-lights-way": {
    title: "Navigation lights have a way to themselves",
    why: "A wet socket or a lamp that shorts should not put out the lights that others steer by.",
    mend: "Give them a way of their own.",
    says: (say) => `The navigation lights share ${say.at} with ${say.others}.`,
  },
  "navigation-lights-set": {
    title: "The navigation lights are those of such a boat",
    why: "By night others tell from your lights what you are, which way you head, and who gives way. A light too few or of another kind tells them wrong.",
    mend: "Under power: a masthead light, sidelights and a sternlight; under 12 m an all-round white light and sidelights do; under 7 m and no faster than 7 knots the all-round light alone, with sidelights if practicable. Under sail: sidelights and a sternlight, and no masthead light; under 7 m if practicable, else a torch ready in time. Under oars: those, or a torch. Local rules may ask for more.",
    says: (say) =>
      say.term("moved") === "sail"
        ? `Of a sailing boat's lights the plan lacks the ${lackedLights[say.term("lacks")] ?? ""}: of navigation lights it has ${say.all}.`
        : say.term("lacks") === "white light"
          ? `Under power she lacks a masthead light, or the all-round white light that may stand for it: of navigation lights the plan has ${say.all}.`
          : `Under power she lacks the ${lackedLights[say.term("lacks")] ?? ""}: of navigation lights the plan has ${say.all}${say.term("lacks") === "sidelights" ? ". Only under 7 m, no faster than 7 knots, and where sidelights are not practicable, may the all-round light stand alone" : ""}.`,
    unchecked: (say) =>
      say.term("untold") === "light"
        ? `The name of ${say.at} does not tell which light it is: sidelights, sternlight, masthead or all-round. Whether the lights are all there is not known.`
        : say.term("untold") === "length"
          ? "The boat's length is not told: which lights she must show under way is not known."
          : "Neither gear, petrol nor the kind of boat tells whether oars, sails or a motor move her: which lights she must show under way is not known.",
  },
  "navigation-lights-height": {
    title: "The white light stands over the sidelights",
    why: "From ahead the two are told apart by their height; too close together they run into one.",
    mend: "Raise it, on a pole if need be, until it stands at least 1 m over the sidelights and clear all round.",
    says: (say) =>
      `${say.at} stands ${say.figure} over ${say.others}; under power, on a boat under 12 m, ${say.limit} is the least.`,
    unchecked: (say) =>
      `How high ${say.all} ${say.many ? "stand" : "stands"} is not told: whether the white light is at least 1 m over the sidelights is not known.`,
  },
  "way-empty": {
    title: "Every way feeds something, or is called spare",
    why: "A way with a name and no load is usually a run one forgot to draw.",
    mend: "Draw the run, or call the way spare.",
    says: (say) => `${say.at} feeds nothing.`,
  },
  "metal-hull": {
    title: "A metal boat is kept out of the circuit",
    why: "Stray current from a chafed wire or a wet joint eats the hull, or the neighbour's, under water.",
    mend: "Both legs insulated everywhere, no negative bolted to the hull, clips that do not hold water, and a look with a meter each season.",
    says: (say) =>
      `The hull is ${say.term("hull")}: no conductor may touch it, and no negative is bolted to it${say.others ? `; through ${say.others} on shore power a current may flow in the water, so ask someone licensed about isolation` : ""}.`,
  },
  "master-missing": {
    title: "The battery can be cut off by hand",
    why: "When it smokes, one wants one switch, and to find it in the dark.",
    mend: "A master switch near the battery or on the panel, with the float pump taken before it.",
    says: (say) => `No switch cuts ${say.others} off from ${say.at}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
