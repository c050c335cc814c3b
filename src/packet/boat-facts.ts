import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { points, text } from "../drawing/make.js";
import { boatLengthWords, marked, shareSet } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { itemOf, type Piece, paragraph } from "./piece.js";

const nameMm = 28;

/** What the plan holds, a line a thing, and no more lines of a kind than `most`. */
export function boatFacts(
  figures: Figures,
  shows: Shows,
  { frame: { facts: say }, of }: PaperWords,
  widthMm: number,
  most: number,
): Piece[] {
  const named = <T>(name: (count: number) => string, things: readonly T[], words: (thing: T) => string) =>
    listedOf(name(things.length), things, words, most, say.more);
  const { plan } = figures;
  const lengthM = plan.runs.reduce((sum, run) => sum + run.lengthM, 0);
  const ways = plan.panels.reduce((sum, panel) => sum + panel.ways.length, 0);
  const facts: [string, string][] = [
    ...named(say.battery, plan.batteries, (battery) => {
      const size = `${marked(battery.nominalV, "V")}, ${marked(battery.capacityAh, "Ah")}`;
      return `${battery.name}: ${of.labels.chemistries[battery.chemistry]}, ${size}, ${say.reserve(shareSet(battery.reserveShare))}`;
    }),
    ...named(say.charger, plan.chargers, ({ name, kind, charges, outputA, outputW }) => {
      const output =
        outputA === undefined
          ? outputW === undefined
            ? ""
            : `, ${marked(outputW, "W")}`
          : `, ${marked(outputA, "A")}`;
      return `${name}: ${say.charges(say.kinds[kind], charges)}${output}`;
    }),
    ...named(
      say.converter,
      plan.converters,
      ({ name, outputV, maxOutputA }) =>
        `${name}: ${say.converts(marked(outputV, "V"), marked(maxOutputA, "A"))}`,
    ),
    ...inOneLine(
      say.panel,
      plan.panels.map(({ name, ways: own }) => ({ name: say.withWays(name, say.ways(own.length)) })),
    ),
    ...inOneLine(say.box, plan.boxes),
    [say.gear, say.pieces(plan.gear.length, say.ways(ways), figures.protection.length)],
    [say.runs, say.cable(plan.runs.length, boatLengthWords(lengthM, shows))],
    [say.air, say.temperatures(plan.ambient.coldC, plan.ambient.hotC, plan.ambient.engineSpaceC)],
    ...inOneLine(say.outing, plan.outings),
  ];
  const batteries = say.battery(plan.batteries.length);
  const list = {};
  return facts.map(([name, fact]) => itemOf(list, factLine(name, fact, name === batteries ? 2 : 1, widthMm)));
}

function listedOf<T>(
  name: string,
  things: readonly T[],
  words: (thing: T) => string,
  most: number,
  more: (count: number) => string,
): [string, string][] {
  const shown = things
    .slice(0, most)
    .map((thing, index): [string, string] => [index === 0 ? name : "", words(thing)]);
  return things.length > most ? [...shown, ["", more(things.length - most)]] : shown;
}

function inOneLine(
  name: (count: number) => string,
  things: readonly { readonly name: string }[],
): [string, string][] {
  return things.length === 0 ? [] : [[name(things.length), things.map((thing) => thing.name).join(", ")]];
}

function factLine(name: string, fact: string, maxLines: number, widthMm: number): Piece {
  const words = paragraph({ text: fact, sizePt: 9.5, maxLines }, widthMm - nameMm, 0.4);
  return {
    heightMm: words.heightMm,
    draw: (x, top) => [
      text(x, top - points(9.5) * 0.95, name, { sizeMm: points(9.5), weight: "semibold", colour: "soft" }),
      ...words.draw(x + nameMm, top),
    ],
  };
}
