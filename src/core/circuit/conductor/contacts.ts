import type { JointKind, Protection } from "../../plan/model/common.js";
import { deviceDrop, holderDrop, switchDrop } from "../../reference/contacts.js";
import { joints } from "../../reference/joints.js";

/**
 * Usual resistance of a sound joint on a conductor.
 * @param areaMm2 Copper area of the thinner conductor in it [mm²].
 * @returns Resistance [Ω]; common practice, no source.
 * @throws RangeError if the area is not above zero.
 */
export function jointOhm(kind: JointKind, areaMm2: number): number {
  if (!(areaMm2 > 0)) throw new RangeError(`area must be > 0 mm², got ${areaMm2}`);
  const { ohmAt1Mm2, leastOhm } = joints[kind];
  return Math.max(leastOhm, ohmAt1Mm2 / areaMm2);
}

/**
 * Fuse or breaker with its holder, warm: usual drop at the rating over the rating.
 * @returns Resistance [Ω]; common practice, no source.
 * @throws RangeError if the rating is not above zero.
 */
export function protectionOhm(device: Protection["device"], ratingA: number): number {
  if (!(ratingA > 0)) throw new RangeError(`rating must be > 0 A, got ${ratingA}`);
  return (deviceDrop[device] + holderDrop[device]) / ratingA;
}

/**
 * Closed contacts of a switch; where no rating is given, that of a usual one.
 * @returns Resistance [Ω]; common practice, no source.
 * @throws RangeError if the rating is not above zero.
 */
export function switchOhm(ratingA: number = switchDrop.usualRatingA): number {
  if (!(ratingA > 0)) throw new RangeError(`rating must be > 0 A, got ${ratingA}`);
  return switchDrop.atRatingV / ratingA;
}
