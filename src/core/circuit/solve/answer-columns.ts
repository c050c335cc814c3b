import type { NetworkNumbers, Solution } from "./types.js";

/** The columns of an answer. */
export type AnswerColumns = Pick<
  Solution,
  "nodeV" | "branchA" | "sourceA" | "loadA" | "loadV" | "converterInA" | "converterOutA"
>;

/** Where each column of an answer begins when all lie one after the other in one. */
export interface AnswerLayout {
  readonly nodeV: 0;
  readonly branchA: number;
  readonly sourceA: number;
  readonly loadA: number;
  readonly loadV: number;
  readonly converterInA: number;
  readonly converterOutA: number;
  readonly end: number;
}

export function layoutOf({ nodeCount, branches, sources, loads, converters }: NetworkNumbers): AnswerLayout {
  const sourceA = nodeCount + branches.from.length;
  const loadA = sourceA + sources.plus.length;
  const loadV = loadA + loads.plus.length;
  const converterInA = loadV + loads.plus.length;
  const converterOutA = converterInA + converters.inPlus.length;
  const end = converterOutA + converters.inPlus.length;
  return { nodeV: 0, branchA: nodeCount, sourceA, loadA, loadV, converterInA, converterOutA, end };
}

/** The columns as views of the one they lie in: making one column takes much less time than making seven. */
export function columnsIn(all: Float64Array, at: AnswerLayout): AnswerColumns {
  return {
    nodeV: all.subarray(0, at.branchA),
    branchA: all.subarray(at.branchA, at.sourceA),
    sourceA: all.subarray(at.sourceA, at.loadA),
    loadA: all.subarray(at.loadA, at.loadV),
    loadV: all.subarray(at.loadV, at.converterInA),
    converterInA: all.subarray(at.converterInA, at.converterOutA),
    converterOutA: all.subarray(at.converterOutA, at.end),
  };
}
