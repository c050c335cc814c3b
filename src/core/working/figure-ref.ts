import type { ProtectionCondition } from "../circuit/protection/types.js";

/** Names one figure among all that were worked out, so that a face can ask how it came about. Ids are those of the tables. */
export type FigureRef =
  /** Lost between source and gear, both legs; its voltage; its current. In a corner by name. */
  | {
      readonly of: "gear drop" | "gear voltage" | "gear current";
      readonly gear: string;
      readonly corner: string;
    }
  /** Drop and current of one leg of a run, a way or a feed. */
  | { readonly of: "branch drop" | "branch current"; readonly branch: string; readonly corner: string }
  /** Size of a set of conductors, and the current they may carry where they lie. */
  | { readonly of: "run size" | "run ampacity"; readonly choice: string }
  | { readonly of: "rating"; readonly device: string }
  | { readonly of: "condition"; readonly device: string; readonly condition: ProtectionCondition }
  | { readonly of: "battery voltage" | "battery current"; readonly battery: string; readonly corner: string }
  | {
      readonly of: "hours to reserve" | "charge left" | "charge used" | "usable capacity";
      readonly outing: string;
      readonly battery: string;
    }
  | { readonly of: "charging time"; readonly charger: string }
  /** What all conductors together cost or weigh. */
  | { readonly of: "sizes total" };
