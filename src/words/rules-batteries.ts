import type { RuleId } from "../core/findings/rules.js";
import { chemistryWords } from "./labels.js";
import type { RuleWords, Say } from "./rule-words.js";

/** A term that holds a chemistry, in words. */
const chemistry = (say: Say, term = "chemistry") =>
  Object.entries(chemistryWords).find(([key]) => key === say.term(term))?.[1] ?? say.term(term);

export const batteryRules = {
  "battery-current": {
    title: "The load stays within what the battery may give",
    why: "Lithium electronics switch the battery off when it is exceeded, and the boat goes dark; lead sags and ages.",
    mend: "A battery of a greater current, or gear in `one at a time` groups.",
    says: (say) => `${say.at} is asked for ${say.figure}; ${say.limit} is the most it may give.`,
    unchecked: (say) =>
      `The most current ${say.at} may give is not in the plan; its electronics will cut off somewhere.`,
  },
  "motor-and-electronics": {
    title: "Motor and instruments have batteries of their own",
    why: "Each burst of the motor pulls the voltage down and the instruments restart; an empty motor battery leaves one without lights.",
    mend: "A small battery for instruments and lights, or a converter that holds their voltage.",
    says: (say) => `The motor and the instruments hang on one battery, ${say.at}: ${say.others}.`,
  },
  "parallel-chemistry": {
    title: "Lithium and lead are not wired in parallel",
    why: "Their voltages never agree: one keeps filling the other, with currents that nothing limits.",
    mend: "Separate them, with a charger or converter between if one should fill the other.",
    says: (say) =>
      `${say.at} (${chemistry(say, "one")}) and ${say.others} (${chemistry(say, "other")}) are wired in parallel.`,
  },
  "parallel-voltage": {
    title: "Batteries in parallel have one voltage",
    why: "The higher one drives hundreds of amperes into the lower one the moment they are joined.",
    mend: "Never join them.",
    says: (say) =>
      `${say.at} and ${say.others} are wired in parallel and ${say.figure} apart: about ${say.step("I between them")} would flow between them.`,
  },
  "parallel-unlike": {
    title: "Batteries in parallel are alike",
    why: "The weaker one is always the first to empty and the last to fill, and it takes the other with it.",
    mend: "Two of the same kind, size and age, bought together.",
    says: (say) => {
      if (say.term("what") === "kind")
        return `${say.at} and ${say.others} in parallel are not of one kind (${chemistry(say, "one")}, ${chemistry(say, "other")}).`;
      return `${say.at} and ${say.others} in parallel differ in ${say.term("what")} by ${say.figure}; ${say.limit} is the most.`;
    },
  },
  "battery-loose": {
    title: "Batteries are held down",
    why: "In a capsize or on a trailer a battery becomes a hammer; its posts find metal.",
    mend: "A strap or bracket with a lip all round the foot.",
    says: (say) =>
      `${say.at} is ${say.term("fixed") === "tray" ? "in a tray with nothing over it" : "loose"}; it should move no more than ${say.limit} when pulled hard.`,
    unchecked: (say) => `The plan does not say how ${say.at} is held.`,
  },
  "battery-vent": {
    title: "A lead battery's gas has a way out",
    why: "Charging makes hydrogen. In a closed box it gathers until something sparks. Sealed kinds vent too when overcharged.",
    mend: "Openings low and high in the battery's box, leading to open air.",
    says: (say) => `${say.at} (${chemistry(say)}) is not vented.`,
    unchecked: (say) => `The plan does not say whether ${say.at} (${chemistry(say)}) is vented.`,
  },
  "battery-near-fuel": {
    title: "Metal fuel parts keep away from batteries",
    why: "A tool that bridges a post and a fuel pipe makes a spark and a hole at the same place.",
    mend: "Move one of them, or put an insulating shield between.",
    says: (say) =>
      `A metal fuel part is ${say.figure} above ${say.at}; under ${say.limit} it must be shielded.`,
    unchecked: (say) =>
      `There is petrol on board, and the plan does not say how near a metal fuel part is to ${say.at}.`,
  },
  "deep-discharge": {
    title: "The reserve spares the battery",
    why: "Lead that is often emptied past half lasts a few dozen outings; a lithium battery run to its cut-off leaves nothing for the way home.",
    mend: "Keep a larger reserve, or take a larger battery.",
    says: (say) =>
      `${say.at} (${chemistry(say)}) keeps a reserve of ${say.figure}; ${say.limit} would spare it.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

export const chargingRules = {
  "charger-unprotected": {
    title: "A charger's lead is protected",
    why: "The charger is harmless; the battery at the other end of its lead is not. A chafed lead sees all of it.",
    mend: "A fuse close to the battery, of a rating that suits the lead.",
    says: (say) =>
      say.term("from") === "battery"
        ? `${say.at} has no fuse, and the battery at its end may drive ${say.figure} into a short.`
        : `${say.at} has no fuse, and the charger (${say.others}) does not limit its own current.`,
  },
  "cold-charging": {
    title: "Lithium iron phosphate is not charged below freezing",
    why: "Charged cold, metal plates out inside the cells. The battery loses capacity for good and may short inside.",
    mend: "A charger or battery electronics that stop in time, or warm the battery first.",
    says: (say) =>
      `${say.at} goes on charging ${say.others} down to ${say.figure}; it should stop at ${say.limit}.`,
    unchecked: (say) =>
      `It may be as cold as ${say.step("coldest air")}, and the plan does not say whether ${say.at} stops charging ${say.others} below ${say.limit}.`,
  },
  "absorption-voltage": {
    title: "A charger's voltage suits the battery",
    why: "Too high gasses lead dry and trips lithium electronics; too low never fills the battery.",
    mend: "Set the charger to the battery's kind, by the battery maker's figure.",
    says: (say) =>
      say.term("side") === "over"
        ? `${say.at} charges ${say.others} (${chemistry(say)}) at ${say.figure}; ${say.limit} is the most it should get.`
        : `${say.at} charges ${say.others} (${chemistry(say)}) at ${say.figure}; it needs ${say.limit} to fill.`,
  },
  "charger-too-big": {
    title: "A charger gives no more than the battery takes",
    why: "A lead battery forced too fast boils and warps its plates; a lithium one is stopped by its electronics.",
    mend: "A smaller charger, a setting for less current, or a larger battery.",
    says: (say) =>
      `${say.at} can push ${say.figure} into ${say.others} (${chemistry(say)}); ${say.limit} is the most that is good for it.`,
    unchecked: (say) =>
      `The plan does not say what ${say.at} gives; ${say.others} takes ${say.limit} at most.`,
  },
  "slow-charging": {
    title: "The battery is full again before the next outing",
    why: "Lead that stays half empty for days grows crystals that do not dissolve.",
    mend: "A stronger charger, a larger solar panel, or a day more between outings.",
    says: (say) =>
      say.term("why") === "too cold"
        ? `${say.at} does not charge ${say.others} in the cold of the outing.`
        : `${say.at} takes ${say.figure} to fill ${say.others} after the longest outing.`,
    unchecked: (say) =>
      `How long ${say.at} takes to fill ${say.others} could not be worked out: its output is not in the plan.`,
  },
  "charger-missing": {
    title: "Every battery has a way to be charged",
    why: "A battery that is carried home now and then is charged late, and one that never is dies within a season.",
    mend: "Add the charger you use, also one that stays ashore: its voltage counts.",
    says: (say) => `Nothing in the plan charges ${say.at}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
