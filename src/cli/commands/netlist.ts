import { netlistOf } from "../../core/circuit/netlist.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { loadFigures } from "../load.js";
import { printFile } from "../print.js";
import { exit } from "../problem.js";
import { notThere } from "../unknown.js";

export const help = `skiffloom netlist PLAN [--corner NAME] [--to FILE] [--force]

Prints one corner of the circuit as SPICE text, every element named after its run, leg, joint or gear,
so that anyone can check the figures with a circuit simulator of their own.

  --corner NAME  'worst drop' (the default), 'nominal', 'highest voltage' or one of the plan's own
  --to FILE      write it there instead; --force writes over a file that is there`;

export function run(words: readonly string[]): number {
  const given = readArguments("netlist", words, {
    plan: true,
    flags: { corner: "value", to: "value", force: "switch" },
  });
  const { figures, circuit } = loadFigures(given.plan);
  const corner = given.values.corner ?? "worst drop";
  const names = circuit.states.map(({ name }) => name);
  if (!names.includes(corner)) throw notThere("corner", corner, names);
  const text = netlistOf(figures.plan, circuit, corner);
  if (given.values.to === undefined) printFile(text);
  else writeWhole(given.values.to, text, given.switches.has("force"));
  return exit.fine;
}
