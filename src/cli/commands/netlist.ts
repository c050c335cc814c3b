import { netlistOf } from "../../core/circuit/netlist.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { loadFigures } from "../load.js";
import { printFile } from "../print.js";
import { exit } from "../problem.js";
import { notThere } from "../unknown.js";

export function run(words: readonly string[]): number {
  const given = readArguments("netlist", words, {
    plan: true,
    flags: { corner: "name", to: "value", force: "switch" },
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
