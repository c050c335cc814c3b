import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { points, text } from "../drawing/make.js";
import { chemistryWords } from "../words/labels.js";
import { boatLengthWords, counted, marked, shareSet } from "../words/numbers.js";
import { type Piece, paragraph } from "./piece.js";

const nameMm = 28;

/** What the plan holds, a line a thing, and no more lines of a kind than `most`. */
export function boatFacts(figures: Figures, shows: Shows, widthMm: number, most: number): Piece[] {
  const listed = <T>(name: string, things: readonly T[], words: (thing: T) => string) =>
    listedOf(name, things, words, most);
  const { plan } = figures;
  const lengthM = plan.runs.reduce((sum, run) => sum + run.lengthM, 0);
  const ways = plan.panels.reduce((sum, panel) => sum + panel.ways.length, 0);
  const facts: [string, string][] = [
    ...listed("Battery", plan.batteries, (battery) => {
      const size = `${marked(battery.nominalV, "V")}, ${marked(battery.capacityAh, "Ah")}`;
      return `${battery.name}: ${chemistryWords[battery.chemistry]}, ${size}, reserve ${shareSet(battery.reserveShare)}`;
    }),
    ...listed("Charger", plan.chargers, ({ name, kind, charges, outputA, outputW }) => {
      const output =
        outputA === undefined
          ? outputW === undefined
            ? ""
            : `, ${marked(outputW, "W")}`
          : `, ${marked(outputA, "A")}`;
      return `${name}: ${kind}, for ${charges}${output}`;
    }),
    ...listed(
      "Converter",
      plan.converters,
      ({ name, outputV, maxOutputA }) =>
        `${name}: to ${marked(outputV, "V")}, at most ${marked(maxOutputA, "A")}`,
    ),
    ...inOneLine(
      "Panel",
      plan.panels.map(({ name, ways }) => ({ name: `${name} with ${counted(ways.length, "way")}` })),
    ),
    ...inOneLine("Junction box", plan.boxes),
    [
      "Gear",
      `${counted(plan.gear.length, "piece")} on ${counted(ways, "way")}; ${counted(figures.protection.length, "fuse or breaker", "fuses and breakers")}`,
    ],
    ["Runs", `${counted(plan.runs.length, "run")}, ${boatLengthWords(lengthM, shows)} of cable in all`],
    ["Air", `${plan.ambient.coldC} to ${plan.ambient.hotC} °C, engine space ${plan.ambient.engineSpaceC} °C`],
    ...inOneLine("Outing", plan.outings),
  ];
  return facts.map(([name, fact]) => factLine(name, fact, widthMm));
}

function listedOf<T>(
  name: string,
  things: readonly T[],
  words: (thing: T) => string,
  most: number,
): [string, string][] {
  const shown = things
    .slice(0, most)
    .map((thing, index): [string, string] => [index === 0 ? plural(name, things.length) : "", words(thing)]);
  return things.length > most ? [...shown, ["", `and ${things.length - most} more`]] : shown;
}

function inOneLine(name: string, things: readonly { readonly name: string }[]): [string, string][] {
  return things.length === 0
    ? []
    : [[plural(name, things.length), things.map((thing) => thing.name).join(", ")]];
}

function plural(name: string, count: number): string {
  if (count === 1) return name;
  return name.endsWith("y") ? `${name.slice(0, -1)}ies` : name.endsWith("x") ? `${name}es` : `${name}s`;
}

function factLine(name: string, fact: string, widthMm: number): Piece {
  const words = paragraph(
    { text: fact, sizePt: 9.5, maxLines: name.startsWith("Batter") ? 2 : 1 },
    widthMm - nameMm,
    0.4,
  );
  return {
    heightMm: words.heightMm,
    draw: (x, top) => [
      text(x, top - points(9.5) * 0.95, name, { sizeMm: points(9.5), weight: "semibold", colour: "soft" }),
      ...words.draw(x + nameMm, top),
    ],
  };
}
