import type { SizeReason } from "../core/circuit/sizes/types.js";
import { amps, percentAgainst, shareSet } from "./numbers.js";
import type { PaperWords } from "./paper/paper-words.js";

/** What a size breaks (or why it was taken), in one clause that starts small. */
export function sizeReason(reason: SizeReason, { electrics: { sizes: words } }: PaperWords): string {
  switch (reason.rule) {
    case "owner":
      return words.owner;
    case "drop":
      return words.drop(
        percentAgainst(reason.dropShare, reason.limitShare),
        reason.gear,
        shareSet(reason.limitShare),
      );
    case "ampacity":
      return words.ampacity(amps(reason.currentA), amps(reason.ampacityA));
    case "protection":
      return words.protection(amps(reason.ratingA), amps(reason.allowedA));
    case "least size":
      return words.least(reason.clause);
    case "suits a fuse":
      return words.suitsFuse(reason.device);
    case "price":
      return words.price;
    case "smallest made":
      return words.smallest;
    default:
      return reason satisfies never;
  }
}
