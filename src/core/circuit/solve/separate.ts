import { zeros } from "../columns.js";
import { type AnswerLayout, columnsIn, layoutOf } from "./answer-columns.js";
import { atRestA, overShare } from "./converter-state.js";
import { type Division, divide } from "./divide.js";
import { Part, type PartAnswer, type SolvePart } from "./part.js";
import { copyOfJoins, joinedAlike, Structures } from "./structures.js";
import type { NetworkNumbers, Solution } from "./types.js";

/**
 * A network in its separate parts: no branch, source, load or converter joins one to another (two batteries, each with its own gear), and
 * what hangs on a converter alone is apart from what feeds it. Each part is solved by itself, with the method that suits it, and only where
 * its own numbers have changed.
 */
export class Separated {
  /** Of the whole network, for what can't be asked of its parts. */
  readonly structures: Structures;
  readonly #joins: NetworkNumbers;
  #groups: readonly Group[] | undefined;

  constructor(joins: NetworkNumbers) {
    this.#joins = copyOfJoins(joins);
    this.structures = new Structures(this.#joins);
  }

  fits(network: NetworkNumbers): boolean {
    return joinedAlike(this.#joins, network);
  }

  /** @returns undefined where there is nothing to separate, or a part collapses: what is then carried is a matter of the whole network. */
  solve(network: NetworkNumbers, solvePart: SolvePart): Solution | undefined {
    this.#groups ??= divide(this.#joins).map((division) => new Group(this.#joins, division));
    if (this.#groups.length === 0) return undefined;
    const together = new Together(network);
    for (const group of this.#groups) if (!group.solve(network, solvePart, together)) return undefined;
    return together.solution();
  }
}

/** What hangs together through metal or converters. */
class Group {
  readonly #joins: NetworkNumbers;
  readonly #division: Division;
  #whole: Part | undefined;
  readonly #outputs: readonly Part[];
  readonly #rest: Part | undefined;
  readonly #inputW: Float64Array;

  constructor(joins: NetworkNumbers, division: Division) {
    this.#joins = joins;
    this.#division = division;
    const { split } = division;
    this.#outputs = (split?.outputs ?? []).map((rows) => new Part(joins, rows));
    this.#rest = split && new Part(joins, split.rest);
    this.#inputW = zeros(joins.converters.outputV.length);
  }

  /** @returns false where it collapses; then nothing was added. */
  solve(network: NetworkNumbers, solvePart: SolvePart, together: Together): boolean {
    if (this.#solveSplit(network, solvePart, together)) return true;
    this.#whole ??= new Part(this.#joins, this.#division.whole);
    const answer = this.#whole.answerTo(network, solvePart, this.#inputW);
    if (answer.status !== "solved") return false;
    together.add(answer, this.#whole, 0);
    return true;
  }

  /** Outputs first, then what feeds them. @returns false where some converter doesn't simply work: it is off, or idles. */
  #solveSplit(network: NetworkNumbers, solvePart: SolvePart, together: Together): boolean {
    const rest = this.#rest;
    if (rest === undefined) return false;
    const { converters } = network;
    const outA = zeros(converters.outputV.length);
    const answers: PartAnswer[] = [];
    for (const part of this.#outputs) {
      const answer = part.answerTo(network, solvePart, this.#inputW);
      if (answer.status !== "solved") return false;
      answers.push(answer);
      part.rows.fed.forEach(({ converter }, k) => {
        const fedA = answer.columns[part.layout.sourceA + k] as number;
        outA[converter] = (outA[converter] as number) + fedA;
      });
    }
    for (const row of rest.rows.inputs) {
      // backward current by rounding is none; more is for the whole to judge
      if (!((outA[row] as number) >= -atRestA)) return false;
      outA[row] = Math.max(0, outA[row] as number);
      const passedW =
        ((converters.outputV[row] as number) * (outA[row] as number)) /
        (converters.efficiency[row] as number);
      this.#inputW[row] = passedW + (converters.standbyW[row] as number);
    }
    const feeding = rest.answerTo(network, solvePart, this.#inputW);
    if (feeding.status !== "solved") return false;
    const inputsAt = rest.layout.loadV + rest.rows.loads.length;
    const works = rest.rows.inputs.every((row, k) => {
      const inV = feeding.columns[inputsAt + k] as number;
      return inV > 0 && inV >= (converters.minInputV[row] as number);
    });
    if (!works) return false;
    together.add(feeding, rest, 0);
    answers.forEach((answer, at) => {
      const part = this.#outputs[at] as Part;
      together.add(answer, part, together.voltageV(part.rows.nodes[0] as number));
    });
    rest.rows.inputs.forEach((row, k) => {
      together.addConverter(
        row,
        feeding.columns[inputsAt + k] as number,
        this.#inputW[row] as number,
        outA[row] as number,
      );
    });
    return true;
  }
}

/** The answers of the parts put together. */
class Together {
  readonly #layout: AnswerLayout;
  readonly #columns: Float64Array;
  readonly #underVoltage: number[] = [];
  readonly #convertersOff: number[] = [];
  readonly #convertersOver: number[] = [];
  #method: Solution["method"] = "radial";
  #iterations = 0;

  constructor(private readonly network: NetworkNumbers) {
    this.#layout = layoutOf(network);
    this.#columns = zeros(this.#layout.end);
  }

  voltageV(node: number): number {
    return this.#columns[node] as number;
  }

  /** @param aboveV Where the part's reference lies [V]; what is known of it already keeps its voltage. */
  add(answer: PartAnswer, { rows, layout, from, to }: Part, aboveV: number): void {
    const own = answer.columns;
    const all = this.#columns;
    for (let i = 0; i < rows.nodes.length; i++) all[rows.nodes[i] as number] = (own[i] as number) + aboveV;
    for (let i = 0; i < from.length; i++) all[to[i] as number] = own[from[i] as number] as number;
    const fedAt = layout.sourceA + rows.sources.length;
    rows.fed.forEach(({ branch, along }, k) => {
      all[this.#layout.branchA + branch] = along * (own[fedAt + k] as number) + 0;
    });
    for (const load of answer.underVoltage)
      if (load < rows.loads.length) this.#underVoltage.push(rows.loads[load] as number);
    for (const row of answer.convertersOff) this.#convertersOff.push(rows.converters[row] as number);
    for (const row of answer.convertersOver) this.#convertersOver.push(rows.converters[row] as number);
    if (answer.method === "sparse") this.#method = "sparse";
    this.#iterations = Math.max(this.#iterations, answer.iterations);
  }

  /** A converter at work between two parts. */
  addConverter(row: number, inV: number, inW: number, outA: number): void {
    const { outPlus, outMinus, outputV, maxOutputA } = this.network.converters;
    const plusV = this.voltageV(outMinus[row] as number) + (outputV[row] as number);
    this.#columns[outPlus[row] as number] = plusV;
    this.#columns[this.#layout.converterInA + row] = inW / inV;
    this.#columns[this.#layout.converterOutA + row] = outA;
    if (outA > (maxOutputA[row] as number) * (1 + overShare)) this.#convertersOver.push(row);
  }

  solution(): Solution {
    const inOrder = (rows: number[]) => rows.sort((a, b) => a - b);
    return {
      status: "solved",
      method: this.#method,
      ...columnsIn(this.#columns, this.#layout),
      convertersOff: inOrder(this.#convertersOff),
      convertersOver: inOrder(this.#convertersOver),
      underVoltage: inOrder(this.#underVoltage),
      cutOut: [],
      iterations: this.#iterations,
    };
  }
}
