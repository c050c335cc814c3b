import type { BatteryLeft } from "../core/proving/water/battery-left.js";

/** Why a voltage tells no hours. */
export const beyondWords: Readonly<Record<NonNullable<BatteryLeft["beyond"]>, string>> = {
  "above full":
    "More than a full battery of its kind shows: it is being charged, or the reading, the current or the battery named is wrong. It tells no hours.",
  "below empty":
    "Less than an empty battery of its kind shows: the reading, the current or the battery named is wrong, or the battery is damaged. It tells no hours; do not count on it.",
};
