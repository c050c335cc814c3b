import { everyPair, frontier, type Label, sideBySide, staircase } from "./labels.js";
import type { Paths } from "./paths.js";

/** Limits that wait at the same steps, with every way to have come there that is worth keeping. */
export interface Factor {
  readonly steps: readonly number[];
  /** Price of a volt at each of the steps: the sum over the rows that have come there. */
  readonly perVolt: readonly number[];
  readonly labels: Label[];
  /** Least value of the labels, volts priced. */
  readonly least: number;
  /** Group that made it; none for the rows themselves. */
  readonly by: readonly number[];
}

type Part = Pick<Factor, "steps" | "labels">;

/** What a group does to a part: by its steps, where each need goes among the steps after the group, and what it adds to it. */
interface Move {
  readonly part: Part;
  /** Steps after the group, the end left out. */
  readonly own: readonly number[];
  /** Place in `own`; −1: the end. */
  readonly places: readonly number[];
  /** Current times length in the group [A·m]; 0 where it is not on the way. */
  readonly ampereM: readonly number[];
  /** By `own`: a need under this can no longer bind [V]. */
  readonly leastNeeds: readonly number[];
}

/** Where a group's factors wait once it is decided, and at what price. */
export interface Targets {
  readonly steps: readonly number[];
  readonly perVolt: readonly number[];
}

/** Sums taken in another order differ by this much and no more [V]. */
const roundingV = 1e-11;

/** Cost of a label with its needs priced. */
export function pricedCost({ cost, needs }: Label, perVolt: readonly number[]): number {
  let value = cost;
  for (let at = 0; at < perVolt.length; at += 1) value += (needs[at] ?? 0) * (perVolt[at] ?? 0);
  return value;
}

/** Moves lists of labels along the paths and puts them together. */
export class Joiner {
  constructor(
    private readonly paths: Paths,
    private readonly rest: { readonly least: Float64Array; readonly most: Float64Array },
    private readonly cut: (labels: Label[]) => Label[],
  ) {}

  /** Can a need at this step still be met by what the rest of the way leaves? */
  holds(needV: number, step: number): boolean {
    return needV + (this.rest.least[step] ?? 0) <= roundingV;
  }

  /** Steps after the group, the end left out. */
  targets(factors: readonly Factor[], group: number): Targets {
    const joined = new Map<number, number>();
    for (const { steps, perVolt } of factors)
      steps.forEach((step, at) => {
        const to = this.after(step, group);
        joined.set(to, (joined.get(to) ?? 0) + (perVolt[at] ?? 0));
      });
    joined.delete(0);
    return { steps: [...joined.keys()], perVolt: [...joined.values()] };
  }

  /** Factors that wait at one and the same step are put side by side once for all options. */
  sameStep(factors: readonly Factor[]): Part[] {
    const parts: Part[] = [];
    const single = new Map<number, Label[][]>();
    for (const factor of factors) {
      if (factor.steps.length > 1) parts.push(factor);
      else add(single, factor.steps[0] ?? 0, factor.labels);
    }
    for (const [step, lists] of single) parts.push({ steps: [step], labels: this.fold(lists, sideBySide) });
    return parts;
  }

  /** What one group does to the parts that wait at it, whichever of its options is taken. */
  moves(parts: readonly Part[], group: number): Move[] {
    return parts.map((part) => {
      const after = part.steps.map((step) => this.after(step, group));
      const own = [...new Set(after)].filter((step) => step !== 0);
      return {
        part,
        own,
        places: after.map((step) => own.indexOf(step)),
        ampereM: part.steps.map((step) =>
          this.paths.groupOf[step] === group ? (this.paths.ampereMOf[step] ?? 0) : 0,
        ),
        leastNeeds: own.map((step) => -(this.rest.most[step] ?? 0)),
      };
    });
  }

  /** All parts with one option of the group added, together; empty where some limit can no longer hold. */
  joined(moves: readonly Move[], ohmPerM: number, targets: readonly number[]): Label[] {
    const alone = new Map<number, Label[][]>();
    const lists: Label[][] = [];
    for (const each of moves) {
      const { own } = each;
      const moved = this.move(each, ohmPerM);
      if (moved.length === 0) return [];
      if (own.length <= 1) add(alone, own[0] ?? 0, staircase(moved));
      else lists.push(targets.length === own.length ? moved : lift(moved, own, targets));
    }
    for (const [target, several] of alone) {
      const folded = this.fold(several, sideBySide);
      lists.push(targets.length > 1 ? lift(folded, target === 0 ? [] : [target], targets) : folded);
    }
    const merge = targets.length > 1 ? (a: Label[], b: Label[]) => frontier(everyPair(a, b)) : sideBySide;
    return this.fold(lists, merge);
  }

  private after(step: number, group: number): number {
    return this.paths.groupOf[step] === group ? (this.paths.nextOf[step] ?? 0) : step;
  }

  /** The labels one group further: its drop added, what can no longer hold left out, what can no longer bind evened. */
  private move({ part, own, places, ampereM, leastNeeds }: Move, ohmPerM: number): Label[] {
    const moved: Label[] = [];
    for (const label of part.labels) {
      const needs = [...leastNeeds];
      let holds = true;
      for (let at = 0; at < places.length && holds; at += 1) {
        const needV = (label.needs[at] ?? 0) + (ampereM[at] ?? 0) * ohmPerM;
        const place = places[at] ?? -1;
        holds = this.holds(needV, place < 0 ? 0 : (own[place] ?? 0));
        if (place >= 0 && needV > (needs[place] ?? 0)) needs[place] = needV;
      }
      if (holds) moved.push({ cost: label.cost, needs, made: label.made });
    }
    return moved;
  }

  /** Pairwise in rounds, so that the lists stay about alike in length. */
  private fold(lists: readonly Label[][], merge: (one: Label[], other: Label[]) => Label[]): Label[] {
    let round = [...lists];
    while (round.length > 1) {
      const next: Label[][] = [];
      for (let at = 0; at < round.length; at += 2) {
        const one = round[at] ?? [];
        const other = round[at + 1];
        next.push(other ? this.cut(merge(one, other)) : one);
      }
      round = next;
    }
    return round[0] ?? [];
  }
}

function add(lists: Map<number, Label[][]>, key: number, labels: Label[]): void {
  const list = lists.get(key);
  if (list) list.push(labels);
  else lists.set(key, [labels]);
}

/** Needs for some targets, spread to all: nothing is asked for at the others. */
function lift(labels: readonly Label[], own: readonly number[], targets: readonly number[]): Label[] {
  const places = targets.map((target) => own.indexOf(target));
  return labels.map(({ cost, needs, made }) => ({
    cost,
    made,
    needs: places.map((place) => (place < 0 ? Number.NEGATIVE_INFINITY : (needs[place] ?? 0))),
  }));
}
