import type { Edit } from "../plan/edits/edit.js";
import type { WorkingSymbol } from "./working-symbols.js";

export const levels = ["stop", "mend", "mind", "unchecked"] as const;
/** `stop`: do not build it so. `mend`: should be put right. `mind`: know it. `unchecked`: could not be judged, and why. */
export type Level = (typeof levels)[number];

/** One step of the working: a named quantity with its unit, so that a face can print `I = 4.20 A`. */
export interface WorkingStep {
  readonly symbol: WorkingSymbol;
  /** Names of the plan it goes with: the points of `from`. */
  readonly at?: string;
  /** A text is one of `workingTexts`, or the key of a size. */
  readonly value: number | string;
  readonly unit?: string;
}

/** A fault in the boat, as values. The sentence, the rule's text and its source stand in `words/` and `findings/rules.ts` under `rule`. */
export interface Finding {
  readonly rule: string;
  readonly level: Level;
  /** Name of the thing, `helm / lamps`. */
  readonly at: string;
  /** Other things that belong to it. */
  readonly with?: readonly string[];
  readonly figure?: number;
  readonly limit?: number;
  readonly unit?: string;
  /** Words of the plan that fill the sentence (kind of joint, colour, chemistry …). */
  readonly terms?: Readonly<Record<string, string>>;
  readonly working?: readonly WorkingStep[];
  readonly remedies?: readonly Edit[];
}
