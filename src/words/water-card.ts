import type { CardBattery, CardUse, CardWay, WaterCard } from "../core/proving/water/card.js";
import { amps, decimals, hours, marked, roughHours, shareSet } from "./numbers.js";
import { english } from "./proof/english.js";
import type { ProofWords } from "./proof/proof-words.js";

/** Whole card as lines of text, in English. */
export function cardWordLines({ ways, batteries, spareFuses, spareThings }: WaterCard): string[] {
  return [
    "Which switch, which fuse",
    ...ways.map((way) => `  ${way.circuit}: ${feedsWords(way)}; ${switchWords(way)}; ${fuseWords(way)}`),
    ...batteries.flatMap(batteryLines),
    "",
    "Spares to carry",
    ...spareFuses.map((spare) => `  ${spareFuseWords(spare)}`),
    `  ${spareThings.join(", ")}`,
  ];
}

export const feedsWords = ({ feeds }: CardWay) =>
  feeds.map(({ group, count }) => (count > 1 ? `${group} (${count})` : group)).join(", ");

export function switchWords({ switched, alwaysLive }: CardWay, { water }: ProofWords = english): string {
  if (alwaysLive) return water.switches.live;
  return water.switches[switched ? "own" : "none"];
}

type Rated = Pick<CardWay["fuses"][number], "device" | "ratingA">;

const ratedWords = ({ device, ratingA }: Rated, { water }: ProofWords) =>
  water.device(water.devices[device], marked(ratingA, "A"));

export const fuseWords = ({ fuses }: CardWay, words: ProofWords = english) =>
  fuses.length === 0 ? words.water.noFuse : fuses.map((fuse) => ratedWords(fuse, words)).join(", ");

/** `2 × blade fuse 5 A (3 in use)`. */
export const spareFuseWords = (
  { carry, inUse, ...fuse }: WaterCard["spareFuses"][number],
  words: ProofWords = english,
) => `${carry} × ${ratedWords(fuse, words)} (${words.water.inUse(inUse)})`;

export function usageWords({ kind, outing, useA }: CardUse, { water }: ProofWords = english): string {
  return kind === "outing" ? water.outing(outing ?? "", amps(useA)) : water.lights(amps(useA));
}

function batteryLines({ battery, reserveShare, uses, rows, turnOff }: CardBattery): string[] {
  return [
    "",
    `Hours left in ${battery} to its reserve of ${shareSet(reserveShare)}, by volts after an hour at rest`,
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
              `  ${group} (${circuit}): ${amps(currentA)}, ${english.water.gains(hours(gainedH))}`,
          ),
        ]),
  ];
}
