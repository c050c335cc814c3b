import type { ConditionResult, ProtectionCondition } from "../core/circuit/protection/types.js";
import type { Level } from "../core/findings/finding.js";
import type { Protection } from "../core/plan/model/common.js";
import type { Side } from "../core/plan/model/placing.js";
import type { Chemistry } from "../core/plan/model/supply.js";

/** What a level asks of the reader. */
export const levelWords: Readonly<Record<Level, { readonly name: string; readonly means: string }>> = {
  stop: { name: "Stop", means: "Do not build it so." },
  mend: { name: "Mend", means: "Should be put right." },
  mind: { name: "Mind", means: "Worth knowing." },
  unchecked: { name: "Not checked", means: "Could not be judged; not the same as fine." },
};

export const chemistryWords: Readonly<Record<Chemistry, string>> = {
  flooded: "flooded lead-acid",
  agm: "AGM lead-acid",
  gel: "gel lead-acid",
  lifepo4: "lithium iron phosphate",
};

/** What a device must do, each condition in a few words. */
export const conditionWords: Readonly<Record<ProtectionCondition, string>> = {
  "carries-load": "carries the load",
  "rides-start": "rides out the start",
  "protects-weakest": "protects the weakest conductor",
  "gear-limit": "within the gear's own limit",
  "clears-far-short": "clears a short at the far end",
  "withstands-short": "conductor withstands the short",
  interrupts: "can interrupt the battery",
  "near-source": "near enough to the source",
  "before-main": "opens before the main",
};

export const stateWords: Readonly<Record<ConditionResult["state"], string>> = {
  holds: "held",
  fails: "failed",
  unchecked: "not checked",
};

const ruleSetWords = { us: "US rule-set", iso: "ISO rule-set" } as const;

/** Short words for what has a key, in one language. */
export interface LabelWords {
  readonly levels: typeof levelWords;
  readonly chemistries: typeof chemistryWords;
  readonly conditions: typeof conditionWords;
  readonly states: typeof stateWords;
  readonly ruleSets: Readonly<Record<keyof typeof ruleSetWords, string>>;
  readonly devices: Readonly<Record<Protection["device"], string>>;
  readonly sides: Readonly<Record<Side, string>>;
  /** A name with the side the hull's figures put behind it: `end port`. */
  readonly sided: (name: string) => string;
}

export const labelsInEnglish: LabelWords = {
  levels: levelWords,
  chemistries: chemistryWords,
  conditions: conditionWords,
  states: stateWords,
  ruleSets: ruleSetWords,
  devices: {
    "blade fuse": "blade fuse",
    "bolted fuse": "bolted fuse",
    "cartridge fuse": "cartridge fuse",
    breaker: "breaker",
  },
  sides: { port: "port", starboard: "starboard" },
  sided: (name) => name,
};
