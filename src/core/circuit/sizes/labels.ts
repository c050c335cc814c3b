/** How a label came about: nothing yet, one group's option on top of the rest, or two labels side by side. */
export type Made =
  | undefined
  | { readonly group: number; readonly option: number; readonly rest: Made }
  | { readonly one: Made; readonly other: Made };

/** A partial choice: what it costs, and for each class of limits how far it is over (under, where negative) so far [V]. */
export interface Label {
  readonly cost: number;
  readonly needs: readonly number[];
  readonly made: Made;
}

const needOf = (label: Label): number => label.needs[0] ?? Number.NEGATIVE_INFINITY;

/** One class: by rising need, each next one cheaper. Keeps only labels that no other beats in both. */
export function staircase(labels: Label[]): Label[] {
  labels.sort((a, b) => needOf(a) - needOf(b) || a.cost - b.cost);
  let cheapest = Number.POSITIVE_INFINITY;
  return labels.filter(({ cost }) => {
    if (!(cost < cheapest)) return false;
    cheapest = cost;
    return true;
  });
}

/** Two staircases under the same limits: the worse need, both costs. Linear in their lengths. */
export function sideBySide(one: readonly Label[], other: readonly Label[]): Label[] {
  const merged: Label[] = [];
  let i = 0;
  let j = 0;
  let a = one[0];
  let b = other[0];
  while (a && b) {
    const need = Math.max(needOf(a), needOf(b));
    for (let next = one[i + 1]; next && needOf(next) <= need; next = one[i + 1]) {
      a = next;
      i += 1;
    }
    for (let next = other[j + 1]; next && needOf(next) <= need; next = other[j + 1]) {
      b = next;
      j += 1;
    }
    merged.push({ cost: a.cost + b.cost, needs: [need], made: join(a.made, b.made) });
    const nextA = one[i + 1];
    const nextB = other[j + 1];
    if (nextA && (!nextB || needOf(nextA) <= needOf(nextB))) {
      a = nextA;
      i += 1;
    } else {
      b = nextB;
      j += 1;
    }
  }
  return merged;
}

export function join(one: Made, other: Made): Made {
  if (one === undefined) return other;
  return other === undefined ? one : { one, other };
}

/** Several classes: every pair, the worse need in each class. */
export function everyPair(one: readonly Label[], other: readonly Label[]): Label[] {
  return one.flatMap((a) =>
    other.map((b) => ({
      cost: a.cost + b.cost,
      needs: a.needs.map((need, index) => Math.max(need, b.needs[index] ?? need)),
      made: join(a.made, b.made),
    })),
  );
}

/** Several classes: keeps only labels that no other beats in cost and every need. */
export function frontier(labels: Label[]): Label[] {
  labels.sort((a, b) => a.cost - b.cost || sum(a.needs) - sum(b.needs));
  const kept: Label[] = [];
  for (const label of labels) if (!kept.some((better) => within(better.needs, label.needs))) kept.push(label);
  return kept;
}

function within(needs: readonly number[], bounds: readonly number[]): boolean {
  for (let index = 0; index < needs.length; index += 1)
    if ((needs[index] ?? 0) > (bounds[index] ?? 0)) return false;
  return true;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Writes the options a label stands for into `choice`, by group. */
export function readChoice(made: Made, choice: number[]): void {
  const open: Made[] = [made];
  while (open.length > 0) {
    const step = open.pop();
    if (step === undefined) continue;
    if ("group" in step) {
      choice[step.group] = step.option;
      open.push(step.rest);
    } else open.push(step.one, step.other);
  }
}
