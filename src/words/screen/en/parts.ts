import type { PartKind } from "../../../core/parts/parts-list.js";

const kinds: Readonly<Record<PartKind, string>> = {
  conductor: "Wire",
  terminal: "Terminals",
  joint: "Joints",
  sleeve: "Sleeves",
  gland: "Glands",
  fuse: "Fuses",
  "fuse holder": "Fuse holders",
  box: "Boxes",
  switch: "Switches",
  bus: "Buses",
  tie: "Ties",
  sealant: "Sealants",
  tape: "Tapes",
  label: "Labels",
  gear: "Gear",
  other: "Other",
};

/** The shopping list, for one hand. */
export const parts = {
  working: "Working out what to buy …",
  failed: "The list could not be worked out.",
  nothing: "Nothing is needed yet. Put gear and runs into the plan, and what they take stands here.",
  kinds,
  inBasket: (done: number, all: number) => `${done} of ${all} in the basket`,
  hideDone: "Only what is left to get",
  bought: (count: number) =>
    count === 1 ? "Bought: put it on the shelf" : `Bought: put all ${count} on the shelf`,
  boughtHint:
    "The plan then has it as stock, and the list takes it from there. Undo takes it back. The ticks stand in the plan too: they go with its file.",
  notWantedHint:
    "The list asks for none of it any more. Put it on the shelf, or take it off if it went back to the shop.",
  takeOff: "Take it off",
  takeOffItem: (item: string) => `Take it off: ${item}`,
  clear: "Take all ticks away",
  clearSure: "Really? Tap again",
  total: "Total of what has a price",
  withoutPrice: (count: number) => `${count} without a price, not in the total`,
  currencies: (all: string) => `Prices are in ${all}: no total is made of two currencies.`,
  price: "Price",
  noPrice: "price not known",
  pricesWanting: (without: number, all: number) =>
    `${without} of ${all} lines have no price yet. Put in how each is sold and what it costs, and the cheapest packs and the total are worked out.`,
  toPrices: "Put in prices",
  needed: "needed",
  spare: "spare",
  onHand: "on hand",
  leftOver: "left over",
  for: "for",
  shelf: "From the shelf",
  shelfHint: "Needed, and on hand already.",
  toPrint: "Print the list, or the whole packet",
  toStock: "Stock and prices are in the lists",
  allDone: "Everything is in the basket.",
};
