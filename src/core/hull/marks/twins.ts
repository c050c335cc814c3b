import type { Face } from "../faces/face.js";
import { landing, toGraduation } from "./graduation.js";
import type { Mark } from "./mark.js";
import { type ReferencePoint, reading, type Tape } from "./tape.js";

/** Whether a mark and its twin on the other side can be set out with the same numbers. */
export interface TwinMark {
  readonly name: string;
  readonly shared: boolean;
  /** How far the twin would land from its true place with the first side's numbers [m]. */
  readonly shiftM: number;
  readonly limitM: number;
  /** The numbers for the twin's own side, in the order of the first side's readings; rounded. Empty where a reading cannot be taken there. */
  readonly ownM: readonly number[];
  /** The same for the check reading. */
  readonly ownCheckM?: number;
}

/**
 * Compares the marks of one side with what the other side's reference points, as measured there, ask for.
 * @param twin The face on the other side, with the same spots.
 * @param references That side's reference points, by the same names, where they really are.
 * @param limitM Shift that is still allowed for the sake of equal numbers [m].
 * @throws RangeError if the limit is not above zero.
 */
export function twinMarks(
  marks: readonly Mark[],
  twin: Face,
  references: readonly ReferencePoint[],
  tape: Tape,
  limitM: number,
): TwinMark[] {
  if (!(limitM > 0)) throw new RangeError(`limit must be > 0 m, got ${limitM}`);
  // marks that lean on marks find those on the twin at the same spots
  const known = [...references];
  return marks.map((mark): TwinMark => {
    const own = (from: string) => {
      const reference = known.find(({ name }) => name === from);
      const there = reference && reading(twin, reference, mark.spot, tape, mark.name);
      return there && !("problem" in there) ? there : undefined;
    };
    known.push({ name: mark.name, at: [mark.at[0], -mark.at[1], mark.at[2]], spot: mark.spot, sigmaM: 0 });
    if (mark.method !== "two tapes")
      return { name: mark.name, shared: mark.method !== "none", shiftM: 0, limitM, ownM: [] };
    const [first, second] = mark.readings;
    const [a, b] = [first && own(first.from), second && own(second.from)];
    if (!first || !second || !a || !b)
      return { name: mark.name, shared: false, shiftM: Number.NaN, limitM, ownM: [] };
    // rounding happens on both sides alike; what counts is how the true readings differ
    const move = landing([a.ray, b.ray], [first.exactM - a.exactM, second.exactM - b.exactM]);
    const shiftM = move ? Math.hypot(...move) : Number.NaN;
    const check = mark.check && own(mark.check.from);
    return {
      name: mark.name,
      shared: shiftM <= limitM,
      shiftM,
      limitM,
      ownM: [a, b].map((one) => toGraduation(one.exactM, tape.graduationM)),
      ...(check ? { ownCheckM: toGraduation(check.exactM, tape.graduationM) } : {}),
    };
  });
}
