import type { SizeReason } from "../core/circuit/sizes/types.js";
import { amps, percentAgainst, shareSet } from "./numbers.js";

/** What a size breaks (or why it was taken), in one clause that starts small. */
export function sizeReason(reason: SizeReason): string {
  switch (reason.rule) {
    case "owner":
      return "the owner's choice";
    case "drop":
      return `drop of ${percentAgainst(reason.dropShare, reason.limitShare)} at ${reason.gear}, ${shareSet(reason.limitShare)} allowed`;
    case "ampacity":
      return `${amps(reason.currentA)} to carry, ${amps(reason.ampacityA)} allowed`;
    case "protection":
      return `${amps(reason.ratingA)} fuse or breaker, ${amps(reason.allowedA)} allowed`;
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
