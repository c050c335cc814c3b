import { copied, reals, wholes, zeros } from "../columns.js";
import { type AnswerColumns, type AnswerLayout, columnsIn, layoutOf } from "./answer-columns.js";
import { Structures, sameReals } from "./structures.js";
import { loadLaw, type NetworkNumbers, type Solution } from "./types.js";

/** How one part is solved; what it keeps from call to call belongs to the part. */
export type SolvePart = (structures: Structures, network: NetworkNumbers, into: AnswerColumns) => Solution;

/** A branch behind a converter's output: with the voltage held before it, it is a source of that EMF behind its resistance. */
export interface FedBranch {
  readonly branch: number;
  readonly converter: number;
  /** Its end away from the output, and the converter's minus. */
  readonly plus: number;
  readonly minus: number;
  /** −1 where the branch is written toward the output. */
  readonly along: 1 | -1;
}

/** What a part has of the whole network's tables, by row, in their order. */
export interface Rows {
  readonly nodes: readonly number[];
  readonly branches: readonly number[];
  readonly sources: readonly number[];
  readonly loads: readonly number[];
  readonly converters: readonly number[];
  /** Branches that count as sources here, after the sources. */
  readonly fed: readonly FedBranch[];
  /** Converters whose input counts as a load of constant power here, after the loads. */
  readonly inputs: readonly number[];
}

export const noRows: Rows = {
  nodes: [],
  branches: [],
  sources: [],
  loads: [],
  converters: [],
  fed: [],
  inputs: [],
};

/** What a part answers, its columns one after the other as its layout says. */
export interface PartAnswer
  extends Pick<
    Solution,
    "status" | "method" | "underVoltage" | "convertersOff" | "convertersOver" | "iterations"
  > {
  readonly columns: Float64Array;
}

/** Answers kept of each part: as many corners as a plan is likely to have. */
const mostAnswers = 8;
const converterColumns = ["maxOutputA", "efficiency", "standbyW", "minInputV"] as const;

/** One part of a network as a network of its own, and the answers it gave lately. */
export class Part {
  readonly layout: AnswerLayout;
  /** Places in an answer's columns and where each belongs in those of the whole network, node voltages apart. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly #structures: Structures;
  /** Columns that each solve fills anew. */
  readonly #solved: Float64Array;
  readonly #into: AnswerColumns;
  /** All numbers of the part that may change from call to call, one after the other; the tables below are views of it. */
  readonly #asked: Float64Array;
  readonly #laws: Float64Array;
  readonly #numbers: NetworkNumbers;
  /** The last asked first. */
  readonly #known: { readonly asked: Float64Array; readonly answer: PartAnswer }[] = [];

  constructor(
    joins: NetworkNumbers,
    readonly rows: Rows,
  ) {
    const { branches, converters } = rows;
    const sourceCount = rows.sources.length + rows.fed.length;
    const loadCount = rows.loads.length + rows.inputs.length;
    this.#asked = zeros(branches.length + 2 * sourceCount + 3 * loadCount + 4 * converters.length);
    let taken = 0;
    const view = (length: number): Float64Array => {
      taken += length;
      return this.#asked.subarray(taken - length, taken);
    };
    const nodeOf = new Map(rows.nodes.map((node, at) => [node, at]));
    const ends = (nodes: readonly (number | undefined)[]) =>
      wholes(nodes, (node) => nodeOf.get(node ?? -1) ?? -1);
    const at = (column: Int32Array, of: readonly number[]) => of.map((row) => column[row]);
    const of = joins.converters;
    this.#laws = view(loadCount);
    this.#numbers = {
      nodeCount: rows.nodes.length,
      branches: {
        from: ends(at(joins.branches.from, branches)),
        to: ends(at(joins.branches.to, branches)),
        ohm: view(branches.length),
      },
      sources: {
        plus: ends([...at(joins.sources.plus, rows.sources), ...rows.fed.map(({ plus }) => plus)]),
        minus: ends([...at(joins.sources.minus, rows.sources), ...rows.fed.map(({ minus }) => minus)]),
        emfV: view(sourceCount),
        ohm: view(sourceCount),
      },
      loads: {
        plus: ends([...at(joins.loads.plus, rows.loads), ...at(of.inPlus, rows.inputs)]),
        minus: ends([...at(joins.loads.minus, rows.loads), ...at(of.inMinus, rows.inputs)]),
        law: new Uint8Array(loadCount),
        value: view(loadCount),
        minV: view(loadCount),
      },
      converters: {
        inPlus: ends(at(of.inPlus, converters)),
        inMinus: ends(at(of.inMinus, converters)),
        outPlus: ends(at(of.outPlus, converters)),
        outMinus: ends(at(of.outMinus, converters)),
        outputV: reals(converters, (row) => of.outputV[row] as number),
        maxOutputA: view(converters.length),
        efficiency: view(converters.length),
        standbyW: view(converters.length),
        minInputV: view(converters.length),
      },
    };
    this.#structures = new Structures(this.#numbers);
    this.layout = layoutOf(this.#numbers);
    this.#solved = zeros(this.layout.end);
    this.#into = columnsIn(this.#solved, this.layout);
    const { sources, loads } = rows;
    const count = branches.length + sources.length + 2 * loads.length + 2 * converters.length;
    this.from = new Int32Array(count);
    this.to = new Int32Array(count);
    const whole = layoutOf(joins);
    let placed = 0;
    const place = (column: keyof AnswerLayout, of: readonly number[]): void => {
      for (let row = 0; row < of.length; row++) {
        this.from[placed] = this.layout[column] + row;
        this.to[placed++] = whole[column] + (of[row] as number);
      }
    };
    place("branchA", branches);
    place("sourceA", sources);
    place("loadA", loads);
    place("loadV", loads);
    place("converterInA", converters);
    place("converterOutA", converters);
  }

  /**
   * The part's answer with its numbers out of the whole network's. Not to be changed: it may be given again.
   * @param inputW What each converter's input takes, where it counts as a load here.
   */
  answerTo(network: NetworkNumbers, solvePart: SolvePart, inputW: Float64Array): PartAnswer {
    this.#take(network, inputW);
    const at = this.#known.findIndex(({ asked }) => sameReals(asked, this.#asked));
    const known = this.#known[at];
    if (known !== undefined) {
      if (at > 0) this.#known.unshift(...this.#known.splice(at, 1));
      return known.answer;
    }
    const { status, method, underVoltage, convertersOff, convertersOver, iterations } = solvePart(
      this.#structures,
      this.#numbers,
      this.#into,
    );
    const columns = copied(this.#solved);
    const answer = { status, method, underVoltage, convertersOff, convertersOver, iterations, columns };
    if (this.#known.length === mostAnswers) this.#known.pop();
    this.#known.unshift({ asked: copied(this.#asked), answer });
    return answer;
  }

  #take({ branches, sources, loads, converters }: NetworkNumbers, inputW: Float64Array): void {
    const { rows } = this;
    const own = this.#numbers;
    gather(branches.ohm, rows.branches, own.branches.ohm);
    gather(sources.emfV, rows.sources, own.sources.emfV);
    gather(sources.ohm, rows.sources, own.sources.ohm);
    rows.fed.forEach(({ branch, converter }, k) => {
      own.sources.emfV[rows.sources.length + k] = converters.outputV[converter] as number;
      own.sources.ohm[rows.sources.length + k] = branches.ohm[branch] as number;
    });
    gather(loads.value, rows.loads, own.loads.value);
    gather(loads.minV, rows.loads, own.loads.minV);
    gather(loads.law, rows.loads, own.loads.law);
    rows.inputs.forEach((converter, k) => {
      own.loads.value[rows.loads.length + k] = inputW[converter] as number;
      own.loads.law[rows.loads.length + k] = loadLaw.power;
    });
    this.#laws.set(own.loads.law);
    for (const column of converterColumns)
      gather(converters[column], rows.converters, own.converters[column]);
  }
}

type Column = Float64Array | Uint8Array;

function gather(from: Column, rows: readonly number[], to: Column): void {
  for (let i = 0; i < rows.length; i++) to[i] = from[rows[i] as number] as number;
}
