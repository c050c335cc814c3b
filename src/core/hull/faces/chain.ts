import { type Jet, jetAt, type Patch } from "./patch.js";

/** Newton on half the sum of squared steps, over the inner points of the chain; returns the jets of all points, one after another. */
export function settle(patch: Patch, chain: Float64Array, steps: number): Jet {
  const jets = new Float64Array(18 * (steps + 1));
  for (let i = 0; i <= steps; i++) jetAt(patch, chain[2 * i] ?? 0, chain[2 * i + 1] ?? 0, jets, 18 * i);
  let energy = chainEnergy(jets, steps);
  const start = chain.slice();
  for (let turn = 0; turn < 40; turn++) {
    const move = newtonStep(jets, steps, true) ?? newtonStep(jets, steps, false);
    if (move === undefined) break;
    start.set(chain);
    let share = 1;
    for (; share > 1e-6; share /= 2) {
      for (let i = 1; i < steps; i++) {
        const u = (start[2 * i] ?? 0) + share * (move[2 * i - 2] ?? 0);
        const v = (start[2 * i + 1] ?? 0) + share * (move[2 * i - 1] ?? 0);
        chain[2 * i] = u;
        chain[2 * i + 1] = v;
        jetAt(patch, u, v, jets, 18 * i);
      }
      const now = chainEnergy(jets, steps);
      if (now <= energy * (1 + 1e-15)) {
        energy = now;
        break;
      }
    }
    // the length answers to the square of a sideways error: ten micrometres here are far below the tape
    if (largestMove(jets, move, steps) * share < 1e-5) break;
  }
  return jets;
}

/** Largest distance that a step moves any point [m]. */
function largestMove(jets: Jet, move: Float64Array, steps: number): number {
  let most = 0;
  for (let i = 1; i < steps; i++) {
    const du = move[2 * i - 2] ?? 0;
    const dv = move[2 * i - 1] ?? 0;
    let square = 0;
    for (let k = 18 * i; k < 18 * i + 3; k++)
      square += ((jets[k + 3] ?? 0) * du + (jets[k + 6] ?? 0) * dv) ** 2;
    most = Math.max(most, square);
  }
  return Math.sqrt(most);
}

/**
 * One step of Newton (with the surface's bending) or of Gauss and Newton (without), by elimination of the 2 × 2 block three-band
 * matrix; undefined where it would climb. Plain variables throughout: this is where the time goes.
 */
function newtonStep(jets: Jet, steps: number, bending: boolean): Float64Array | undefined {
  const inner = steps - 1;
  const right = new Float64Array(2 * inner);
  // D⁻¹·upper of each row
  const carried = new Float64Array(4 * inner);
  for (let i = 0; i < inner; i++) {
    block(jets, 18 * (i + 1), bending);
    let d0 = sums[2] ?? 0;
    let d1 = sums[3] ?? 0;
    let d2 = d1;
    let d3 = sums[4] ?? 0;
    let p = -(sums[0] ?? 0);
    let q = -(sums[1] ?? 0);
    if (i > 0) {
      const k = 4 * (i - 1);
      const l0 = sums[5] ?? 0;
      const l1 = sums[6] ?? 0;
      const l2 = sums[7] ?? 0;
      const l3 = sums[8] ?? 0;
      d0 -= l0 * (carried[k] ?? 0) + l1 * (carried[k + 2] ?? 0);
      d1 -= l0 * (carried[k + 1] ?? 0) + l1 * (carried[k + 3] ?? 0);
      d2 -= l2 * (carried[k] ?? 0) + l3 * (carried[k + 2] ?? 0);
      d3 -= l2 * (carried[k + 1] ?? 0) + l3 * (carried[k + 3] ?? 0);
      p -= l0 * (right[2 * i - 2] ?? 0) + l1 * (right[2 * i - 1] ?? 0);
      q -= l2 * (right[2 * i - 2] ?? 0) + l3 * (right[2 * i - 1] ?? 0);
    }
    const det = d0 * d3 - d1 * d2;
    // not positive definite: a saddle or a conjugate point, where Newton would climb
    if (!(d0 > 0 && det > 0)) return undefined;
    right[2 * i] = (d3 * p - d1 * q) / det;
    right[2 * i + 1] = (d0 * q - d2 * p) / det;
    const r0 = sums[9] ?? 0;
    const r1 = sums[10] ?? 0;
    const r2 = sums[11] ?? 0;
    const r3 = sums[12] ?? 0;
    carried[4 * i] = (d3 * r0 - d1 * r2) / det;
    carried[4 * i + 1] = (d3 * r1 - d1 * r3) / det;
    carried[4 * i + 2] = (d0 * r2 - d2 * r0) / det;
    carried[4 * i + 3] = (d0 * r3 - d2 * r1) / det;
  }
  for (let i = inner - 2; i >= 0; i--) {
    const x = right[2 * i + 2] ?? 0;
    const y = right[2 * i + 3] ?? 0;
    right[2 * i] = (right[2 * i] ?? 0) - (carried[4 * i] ?? 0) * x - (carried[4 * i + 1] ?? 0) * y;
    right[2 * i + 1] =
      (right[2 * i + 1] ?? 0) - (carried[4 * i + 2] ?? 0) * x - (carried[4 * i + 3] ?? 0) * y;
  }
  return right;
}

/** Slope (0, 1), own block (2 to 4), block to the point before (5 to 8) and after (9 to 12) of one inner point, left in `sums`. */
function block(jets: Jet, here: number, bending: boolean): void {
  sums.fill(0);
  for (let k = here; k < here + 3; k++) {
    const xu = jets[k + 3] ?? 0;
    const xv = jets[k + 6] ?? 0;
    const bu = jets[k - 15] ?? 0;
    const bv = jets[k - 12] ?? 0;
    const au = jets[k + 21] ?? 0;
    const av = jets[k + 24] ?? 0;
    const pull = 2 * (jets[k] ?? 0) - (jets[k - 18] ?? 0) - (jets[k + 18] ?? 0);
    const bent = bending ? pull : 0;
    gather(0, xu * pull);
    gather(1, xv * pull);
    gather(2, 2 * xu * xu + (jets[k + 9] ?? 0) * bent);
    gather(3, 2 * xu * xv + (jets[k + 12] ?? 0) * bent);
    gather(4, 2 * xv * xv + (jets[k + 15] ?? 0) * bent);
    gather(5, -xu * bu);
    gather(6, -xu * bv);
    gather(7, -xv * bu);
    gather(8, -xv * bv);
    gather(9, -xu * au);
    gather(10, -xu * av);
    gather(11, -xv * au);
    gather(12, -xv * av);
  }
}

const sums = new Float64Array(13);

function gather(k: number, value: number): void {
  sums[k] = (sums[k] ?? 0) + value;
}

function stepM(jets: Jet, i: number): number {
  const k = 18 * i;
  const x = (jets[k + 18] ?? 0) - (jets[k] ?? 0);
  const y = (jets[k + 19] ?? 0) - (jets[k + 1] ?? 0);
  const z = (jets[k + 20] ?? 0) - (jets[k + 2] ?? 0);
  return Math.sqrt(x * x + y * y + z * z);
}

/** Length of a settled chain, step by step [m]. */
export function chainLength(jets: Jet, steps: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += stepM(jets, i);
  return sum;
}

function chainEnergy(jets: Jet, steps: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += stepM(jets, i) ** 2;
  return sum;
}
