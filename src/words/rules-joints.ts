import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords, Say } from "./rule-words.js";

const at = (say: Say) => (say.others ? `${say.at} at ${say.others}` : say.at);

export const jointRules = {
  "twisted-joint": {
    title: "No twist-on caps, no twisted and taped wires",
    why: "They loosen with vibration and wick water; the joint warms, then burns or goes dark.",
    mend: "A sealed crimped butt, or a ring on a stud.",
    says: (say) =>
      `${at(say)} is ${say.term("joint") === "twist-on cap" ? "joined by a twist-on cap" : say.term("joint")}; the place is ${say.term("surroundings")}.`,
  },
  "joint-unsealed-wet": {
    title: "Joints in the wet are sealed",
    why: "Water goes into the strands and creeps along inside the insulation; the joint is green within a season.",
    mend: "A sealed butt with adhesive sleeve, or bring the joint into a dry box.",
    says: (say) =>
      `${at(say)} has a ${say.term("joint")}, which lets water in, in a place that is ${say.term("surroundings")}.`,
  },
  "joint-in-bilge": {
    title: "No joint lies in the bilge",
    why: "Where water stands, the best seal fails one day, and it fails at the pump one needs then.",
    mend: "Bring the leads up above the highest water and join them there.",
    says: (say) => `${at(say)} has its joint (${say.term("joint")}) in the bilge.`,
  },
  "solder-only-joint": {
    title: "Solder is not what holds a joint",
    why: "Solder stiffens the strands where they should bend, and lets go when an overload warms it.",
    mend: "Crimp it; solder may be added, never instead.",
    says: (say) => `${at(say)} is held by solder alone (${say.term("joint")}).`,
  },
  "tap-joint": {
    title: "Taps carry little and stay dry",
    why: "A tap cuts through the insulation and touches a few strands; it loosens and corrodes there.",
    mend: "Cut the conductor and use a three-way crimp, a stud or a bus.",
    says: (say) =>
      say.figure === "–"
        ? `${at(say)} is joined by a tap, which touches only a few strands.`
        : `${at(say)} is joined by a tap and carries ${say.figure}; ${say.limit} is the most for one.`,
  },
  "joint-overloaded": {
    title: "A joint carries no more than its kind may",
    why: "Pins, clamps and tabs touch in small spots; over their limit the spots warm and their springs go soft.",
    mend: "A crimped ring on a stud, or a joint made for the current.",
    says: (say) =>
      `${at(say)} carries ${say.figure} through a ${say.term("joint")}, which bears ${say.limit}.`,
  },
  "push-on-tab": {
    title: "Push-on tabs are looked after",
    why: "They hold by friction. Vibration and corrosion work them off, one winter after the next.",
    mend: "A ring under a screw where the gear has one; else a tight, insulated tab and a look each season.",
    says: (say) => `${at(say)} ends in a push-on tab, which can shake off.`,
  },
  "battery-terminal-spring": {
    title: "Battery connections are bolted",
    why: "A clip or plug on a post sparks when it moves, beside a battery that may give off gas.",
    mend: "A ring under a nut with a lock washer.",
    says: (say) => `${at(say)} is held by a ${say.term("joint")}; at a battery it should be bolted.`,
  },
  "terminals-per-stud": {
    title: "A stud holds no more than it can clamp",
    why: "The topmost ring on a full stud has two threads to hold it; the lowest ones are loose when it settles.",
    mend: "A bus bar with more studs, fed by one short conductor.",
    says: (say) => `${say.at} would have ${say.figure} terminals on one stud; ${say.limit} is the most.`,
  },
  "bare-live-posts": {
    title: "Live posts are covered",
    why: "A spanner across two bare posts welds itself on, glows and sprays metal.",
    mend: "Boots on the posts, or a lid over the whole.",
    says: (say) => `The live parts of ${say.at} are not covered.`,
    unchecked: (say) => `The plan does not say whether the live parts of ${say.all} are covered.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
