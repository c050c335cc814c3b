import type { AssumedField } from "../core/plan/complete/assumed-fields.js";
import type { AssumptionReason } from "../core/plan/complete/reasons.js";

/** Why a value was taken that the plan leaves out. Common practice, no source, where nothing else is said. */
export const assumptionWords: Readonly<Record<AssumptionReason, string>> = {
  "absorption-by-chemistry":
    "the usual charging voltage of this kind of battery; its maker's figure is better",
  "battery-dry": "batteries are kept out of the wet",
  "behaviour-by-role": "how gear of this role usually answers to voltage",
  "cable-sheathed": "a pair in one sheath is the usual cable afloat",
  "common-negative": "most small converters join their two negatives inside; look at its sheet",
  "cut-off-by-chemistry": "where this kind of battery is usually stopped",
  "drop-by-rule-set": "the rule-set's limit for gear of this role",
  "feeds-single": "feeds between battery, panel and converter are usually single conductors",
  "joint-by-place": "the usual joint at this kind of place",
  "joint-by-surroundings": "a sealed joint where it can get wet",
  "length-along-legs": "worked out along the legs it lies on",
  "length-by-boat": "no length given: about the boat's own length; measure before you cut",
  "live-no-switch": "a way that must stay live has no switch",
  "main-fuse-added": "every battery gets a main fuse at its post",
  "new-battery": "no age given: taken as new",
  "not-self-limiting": "nothing says its output limits itself",
  "one-stud": "one stud on each post",
  "open-boat": "what is not said to be dry gets splashed in an open boat",
  "own-cable-each": "each piece is reached by a cable of its own",
  "peukert-by-chemistry": "usual exponent of this kind of battery",
  "reserve-lead": "lead-acid lives longest when half is kept back",
  "reserve-lithium": "a fifth kept back for the way home",
  "resistance-by-chemistry": "usual internal resistance of this kind and capacity, new and at 25 °C",
  "returns-apart": "each way keeps its own return through the box",
  "role-unknown": "no role given, so the general limits are used",
  "shared-return-ends": "a shared return ends here, so the returns are joined",
  "short-by-chemistry": "the upper end of what batteries of this kind and capacity drive into a short",
  "switch-added": "a way is switched unless it must stay live",
  tees: "conductors are joined one to another",
  "tinned-afloat": "tinned conductors last afloat",
  "twelve-volts": "no voltage given: taken as 12 V",
  "twenty-hours": "capacities are usually stated for twenty hours",
  "usual-box": "how most small boxes are made; measure yours before drilling",
  "usual-air": "air of a temperate season; give your own if you boat in others",
  "usual-converter": "usual for a small converter; its maker's figure is better",
  "usual-graduation": "the finest division one reads at arm's length",
  "usual-insulation": "usual rating of boat cable under this rule-set; it is printed on the cable",
  "usual-panel": "enough studs on the panel's bus",
  "usual-tape": "what one hand with an ordinary tape can do; your own judgement is better",
  "way-fuse-added": "every way gets a fuse",
  "wetter-end": "as wet as the wetter of its two ends",
  "working-range": "no range given: most 12 V gear works from 10.5 V to 15 V",
};

/** How a language tells what was assumed: the key that is left out, the value taken in its place, and why. */
export interface AssumedWords {
  readonly reasons: Readonly<Record<AssumptionReason, string>>;
  readonly field: (field: AssumedField) => string;
  readonly value: (value: string) => string;
}

export const assumedInEnglish: AssumedWords = {
  reasons: assumptionWords,
  field: (field) => field,
  value: (value) => value,
};
