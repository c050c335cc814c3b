import type { SizeReason } from "../core/circuit/sizes/types.js";
import { amps, percent } from "./numbers.js";

/** Why a conductor is no smaller, in one clause that starts small. */
export function sizeReason(reason: SizeReason): string {
  switch (reason.rule) {
    case "owner":
      return "the owner's choice";
    case "drop":
      return `drop at ${reason.gear} ${percent(reason.dropShare)} of ${percent(reason.limitShare)} allowed`;
    case "ampacity":
      return `carries ${amps(reason.currentA)} of ${amps(reason.ampacityA)} allowed`;
    case "protection":
      return `fuse or breaker of ${amps(reason.ratingA)}, this conductor allows ${amps(reason.allowedA)}`;
    case "least size":
      return `least size allowed here (${reason.clause})`;
    case "price":
      return "the next smaller is no cheaper";
    case "smallest made":
      return "the smallest on the list";
    default:
      return reason satisfies never;
  }
}
