import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readCsv } from "../../src/core/parts/tables/csv.js";
import { spreadsheetRows, spreadsheetText } from "../core/parts/spreadsheet.js";
import { command } from "./command.js";
import { folderWith } from "./run.js";

const utility = "examples/utility.yaml";
const csv = async (plan: string, what: string) => (await command(["parts", plan, "--csv", what])).out;
const partsOf = async (...words: string[]) =>
  JSON.parse((await command(["parts", ...words, "--json"])).out).parts;

/** A file of a new folder with a text in it. */
function file(name: string, text: string): string {
  const path = join(folderWith(), name);
  writeFileSync(path, text);
  return path;
}

describe("tables out", () => {
  test("the list has every line of wire and parts, with what to buy and what it costs", async () => {
    const [heading, ...rows] = spreadsheetRows(await csv(utility, "list"));
    expect(heading).toEqual([
      "kind",
      "item",
      "needed (pieces; wire: in)",
      "spares",
      "from stock (pieces; wire: in)",
      "to buy (pieces; wire: in)",
      "bought (pieces; wire: in)",
      "packs",
      "left over (pieces; wire: in)",
      "price",
    ]);
    const parts = await partsOf(utility);
    expect(rows).toHaveLength(parts.wire.length + parts.list.lines.length);
    for (const line of parts.list.lines) {
      const row = rows.find(([kind, item]) => kind === line.kind && item === line.item);
      expect(row?.slice(2, 6), line.item).toEqual(
        [line.needed, line.spares, line.fromStock, line.toBuy].map(String),
      );
    }
  });
  test.each([
    ["examples/utility.yaml", "in", 25.4],
    ["examples/launch.yaml", "mm", 1],
  ])(
    "%s: cuts, flags, runs and holes in the plan's own unit, which the heading names",
    async (plan, unit, mm) => {
      const table = async (...words: string[]) => {
        const [heading = [], ...rows] = spreadsheetRows((await command([...words, "--csv"])).out);
        return (column: string) => {
          const at = heading.indexOf(column);
          expect(at, `${column} of ${heading.join(", ")}`).toBeGreaterThanOrEqual(0);
          return rows.map((row) => Number(row[at]));
        };
      };
      const json = async (command_: string) => JSON.parse((await command([command_, plan, "--json"])).out);
      const near = (
        shown: readonly number[],
        expected: readonly number[],
        unitMm: number,
        // half of the last digit shown: a hundredth of a millimetre, a ten-thousandth of an inch, a tenth of a millimetre of wire in metres
        offMm = unitMm === 1 ? 0.0051 : unitMm === 1000 ? 0.051 : 0.0013,
      ) => {
        expect(shown.length).toBe(expected.length);
        expect(shown.length).toBeGreaterThan(0);
        // half of the last digit shown: a hundredth of a millimetre, a ten-thousandth of an inch, a tenth of a millimetre of wire in metres
        shown.forEach((value, at) => {
          expect(Math.abs(value * unitMm - (expected[at] ?? Number.NaN))).toBeLessThanOrEqual(offMm);
        });
      };
      const { kinds, labels } = await json("cuts");
      type Length = { lengthMm: number; fromMm: number; toMm: number };
      const pieces: Length[] = kinds.flatMap(({ plan: cut }: { plan: { lengths: { cuts: Length[] }[] } }) =>
        cut.lengths.flatMap(({ cuts }) => cuts),
      );
      const cuts = await table("cuts", plan);
      near(
        cuts(`from (${unit})`),
        pieces.map(({ fromMm }) => fromMm),
        mm,
      );
      near(
        cuts(`to (${unit})`),
        pieces.map(({ toMm }) => toMm),
        mm,
      );
      near(
        cuts(`length (${unit})`),
        pieces.map(({ lengthMm }) => lengthMm),
        mm,
      );
      // pieces of whole inches are kept in whole millimetres
      const pieceOffMm = unit === "in" ? 0.5 : 0.051;
      const flags = await table("cuts", plan, "--labels");
      near(
        flags(`length (${unit})`),
        labels.map(({ lengthMm }: Length) => lengthMm),
        mm,
        pieceOffMm,
      );
      const wireUnit = unit === "in" ? "in" : "m";
      const wireMm = unit === "in" ? 25.4 : 1000;
      const { routes } = await json("routes");
      const runs = await table("routes", plan);
      type Run = { cut: { routeM: number; slackM: number; cutM: number } };
      const of = (what: keyof Run["cut"]) => routes.runs.map((run: Run) => run.cut[what] * 1000);
      near(runs(`way (${wireUnit})`), of("routeM"), wireMm);
      near(runs(`slack (${wireUnit})`), of("slackM"), wireMm);
      near(runs(`cut (${wireUnit})`), of("cutM"), wireMm, pieceOffMm);
      const { boxes } = await json("boxes");
      type Entry = { x: number; y: number; holeMm: number };
      const entries: Entry[] = boxes.flatMap(
        ({ layout }: { layout?: { entries: Entry[] } }) => layout?.entries ?? [],
      );
      const holes = await table("boxes", plan);
      near(
        holes(`hole (${unit})`),
        entries.map(({ holeMm }) => holeMm),
        mm,
      );
      near(
        holes(`x (${unit})`),
        entries.map(({ x }) => x),
        mm,
      );
      near(
        holes(`y (${unit})`),
        entries.map(({ y }) => y),
        mm,
      );
      if (unit === "in")
        near(
          holes("drill (mm)"),
          entries.map(({ holeMm }) => holeMm),
          1,
        );
    },
  );
  test("a table that there is not is refused with those there are", async () => {
    expect(await command(["parts", utility, "--csv", "sotck"])).toMatchObject({
      status: 2,
      err: "--csv takes list, stock, prices, loads, not sotck\n",
    });
  });
});

describe.each(["examples/utility.yaml", "examples/launch.yaml", "examples/tender.yaml"])(
  "%s, out, through a spreadsheet, and in again",
  (plan) => {
    test("stock: the same list and the same cuts", async () => {
      const table = file("stock.csv", spreadsheetText(await csv(plan, "stock")));
      expect(await partsOf(plan, "--stock", table)).toEqual(await partsOf(plan));
    });
    test("prices: the same list and total", async () => {
      const table = file("prices.csv", spreadsheetText(await csv(plan, "prices")));
      const [before, after] = [await partsOf(plan), await partsOf(plan, "--prices", table)];
      expect(after.total).toEqual(before.total);
      expect(after.list.lines.map((line: { price?: unknown }) => line.price)).toEqual(
        before.list.lines.map((line: { price?: unknown }) => line.price),
      );
    });
    test("loads: nothing to change, and nothing written", async () => {
      const folder = folderWith(plan);
      const copy = join(folder, plan.split("/").at(-1) ?? "");
      const table = join(folder, "loads.csv");
      writeFileSync(table, spreadsheetText(await csv(plan, "loads")));
      const taken = await command(["parts", copy, "--loads", table]);
      expect(taken).toMatchObject({ status: 0, err: "" });
      expect(taken.out).toContain("The plan has all that already");
      expect(readFileSync(copy, "utf8")).toBe(readFileSync(plan, "utf8"));
    });
  },
);

describe("tables in", () => {
  test("a price filled in for what had none is counted", async () => {
    const rows = spreadsheetRows(await csv(utility, "prices"));
    const before = await partsOf(utility);
    expect(before.withoutPrice).toContain("sounder");
    const filled = rows.map((cells) =>
      cells[0] === "sounder" ? [...cells.slice(0, 3), "180.00 USD"] : cells,
    );
    const table = file("prices.csv", filled.map((cells) => cells.map(quoted).join(";")).join("\n"));
    const after = await partsOf(utility, "--prices", table);
    expect(after.withoutPrice).not.toContain("sounder");
    expect(after.total.minor - before.total.minor).toBe(18_000);
  });
  test("a count of the shelf stands in the plan's place", async () => {
    const table = file("stock.csv", "item,count\nM16 gland,50\n");
    const { list } = await partsOf(utility, "--stock", table);
    const line = list.lines.find(({ item }: { item: string }) => item === "M16 gland");
    expect(line).toMatchObject({ toBuy: 0, leftOver: 50 - line.needed });
    expect(
      list.lines.some(
        (one: { item: string; fromStock: number }) => one.item !== "M16 gland" && one.fromStock > 0,
      ),
    ).toBe(false);
  });
  test.each([
    ["--stock", "item,count\nM16 gland,-2\n", "line 2, count"],
    ["--stock", "item,count,size,length,kind\nw,1,16 AWG,3 m,drum\n", "none of offcut, spool"],
    ["--prices", "item,count,price\na,1,1 EUR\nb,1,1 USD\n", "EUR and USD"],
    ["--loads", "name,draws\nlamp,12 V\n", "line 2, draws"],
  ])("%s: %j is refused by line", async (flag, text, says) => {
    const { status, err, out } = await command(["parts", utility, flag, file("table.csv", text)]);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toContain(says);
  });
  test("loads: what differs is set, what is new is added, and a formula stays a name", async () => {
    const copy = join(folderWith(utility), "utility.yaml");
    const table = file("loads.csv", "name,count,draws,role\nsounder,,11 W,\n'=chart lamp,2,1.5 W,lighting\n");
    const taken = await command(["parts", copy, "--loads", table]);
    expect(taken).toMatchObject({ status: 0, err: "" });
    const gear = spreadsheetRows(await csv(copy, "loads"));
    expect(gear.find(([name]) => name === "sounder")?.slice(0, 4)).toEqual([
      "sounder",
      "1",
      "electronics",
      "11 W",
    ]);
    expect(gear.find(([name]) => name === "'=chart lamp")?.slice(0, 4)).toEqual([
      "'=chart lamp",
      "2",
      "lighting",
      "1.5 W",
    ]);
    const before = readFileSync(utility, "utf8").split("\n");
    const changed = readFileSync(copy, "utf8")
      .split("\n")
      .filter((line) => !before.includes(line));
    expect(changed.length).toBeLessThanOrEqual(3);
  });
});

test("without prices it is said once over the list, with what to do, and the total tells what it leaves out", async () => {
  const said = async (plan: string) => (await command(["parts", plan])).out.replaceAll(/\s+/g, " ");
  const bare = await said(file("bare.yaml", readFileSync(utility, "utf8").replace(/\nstock:[\s\S]*$/, "\n")));
  expect(bare).toMatch(/^\d+ of \d+ items to buy have no price yet\. --csv prices /);
  expect(bare).not.toContain("not on any price list");
  expect(bare).toMatch(/\d+ items have no price and are not in it\./);
  const priced = await said(utility);
  expect(priced).not.toContain("have no price yet");
  expect(priced).toContain("1, not on any price list");
});

describe("when the work is done", () => {
  const book = async (plan: string, ...words: string[]) => {
    const to = join(folderWith(), "after.yaml");
    const done = await command(["parts", plan, "--book", "--to", to, ...words]);
    expect(done).toMatchObject({ status: 0, err: "" });
    return to;
  };
  const stockOf = async (plan: string) => {
    const read = readCsv(await csv(plan, "stock"));
    if (!read.ok) throw new Error(read.problem.problem);
    return new Map(read.rows.slice(1).map(({ cells: [item = "", count = ""] }) => [item, Number(count)]));
  };
  test.each(["examples/utility.yaml", "examples/tender.yaml"])(
    "%s: each part's rest and spares lie on the shelf, with a price or without",
    async (plan) => {
      const { list } = await partsOf(plan);
      const stock = await stockOf(await book(plan));
      for (const { item, spares, leftOver } of list.lines)
        expect(stock.get(item) ?? 0, item).toBe(leftOver + spares);
    },
  );
  test("spares of what no price list has are there too", async () => {
    const bare = file("bare.yaml", readFileSync(utility, "utf8").replace(/^prices:\n(?:[ #].*\n|\n)*/m, ""));
    const { list } = await partsOf(bare);
    const spared = list.lines.filter(
      ({ spares, price }: { spares: number; price?: unknown }) => spares > 0 && price === undefined,
    );
    expect(spared.length).toBeGreaterThan(3);
    const stock = await stockOf(await book(bare));
    for (const { item, spares, leftOver } of spared) expect(stock.get(item), item).toBe(leftOver + spares);
  });
  test("wire: what was on hand or bought, less what is in the boat, the old ends and the scrap", async () => {
    const lengthM = async (plan: string) => {
      const [heading, ...rows] = spreadsheetRows(await csv(plan, "stock"));
      expect(heading?.[5]).toBe("length (in)");
      return rows.reduce((sum, [, count, , , , length]) => sum + Number(count) * Number(length) * 0.0254, 0);
    };
    const { kinds } = JSON.parse((await command(["cuts", utility, "--json"])).out);
    let [openedMm, leftMm] = [0, 0];
    for (const { plan } of kinds)
      for (const length of plan.lengths) {
        if (length.source === "offcut" || length.source === "spool") openedMm += length.lengthMm;
        if (length.leftIsUseful) leftMm += length.leftMm;
      }
    const [before, after] = [await lengthM(utility), await lengthM(await book(utility))];
    // lengths on hand are cut in whole inches: less than one inch of each is not counted
    expect(Math.abs(after - (before - openedMm / 1000 + leftMm / 1000))).toBeLessThan(0.0254 * 4);
  });
  test("counted from a table: what the plan had and the table has not is none", async () => {
    const plan = file(
      "odd.yaml",
      readFileSync(utility, "utf8").replace("M16 gland: 2\n", "M16 gland: 2\n    odd lamp: 4\n"),
    );
    expect((await stockOf(plan)).get("odd lamp")).toBe(4);
    const table = file("stock.csv", "item,count\nM16 gland,50\nspare lamp,1\n");
    const { list } = await partsOf(plan, "--stock", table);
    const glands = list.lines.find(({ item }: { item: string }) => item === "M16 gland");
    const stock = await stockOf(await book(plan, "--stock", table));
    expect(stock.get("spare lamp")).toBe(1);
    expect(stock.get("M16 gland")).toBe(50 - glands.needed);
    expect(stock.get("odd lamp")).toBe(0);
  });
  test("booked twice, nothing is bought for spares again", async () => {
    const once = await book(utility);
    const { list } = await partsOf(once);
    for (const { item, spares, fromStock } of list.lines)
      expect(fromStock, item).toBeGreaterThanOrEqual(spares);
  });
  /** The utility boat with some of its list bought, one thing more than it wants, and one it does not want. */
  const shopped = () =>
    file(
      "shopped.yaml",
      `${readFileSync(utility, "utf8")}\nbought: {parts: {M16 gland: 11, "ring, red, M4": 4, odd lamp: 3, "=1+1": 2}, wire: [{size: 4 AWG, colour: red, length: 6 ft}]}\n`,
    );
  test("what was bought is used with the stock and counts once: the same lies there as if it had been bought from the list", async () => {
    const [plain, stock] = [await stockOf(await book(utility)), await stockOf(await book(shopped()))];
    expect(stock.get("odd lamp")).toBe(3);
    for (const item of ["M16 gland", "M16 plug"]) expect(stock.get(item), item).toBe(plain.get(item));
    const booked = await book(shopped());
    expect(readFileSync(booked, "utf8")).not.toMatch(/^bought:/m);
    expect((await command(["parts", booked, "--shelve"])).out).toContain("nothing written");
  });
  test("--shelve: what was bought is stock from then on, and off the list as far as it goes", async () => {
    const plan = shopped();
    const told = (await command(["parts", plan])).out.replaceAll(/\s+/g, " ");
    expect(told).toContain("ring, red, M4 4 4 bought, 4 more wanted");
    expect(told).toContain("odd lamp 3 no longer on the list");
    const rows = spreadsheetRows(await csv(plan, "list"));
    const column = rows[0]?.findIndex((heading) => heading.startsWith("bought")) ?? -1;
    const bought = new Map(rows.map((row) => [row[1], row[column]]));
    expect([bought.get("M16 gland"), bought.get("ring, red, M4"), bought.get("odd lamp")]).toEqual([
      "11",
      "4",
      "3",
    ]);
    expect(bought.get("'=1+1")).toBe("2");
    const to = join(folderWith(), "shelved.yaml");
    expect(await command(["parts", plan, "--shelve", "--to", to])).toMatchObject({ status: 0, err: "" });
    const stock = await stockOf(to);
    expect([stock.get("M16 gland"), stock.get("ring, red, M4"), stock.get("odd lamp")]).toEqual([13, 16, 3]);
    const { list, bought: left } = await partsOf(to);
    expect(left).toEqual({ wire: [], parts: [] });
    expect(list.lines.find(({ item }: { item: string }) => item === "M16 gland").toBuy).toBe(0);
    expect(list.lines.find(({ item }: { item: string }) => item === "ring, red, M4").toBuy).toBe(4);
  });
  test("--to a file that is there needs --force", async () => {
    const { status } = await command(["parts", utility, "--book", "--to", utility]);
    expect(status).toBe(2);
  });
});

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
