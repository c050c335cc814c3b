import { find, joinAll } from "./islands.js";
import { copyOfJoins, joinedAlike, Structures, same } from "./structures.js";
import type { NetworkNumbers, Solution } from "./types.js";

/** How one part is solved; anything it keeps from call to call belongs to the part. */
export type SolvePart = (structures: Structures, network: NetworkNumbers) => Solution;

/** Answers kept of each part: as many corners as a plan is likely to have. */
const mostAnswers = 8;

/**
 * A network in its separate parts: no branch, source, load or converter joins one to another (two batteries, each with its own gear). Each
 * part is solved by itself, with the method that suits it, and only where its own numbers have changed.
 */
export class Separated {
  readonly #joins: NetworkNumbers;
  readonly #parts: readonly Part[];

  constructor(joins: NetworkNumbers) {
    this.#joins = copyOfJoins(joins);
    this.#parts = partsOf(this.#joins);
  }

  /** There is nothing to separate. */
  get isWhole(): boolean {
    return this.#parts.length === 0;
  }

  fits(network: NetworkNumbers): boolean {
    return joinedAlike(this.#joins, network);
  }

  /** @returns undefined where a part collapses: what is then carried is a matter of the whole network. */
  solve(network: NetworkNumbers, solvePart: SolvePart): Solution | undefined {
    const answers: Solution[] = [];
    for (const part of this.#parts) {
      const answer = part.answerTo(network, solvePart);
      if (answer.status !== "solved") return undefined;
      answers.push(answer);
    }
    return this.#together(network, answers);
  }

  #together(network: NetworkNumbers, answers: readonly Solution[]): Solution {
    const nodeV = new Float64Array(network.nodeCount);
    const branchA = new Float64Array(network.branches.ohm.length);
    const sourceA = new Float64Array(network.sources.ohm.length);
    const loadA = new Float64Array(network.loads.value.length);
    const loadV = new Float64Array(network.loads.value.length);
    const converterInA = new Float64Array(network.converters.outputV.length);
    const converterOutA = new Float64Array(network.converters.outputV.length);
    const underVoltage: number[] = [];
    const convertersOff: number[] = [];
    const convertersOver: number[] = [];
    let method: Solution["method"] = "radial";
    let iterations = 0;
    answers.forEach((answer, at) => {
      const { rows } = this.#parts[at] as Part;
      spread(answer.nodeV, rows.nodes, nodeV);
      spread(answer.branchA, rows.branches, branchA);
      spread(answer.sourceA, rows.sources, sourceA);
      spread(answer.loadA, rows.loads, loadA);
      spread(answer.loadV, rows.loads, loadV);
      spread(answer.converterInA, rows.converters, converterInA);
      spread(answer.converterOutA, rows.converters, converterOutA);
      for (const load of answer.underVoltage) underVoltage.push(rows.loads[load] as number);
      for (const converter of answer.convertersOff) convertersOff.push(rows.converters[converter] as number);
      for (const converter of answer.convertersOver)
        convertersOver.push(rows.converters[converter] as number);
      if (answer.method === "sparse") method = "sparse";
      iterations = Math.max(iterations, answer.iterations);
    });
    for (const list of [underVoltage, convertersOff, convertersOver]) list.sort((a, b) => a - b);
    return {
      status: "solved",
      method,
      nodeV,
      branchA,
      sourceA,
      loadA,
      loadV,
      converterInA,
      converterOutA,
      convertersOff,
      convertersOver,
      underVoltage,
      cutOut: [],
      iterations,
    };
  }
}

/** Rows of the whole network's tables that a part has, in their order. */
interface Rows {
  readonly nodes: Int32Array;
  readonly branches: Int32Array;
  readonly sources: Int32Array;
  readonly loads: Int32Array;
  readonly converters: Int32Array;
}

const converterColumns = ["maxOutputA", "efficiency", "standbyW", "minInputV"] as const;

/** One part, its tables, and the answers it gave lately. */
class Part {
  readonly #structures = new Structures();
  /** All numbers of the part that may change from call to call, one after the other; the tables below are views of it. */
  readonly #asked: Float64Array;
  readonly #numbers: NetworkNumbers;
  #known: { readonly asked: Float64Array; readonly answer: Solution }[] = [];

  constructor(
    joins: NetworkNumbers,
    readonly rows: Rows,
    nodeOf: Int32Array,
  ) {
    const { branches, sources, loads, converters } = rows;
    const counts = [branches.length, 2 * sources.length, 3 * loads.length, 4 * converters.length];
    const asked = new Float64Array(counts.reduce((sum, count) => sum + count, 0));
    this.#asked = asked;
    let taken = 0;
    const view = (length: number): Float64Array => {
      taken += length;
      return asked.subarray(taken - length, taken);
    };
    const ends = (column: Int32Array, of: Int32Array) =>
      Int32Array.from(of, (row) => nodeOf[column[row] as number] as number);
    const of = joins.converters;
    this.#numbers = {
      nodeCount: rows.nodes.length,
      branches: {
        from: ends(joins.branches.from, branches),
        to: ends(joins.branches.to, branches),
        ohm: view(branches.length),
      },
      sources: {
        plus: ends(joins.sources.plus, sources),
        minus: ends(joins.sources.minus, sources),
        emfV: view(sources.length),
        ohm: view(sources.length),
      },
      loads: {
        plus: ends(joins.loads.plus, loads),
        minus: ends(joins.loads.minus, loads),
        value: view(loads.length),
        minV: view(loads.length),
        law: new Uint8Array(loads.length),
      },
      converters: {
        inPlus: ends(of.inPlus, converters),
        inMinus: ends(of.inMinus, converters),
        outPlus: ends(of.outPlus, converters),
        outMinus: ends(of.outMinus, converters),
        outputV: Float64Array.from(converters, (row) => of.outputV[row] as number),
        maxOutputA: view(converters.length),
        efficiency: view(converters.length),
        standbyW: view(converters.length),
        minInputV: view(converters.length),
      },
    };
  }

  /** The part's answer with its numbers out of the whole network's. Not to be changed: it may be given again. */
  answerTo(network: NetworkNumbers, solvePart: SolvePart): Solution {
    this.#take(network);
    const at = this.#known.findIndex(({ asked }) => same(asked, this.#asked));
    const known = this.#known[at];
    if (known !== undefined) {
      if (at > 0) this.#known = [known, ...this.#known.filter((one) => one !== known)];
      return known.answer;
    }
    const answer = solvePart(this.#structures, this.#numbers);
    this.#known = [{ asked: this.#asked.slice(), answer }, ...this.#known.slice(0, mostAnswers - 1)];
    return answer;
  }

  #take({ branches, sources, loads, converters }: NetworkNumbers): void {
    const { rows } = this;
    const own = this.#numbers;
    gather(branches.ohm, rows.branches, own.branches.ohm);
    gather(sources.emfV, rows.sources, own.sources.emfV);
    gather(sources.ohm, rows.sources, own.sources.ohm);
    gather(loads.value, rows.loads, own.loads.value);
    gather(loads.minV, rows.loads, own.loads.minV);
    const laws = this.#asked.subarray(this.#asked.length - rows.loads.length);
    for (let i = 0; i < laws.length; i++) {
      const law = loads.law[rows.loads[i] as number] as number;
      own.loads.law[i] = law;
      laws[i] = law;
    }
    for (const column of converterColumns)
      gather(converters[column], rows.converters, own.converters[column]);
  }
}

/** The parts of a network; none where it is all one. */
function partsOf(joins: NetworkNumbers): Part[] {
  const { nodeCount, branches, sources, loads, converters } = joins;
  const parent = Int32Array.from({ length: nodeCount }, (_, node) => node);
  joinAll(parent, branches.from, branches.to);
  joinAll(parent, sources.plus, sources.minus);
  joinAll(parent, loads.plus, loads.minus);
  joinAll(parent, converters.inPlus, converters.inMinus);
  joinAll(parent, converters.inPlus, converters.outPlus);
  joinAll(parent, converters.outPlus, converters.outMinus);

  const partOfRoot = new Map<number, number>();
  const partOf = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) {
    const root = find(parent, node);
    const part = partOfRoot.get(root) ?? partOfRoot.size;
    partOfRoot.set(root, part);
    partOf[node] = part;
  }
  const count = partOfRoot.size;
  if (count <= 1) return [];
  const rowsAt = (ends: Int32Array): Int32Array[] => {
    const lists = Array.from({ length: count }, (): number[] => []);
    ends.forEach((node, row) => {
      lists[partOf[node] as number]?.push(row);
    });
    return lists.map((list) => Int32Array.from(list));
  };
  const nodes = rowsAt(Int32Array.from(partOf.keys()));
  const columns = {
    branches: rowsAt(branches.from),
    sources: rowsAt(sources.plus),
    loads: rowsAt(loads.plus),
    converters: rowsAt(converters.inPlus),
  };
  const nodeOf = new Int32Array(nodeCount);
  for (const list of nodes)
    list.forEach((node, at) => {
      nodeOf[node] = at;
    });
  return nodes.map((list, part) => {
    const rows = {
      nodes: list,
      branches: columns.branches[part] as Int32Array,
      sources: columns.sources[part] as Int32Array,
      loads: columns.loads[part] as Int32Array,
      converters: columns.converters[part] as Int32Array,
    };
    return new Part(joins, rows, nodeOf);
  });
}

function gather(from: Float64Array, rows: Int32Array, to: Float64Array): void {
  for (let i = 0; i < rows.length; i++) to[i] = from[rows[i] as number] as number;
}

function spread(from: Float64Array, rows: Int32Array, to: Float64Array): void {
  for (let i = 0; i < rows.length; i++) to[rows[i] as number] = from[i] as number;
}
