import { settingOut } from "../../reference/setting-out.js";
import { type Adjusted, adjust } from "./adjust.js";
import { type Ellipse, ellipseOf } from "./ellipse.js";
import { type Explanation, explain } from "./explain.js";
import type { Measured, Network } from "./network.js";

/** What the readings say of one mark. */
export interface Verdict {
  readonly name: string;
  /** True place minus planned place, in the face's (along, up) there [m]. */
  readonly offAlongM: number;
  readonly offUpM: number;
  readonly ellipse: Ellipse;
  /** Readings that say something of it. */
  readonly readings: number;
  /**
   * `good`; `misplaced`: move it by the correction; `boat not symmetrical`: it follows a reference point that is off, so the sides differ
   * by that much; `reading in doubt`: one reading does not fit, measure it again; `not known`: too few readings.
   */
  readonly verdict: "good" | "misplaced" | "boat not symmetrical" | "reading in doubt" | "not known";
  /** Move the mark by this much along and up to bring it to its planned place [m]; 0 where it should stay. */
  readonly moveAlongM: number;
  readonly moveUpM: number;
}

export interface Checked {
  readonly verdicts: readonly Verdict[];
  readonly explanation: Explanation;
  readonly adjusted: Adjusted;
  /** Reference points that stand off their symmetrical place, by how much [m]. */
  readonly referencesOff: readonly { readonly name: string; readonly offM: readonly number[] }[];
}

/**
 * Where the marks really are, from readings taken after marking, and what to do about each.
 * @param toleranceM A mark nearer its place than this may stay [m].
 * @param referenceM How far a reference point may stand off its planned place (one standard deviation) [m]. Left out: as far as the two sides of a
 *   boat differ; on the side the plan was measured on it is less.
 * @throws RangeError if the tolerance is not above zero, and as `adjust`.
 */
export function checkMarks(
  network: Network,
  measured: readonly Measured[],
  toleranceM: number,
  referenceM: (name: string) => number = () => settingOut.hand.symmetrySigmaM,
): Checked {
  if (!(toleranceM > 0)) throw new RangeError(`tolerance must be > 0 m, got ${toleranceM}`);
  const { setSigmaM, slipSigmaM } = settingOut.hand;
  const explanation = explain(network, measured, {
    setM: setSigmaM,
    referenceM,
    wrongM: slipSigmaM,
  });
  const { faults } = explanation;
  const misplaced = (name: string) =>
    faults.some((fault) => fault.kind === "misplaced mark" && fault.name === name);
  const off = (name: string) => faults.some((fault) => fault.kind === "reference off" && fault.name === name);
  const misread = (index: number) =>
    faults.some((fault) => fault.kind === "misread" && fault.index === index);
  const adjustedWith = (free: ReadonlySet<string>) =>
    adjust(network, measured, {
      // once a thing is known to be off, the readings alone say by how much
      markM: (name) => (misplaced(name) || free.has(name) ? 10 * slipSigmaM : setSigmaM),
      referenceM: (name) => (off(name) ? 10 * slipSigmaM : referenceM(name)),
      readingM: (index) => (misread(index) ? 10 * slipSigmaM : network.sigmaM),
    });
  const held = adjustedWith(new Set());
  // a mark that stands off though no single fault was sure enough: held to its setting readings it would be moved too little
  const free = new Set(
    network.marks
      .map(({ name }) => name)
      .filter((name) => !misplaced(name) && Math.hypot(...(held.offsets.get(name) ?? [])) > toleranceM),
  );
  const adjusted = free.size > 0 ? adjustedWith(free) : held;
  const verdicts = network.marks.map(({ name, setFrom }): Verdict => {
    const [offAlongM = 0, offUpM = 0] = adjusted.offsets.get(name) ?? [];
    const first = adjusted.columns.get(name) ?? 0;
    const q = (i: number, k: number) => adjusted.covariance[first + i]?.[first + k] ?? 0;
    const own = measured.flatMap((one, index) => (one.mark === name || one.from === name ? [index] : []));
    const from = own.map((index) => measured[index]?.from ?? "");
    const follows = [...from, ...(setFrom ?? [])].some(off);
    const far = Math.hypot(offAlongM, offUpM) > toleranceM;
    const verdict =
      own.length === 0
        ? "not known"
        : misplaced(name) && far
          ? "misplaced"
          : own.some(misread)
            ? "reading in doubt"
            : far && follows
              ? "boat not symmetrical"
              : far
                ? "misplaced"
                : "good";
    const move = verdict === "misplaced";
    return {
      name,
      offAlongM,
      offUpM,
      ellipse: ellipseOf({ aa: q(0, 0), au: q(0, 1), uu: q(1, 1) }),
      readings: own.length,
      verdict,
      moveAlongM: move ? -offAlongM : 0,
      moveUpM: move ? -offUpM : 0,
    };
  });
  const referencesOff = faults.flatMap((fault) =>
    fault.kind === "reference off"
      ? [{ name: fault.name, offM: adjusted.offsets.get(fault.name) ?? [] }]
      : [],
  );
  return { verdicts, explanation, adjusted, referencesOff };
}
