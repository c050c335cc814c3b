import type { BatteryLeft } from "../core/proving/water/battery-left.js";
import type { CardBattery, CardUse, CardWay, WaterCard } from "../core/proving/water/card.js";
import { amps, decimals, hours, marked, percent, roughHours } from "./numbers.js";

/** Whole card as lines of text. */
export function cardWordLines({ ways, batteries, spareFuses, spareThings }: WaterCard): string[] {
  return [
    "Which switch, which fuse",
    ...ways.map((way) => `  ${way.circuit}: ${feedsWords(way)}; ${switchWords(way)}; ${fuseWords(way)}`),
    ...batteries.flatMap(batteryLines),
    "",
    "Spares to carry",
    ...spareFuses.map(
      ({ device, ratingA, inUse, carry }) =>
        `  ${carry} × ${device} ${marked(ratingA, "A")} (${inUse} in use)`,
    ),
    `  ${spareThings.join(", ")}`,
  ];
}

export const feedsWords = ({ feeds }: CardWay) =>
  feeds.map(({ group, count }) => (count > 1 ? `${group} (${count})` : group)).join(", ");

export function switchWords({ switched, alwaysLive }: CardWay): string {
  if (alwaysLive) return "stays live with the master off";
  return switched ? "its own switch" : "no switch";
}

export const fuseWords = ({ fuses }: CardWay) =>
  fuses.length === 0
    ? "no fuse of its own"
    : fuses.map(({ device, ratingA }) => `${device} ${marked(ratingA, "A")}`).join(", ");

export function usageWords({ kind, outing, useA }: CardUse): string {
  return kind === "outing"
    ? `as in ${outing}, ${amps(useA)} on average`
    : `navigation lights alone, ${amps(useA)}`;
}

/** Why a voltage tells no hours. */
export const beyondWords: Readonly<Record<NonNullable<BatteryLeft["beyond"]>, string>> = {
  "above full":
    "More than a full battery of its kind shows: it is being charged, or the reading, the current or the battery named is wrong. It tells no hours.",
  "below empty":
    "Less than an empty battery of its kind shows: the reading, the current or the battery named is wrong, or the battery is damaged. It tells no hours; do not count on it.",
};

function batteryLines({ battery, reserveShare, uses, rows, turnOff }: CardBattery): string[] {
  return [
    "",
    `Hours left in ${battery} to its reserve of ${percent(reserveShare, 0)}, by volts after an hour at rest`,
    ...rows.map(
      ({ restingV, left }) =>
        `  ${decimals(restingV, 2)} V: ${left.map(({ hoursToReserve }, i) => `${roughHours(hoursToReserve)} ${uses[i] ? usageWords(uses[i]) : ""}`).join("; ")}`,
    ),
    ...(turnOff.length === 0
      ? []
      : [
          `Turn off first on ${battery}`,
          ...turnOff.map(
            ({ group, circuit, currentA, gainedH }) =>
              `  ${group} (${circuit}): ${amps(currentA)}, gains ${hours(gainedH)}`,
          ),
        ]),
  ];
}
