import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";

export const partRules = {
  "spool-length": {
    title: "No run is longer than its wire can be had",
    why: "A joint in the middle of a run is one more to fail, out of reach.",
    mend: "A longer spool, wire cut off by the metre or foot, or a box half-way.",
    says: (say) =>
      `${say.at} needs ${say.figure} of ${say.term("wire")} in one piece; the longest to be had is ${say.limit}.`,
  },
  "negative-stock": {
    title: "Stock is counted",
    why: "Less than none on hand makes the list buy too much, or hides a line that was booked twice.",
    mend: "Count what is there.",
    says: (say) => `The stock says there are ${say.figure} of ${say.term("item")}.`,
  },
  "two-currencies": {
    title: "Prices are in one currency",
    why: "Two currencies cannot be added up, and nobody here knows the rate of the day.",
    mend: "Write all prices in one, or take the others out.",
    says: (say) =>
      `Prices are written in ${say
        .term("currencies")
        .split(" ")
        .map((one) => (one === "XXX" ? "no named currency" : one))
        .join(" and ")}: there is no total.`,
  },
  "price-missing": {
    title: "What is bought has a price",
    why: "A total that leaves things out is not what the shop will ask.",
    mend: "Add the price, or take the line as one to ask for.",
    says: (say) => `${say.all} ${say.many ? "have" : "has"} no price.`,
    unchecked: (say) =>
      `${say.all} ${say.many ? "have" : "has"} no price: the total leaves ${say.many ? "them" : "it"} out.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
