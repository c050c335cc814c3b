import type { CompletePlan } from "../plan/completed.js";
import type { CornerState } from "./corners.js";
import { type PricedNetwork, priceNetwork } from "./network.js";
import type { CornerFigures, Part } from "./results.js";
import type { SettledCircuit } from "./settle.js";
import { loadLaw } from "./solve/types.js";

/**
 * SPICE text of one corner, for anyone to check with a circuit simulator of their own. Every run, leg, joint, device and piece
 * of gear is an element named after it; a comment line gives the name as the plan has it. Ends with `.op`, and prints the
 * voltage at each piece of gear.
 * @throws RangeError if the plan has no corner of that name.
 */
export function netlistOf(plan: CompletePlan, circuit: SettledCircuit, cornerName: string): string {
  const state = circuit.states.find(({ name }) => name === cornerName);
  const figures = circuit.corners.find(({ name }) => name === cornerName);
  if (!state || !figures) {
    const known = circuit.states.map(({ name }) => name).join(", ");
    throw new RangeError(`a corner of the plan is required (${known}), got ${cornerName}`);
  }
  const priced = priceNetwork(circuit.topology, plan, circuit.chosen, state);
  return new Netlist(plan, circuit, state, figures, priced).text();
}

/** A name as SPICE takes it: letters, digits and `_`; each original name keeps one of its own. */
class SpiceNames {
  private readonly given = new Map<string, string>();
  private readonly used = new Set<string>(["0"]);

  of(name: string): string {
    const known = this.given.get(name);
    if (known !== undefined) return known;
    const plain = name
      .replace(/\+/g, "pos")
      .replace(/-$/, "neg")
      .replace(/[^A-Za-z0-9]+/g, "_")
      .replace(/^_+|_+$/g, "")
      .toLowerCase()
      .slice(0, 60);
    let spice = plain === "" ? "x" : plain;
    for (let again = 2; this.used.has(spice); again += 1) spice = `${plain}_${again}`;
    this.used.add(spice);
    this.given.set(name, spice);
    return spice;
  }
}

class Netlist {
  private readonly names = new SpiceNames();
  private readonly elements = new Map<string, SpiceNames>();
  private readonly lines: string[] = [];

  constructor(
    private readonly plan: CompletePlan,
    private readonly circuit: SettledCircuit,
    private readonly state: CornerState,
    private readonly figures: CornerFigures,
    private readonly priced: PricedNetwork,
  ) {}

  text(): string {
    const { topology } = this.circuit;
    this.comment(`${this.plan.source.name}: ${this.state.name}, copper at ${this.state.copperC} °C`);
    this.references();
    topology.sources.forEach(({ battery, plus, minus }) => {
      this.comment(`battery ${battery}`);
      const inside = `${battery} inside`;
      this.line(
        "V",
        battery,
        this.node(inside),
        this.at(minus),
        `DC ${number(this.state.emfV.get(battery) ?? 0)}`,
      );
      this.line(
        "R",
        battery,
        this.node(inside),
        this.at(plus),
        number(this.state.internalOhm.get(battery) ?? 1),
      );
    });
    topology.branches.forEach((branch, index) => {
      this.comment(branch.id);
      this.branch(branch.id, this.at(branch.from), this.at(branch.to), this.priced.parts[index] ?? []);
    });
    this.gear();
    this.converters();
    this.startingPoints();
    this.lines.push(
      ".options reltol=1e-9 abstol=1e-9 vntol=1e-9 gmin=1e-15 itl1=2000",
      ".control",
      "set numdgt=12",
      "op",
    );
    for (const { plus, minus } of topology.gear)
      this.lines.push(`print v(${this.at(plus)},${this.at(minus)})`);
    this.lines.push(".endc", ".end", "");
    return this.lines.join("\n");
  }

  private node(name: string): string {
    return this.names.of(name);
  }

  private at(index: number): string {
    return this.node(this.circuit.topology.nodes[index] ?? "");
  }

  private comment(text: string): void {
    this.lines.push(`* ${text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, " ").slice(0, 200)}`);
  }

  private line(letter: string, name: string, from: string, to: string, value: string): void {
    this.lines.push(`${letter}${this.elementsOf(letter).of(name)} ${from} ${to} ${value}`);
  }

  private elementsOf(letter: string): SpiceNames {
    const names = this.elements.get(letter) ?? new SpiceNames();
    this.elements.set(letter, names);
    return names;
  }

  /** Where the simulator starts looking: every positive point at its supply's voltage, or it may find the dark solution. */
  private startingPoints(): void {
    const { topology } = this.circuit;
    const done = new Set<number>();
    for (const branch of topology.branches) {
      if (branch.leg === "return") continue;
      const startV = this.supplyV(branch.circuits[0] ?? "");
      for (const node of [branch.from, branch.to]) {
        if (done.has(node)) continue;
        done.add(node);
        this.lines.push(`.nodeset v(${this.at(node)})=${startV}`);
      }
    }
  }

  /** Voltage of the battery or converter behind a circuit [V]. */
  private supplyV(circuit: string): number {
    const supply = this.plan.circuits.get(circuit)?.supply ?? "";
    return (
      this.state.emfV.get(supply) ?? this.plan.converters.find(({ name }) => name === supply)?.outputV ?? 0
    );
  }

  /** One end of each island is tied to ground so that the simulator has somewhere to count from. */
  private references(): void {
    const { topology } = this.circuit;
    const tied = new Set<number>();
    const isolated = topology.converters.filter(({ inMinus, outMinus }) => inMinus !== outMinus);
    for (const node of [
      ...topology.sources.map(({ minus }) => minus),
      ...isolated.map(({ outMinus }) => outMinus),
    ]) {
      if (tied.has(node)) continue;
      tied.add(node);
      this.line("R", `ground ${topology.nodes[node]}`, this.at(node), "0", tied.size === 1 ? "1e-9" : "1e9");
    }
  }

  private branch(id: string, from: string, to: string, parts: readonly Part[]): void {
    parts.forEach((part, index) => {
      const start = index === 0 ? from : this.node(`${id} ${index}`);
      const end = index === parts.length - 1 ? to : this.node(`${id} ${index + 1}`);
      const kind = part.kind === "joint" ? `joint ${index === 0 ? "start" : "end"}` : part.kind;
      this.line("R", parts.length === 1 ? id : `${id} ${kind}`, start, end, number(part.ohm));
    });
  }

  private gear(): void {
    const { topology } = this.circuit;
    const { loads } = this.priced.numbers;
    topology.gear.forEach(({ id, plus, minus }, index) => {
      const value = loads.value[index] ?? 0;
      const [from, to] = [this.at(plus), this.at(minus)];
      this.comment(`${id}${value === 0 || value === Number.POSITIVE_INFINITY ? " (off)" : ""}`);
      if (loads.law[index] === loadLaw.resistance)
        this.line("R", `gear ${id}`, from, to, number(Math.min(value, 1e12)));
      else if (loads.law[index] === loadLaw.current)
        this.line("I", `gear ${id}`, from, to, `DC ${number(value)}`);
      else this.line("B", `gear ${id}`, from, to, `I=${number(value)}/v(${from},${to})`);
    });
  }

  private converters(): void {
    const { converters } = this.priced.numbers;
    this.circuit.topology.converters.forEach(({ id, inPlus, inMinus, outPlus, outMinus }, index) => {
      this.comment(`converter ${id}`);
      if (this.figures.converters[index]?.off) {
        this.comment("off: its input is under its least voltage");
        return;
      }
      const outputV = converters.outputV[index] ?? 0;
      this.line("V", `converter ${id}`, this.at(outPlus), this.at(outMinus), `DC ${number(outputV)}`);
      const sense = `V${this.elementsOf("V").of(`converter ${id}`)}`;
      const outW = `${number(outputV)}*(-i(${sense}))/${number(converters.efficiency[index] ?? 1)}`;
      const input = `v(${this.at(inPlus)},${this.at(inMinus)})`;
      this.line(
        "B",
        `converter ${id} input`,
        this.at(inPlus),
        this.at(inMinus),
        `I=(${outW}+${number(converters.standbyW[index] ?? 0)})/${input}`,
      );
    });
  }
}

/** All digits a double holds, in a form SPICE reads. */
function number(value: number): string {
  return value.toExponential(15);
}
