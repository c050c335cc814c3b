/** Boxes, ways, cuts and parts. */
export const layout = {
  boxes: {
    none: "This plan has no boxes.",
    drilling: "Drilling:",
    heads: { face: "face", entry: "entry", gland: "gland", hole: "hole", along: "along", up: "up" },
    inside: (each: string) => `Inside, from the lower left corner: ${each}.`,
    at: (what: string, x: string, y: string, turned: boolean) =>
      `${what} at ${x}, ${y}${turned ? ", turned" : ""}`,
    sayWhere: "say where the templates go with --to FOLDER",
    notDrilled: "no box here is to be drilled; 'skiffloom boxes PLAN' tells why",
  },
  cuts: {
    heads: { from: "cut from", piece: "piece", length: "length" },
    left: "left over",
    scrap: "scrap",
  },
  routes: {
    runs: "Runs",
    heads: {
      run: "run",
      from: "from",
      to: "to",
      past: "past",
      way: "way",
      slack: "slack",
      cut: "cut",
    },
    noWay: "no way found",
    inAll: (slack: string, inches: boolean) =>
      `${slack} of slack in all cables together; lengths to cut are rounded up to ${inches ? "the inch" : "10 mm"}.`,
    slack: "Slack",
    ends: (run: string, start: string, end: string) => `${run}: at its start ${start}; at its end ${end}.`,
    together: "What lies together",
    legHeads: {
      leg: "leg, or run without legs",
      from: "from",
      to: "to",
      length: "length",
      holds: "holds",
      bundle: "bundle",
      supports: "supports",
    },
    count: (runs: number) => `${runs} ${runs === 1 ? "run" : "runs"}`,
  },
  parts: {
    wanting: (without: number, all: number) =>
      `${without} of ${all} items to buy have no price yet. --csv prices writes a table to fill in, --prices FILE reads it.`,
    wire: "Wire",
    wireHeads: {
      wire: "wire",
      needed: "needed",
      stock: "from stock",
      buy: "to buy",
      price: "price",
    },
    heads: {
      needed: "needed",
      spares: "spares",
      stock: "on hand",
      buy: "to buy",
      left: "left",
      price: "price",
    },
    total: (money: string) => `Total of what has a price: ${money}.`,
    without: (count: number) =>
      ` ${count} ${count === 1 ? "item has" : "items have"} no price and ${count === 1 ? "is" : "are"} not in it.`,
    booked: (lines: string, path: string) => `${lines} of stock brought up to date: written to ${path}`,
    boughtHeads: { bought: "bought", amount: "amount", against: "against the list" },
    allBought: "all that is wanted",
    nothingBought: "Nothing is noted as bought: nothing written.",
    shelved: (lines: string, path: string) =>
      `${lines} of what was bought put on the shelf: written to ${path}`,
    nothing: "The plan has all that already: nothing written.",
    writtenTo: (path: string) => `written to ${path}`,
  },
};
