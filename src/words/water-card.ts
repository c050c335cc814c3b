import type { CardBattery, CardUse, CardWay, WaterCard } from "../core/proving/water/card.js";
import { amps, decimals, hours, marked, roughHours, shareSet } from "./numbers.js";
import { english } from "./proof/english.js";
import type { ProofWords } from "./proof/proof-words.js";
import type { TerminalWords } from "./terminal/english.js";

/** Whole card as lines of text. */
export function cardWordLines(
  { ways, batteries, spareFuses, spareThings }: WaterCard,
  words: ProofWords,
  say: TerminalWords["electrics"]["water"],
): string[] {
  return [
    say.ways,
    ...ways.map(
      (way) => `  ${way.circuit}: ${feedsWords(way)}; ${switchWords(way, words)}; ${fuseWords(way, words)}`,
    ),
    ...batteries.flatMap((battery) => batteryLines(battery, words, say)),
    "",
    say.spares,
    ...spareFuses.map((spare) => `  ${spareFuseWords(spare, words)}`),
    `  ${spareThings.map((thing) => words.water.things[thing]).join(", ")}`,
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

function batteryLines(
  { battery, reserveShare, uses, rows, turnOff }: CardBattery,
  words: ProofWords,
  say: TerminalWords["electrics"]["water"],
): string[] {
  return [
    "",
    say.hours(battery, shareSet(reserveShare)),
    ...rows.map(
      ({ restingV, left }) =>
        `  ${decimals(restingV, 2)} V: ${left.map(({ hoursToReserve }, i) => `${roughHours(hoursToReserve)} ${uses[i] ? usageWords(uses[i], words) : ""}`).join("; ")}`,
    ),
    ...(turnOff.length === 0
      ? []
      : [
          say.turnOff(battery),
          ...turnOff.map(
            ({ group, circuit, currentA, gainedH }) =>
              `  ${group} (${circuit}): ${amps(currentA)}, ${words.water.gains(hours(gainedH))}`,
          ),
        ]),
  ];
}
