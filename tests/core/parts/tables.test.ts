import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { neutralCell, plainCell, readCsv, writeCsv } from "../../../src/core/parts/tables/csv.js";
import { readLoadTable, writeLoadTable } from "../../../src/core/parts/tables/load-table.js";
import { readPriceTable, writePriceTable } from "../../../src/core/parts/tables/price-table.js";
import { readStockTable, writeStockTable } from "../../../src/core/parts/tables/stock-table.js";
import { readMoney, sumMoney, writeMoney } from "../../../src/core/quantity/money.js";
import { tableStyle } from "../../../src/packet/files/table-style.js";
import { tablesInAnyLanguage } from "../../../src/words/tables/also.js";
import { tablesInEnglish } from "../../../src/words/tables/english.js";
import { tablesInSpanish } from "../../../src/words/tables/spanish.js";

describe("hostile cells", () => {
  test.each(["=1+1", "+cmd|x", "-2+3", "@SUM(A1)", "\tx", "\rx", " =1", "'=1", '=HYPERLINK("x")', "＝1"])(
    "%j is not run as a formula, and comes back as it was",
    (text) => {
      expect(neutralCell(text)).toBe(`'${text}`);
      expect(plainCell(neutralCell(text))).toBe(text);
    },
  );
  test.each(["12", "-10", "-0.5", "+3", "fore box", "it's", "a=b", ""])("%j stays", (text) => {
    expect(neutralCell(text)).toBe(text);
    expect(plainCell(text)).toBe(text);
  });
  test("no cell written starts like a formula, whatever it holds", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const cell = neutralCell(text);
        if (!/^[+-]?\d+([.,]\d+)?$/.test(cell)) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
        expect(plainCell(cell)).toBe(text);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("RFC 4180", () => {
  test("what is written is read back", () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('a"b', "a,b", "a\r\nb", "=1", '""', "a;b"));
    const row = fc
      .array(cell, { minLength: 2, maxLength: 4 })
      .filter((cells) => cells.some((one) => one.trim() !== ""));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 5 }), (rows) => {
        const answer = readCsv(writeCsv(rows));
        expect(answer.ok && answer.rows.map((one) => one.cells)).toEqual(rows);
      }),
      { numRuns: 2000 },
    );
  });
  // RFC 4180, section 2, rules 5 to 7 (published): quoted fields, line ends and doubled quotes inside them.
  test("the RFC's own examples", () => {
    const read = (text: string) => {
      const answer = readCsv(text);
      return answer.ok ? answer.rows.map((row) => row.cells) : answer.problem;
    };
    expect(read('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ["aaa", "bbb", "ccc"],
      ["zzz", "yyy", "xxx"],
    ]);
    expect(read('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ["aaa", "b\r\nbb", "ccc"],
      ["zzz", "yyy", "xxx"],
    ]);
    expect(read('"aaa","b""bb","ccc"')).toEqual([["aaa", 'b"bb', "ccc"]]);
  });
  test("a quote left open is named where it opens", () => {
    expect(readCsv('a,b\r\nc,"d\r\ne')).toEqual({
      ok: false,
      problem: { problem: "open-quote", line: 2, column: 3 },
    });
    expect(readCsv('a,"b"c')).toMatchObject({ ok: false, problem: { problem: "text-after-quote", line: 1 } });
    expect(readCsv('a,b"c')).toMatchObject({
      ok: false,
      problem: { problem: "quote-in-plain-field", column: 4 },
    });
  });
  test("any text is read or named, never thrown at", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
        expect(typeof readCsv(text).ok).toBe("boolean");
        readStockTable(text);
        readPriceTable(text);
        readLoadTable(text);
      }),
      { numRuns: 2000 },
    );
  });
  test("a spreadsheet's semicolons and byte order mark", () => {
    expect(readCsv("\uFEFFitem;count\nM12 gland;4\n")).toMatchObject({
      ok: true,
      rows: [{ cells: ["item", "count"] }, { line: 2, cells: ["M12 gland", "4"] }],
    });
  });
});

describe("money", () => {
  test.each([
    ["12.50 EUR", 1250],
    ["EUR 12,5", 1250],
    ["0.07 USD", 7],
    ["300 JPY", 300],
  ])("%s", (text, minor) => {
    const money = readMoney(text);
    if ("problem" in money) throw new Error(money.problem);
    expect(money.minor).toBe(minor);
    expect(readMoney(writeMoney(money))).toEqual(money);
  });
  test.each(["", "12", "1,250.00 EUR", "-3 EUR", "12.505 EUR", "1 JPY EUR", "EUR 1 EUR"])(
    "%j is no price",
    (text) => {
      expect(readMoney(text)).toHaveProperty("problem");
    },
  );
  test("two currencies are never added", () => {
    const sum = sumMoney([
      { currency: "EUR", minor: 1 },
      { currency: "USD", minor: 1 },
    ]);
    expect(sum).toEqual({ ok: false, problem: { problem: "two-currencies", currencies: ["EUR", "USD"] } });
  });
});

const shows = { lengths: "inches", conductors: "awg", paper: "letter" } as const;
const inEnglish = tableStyle(shows, tablesInEnglish);
const styles = [
  ["inches, English", inEnglish],
  ["millimetres, English", tableStyle({ ...shows, lengths: "millimetres" }, tablesInEnglish)],
  ["inches and mm², Spanish", tableStyle({ ...shows, conductors: "metric" }, tablesInSpanish)],
] as const;

describe.each(styles)("tables in %s", (_, style) => {
  test("stock there and back", () => {
    const rows = [
      { item: "M12 gland", count: 4 },
      { item: "twin, red and black", count: 1, size: "16 AWG", cores: 2, lengthM: 3.3528, kind: "offcut" },
      { item: "single", count: 2, size: "8 AWG", cores: 1, colour: "red", lengthM: 7.62, kind: "spool" },
      { item: "single", count: 2, size: "2.5 mm²", cores: 1, lengthM: 0.1 + 0.2, kind: "spool" },
    ];
    expect(readStockTable(writeStockTable(rows, style), tablesInAnyLanguage)).toEqual({ rows, problems: [] });
  });
  test("any length comes back as the same number", () => {
    const lengthM = fc.double({ min: 1e-4, max: 900, noNaN: true });
    fc.assert(
      fc.property(lengthM, (metres) => {
        const row = {
          item: "wire",
          count: 1,
          size: "16 AWG",
          cores: 2,
          lengthM: metres,
          kind: "spool",
        } as const;
        const read = readStockTable(writeStockTable([row], style), tablesInAnyLanguage);
        expect(read).toEqual({ rows: [row], problems: [] });
      }),
    );
  });
  test("prices and loads there and back", () => {
    const prices = [
      { item: "=red ring", pack: "bag of 10", count: 10, price: { currency: "EUR", minor: 420 } },
    ];
    expect(readPriceTable(writePriceTable(prices, style), undefined, tablesInAnyLanguage)).toEqual({
      rows: prices,
      problems: [],
    });
    const loads = [{ name: "coaming lamp", count: "6", draws: "0.9 W", works: "9 V to 16 V" }];
    const read = readLoadTable(writeLoadTable(loads, style), tablesInAnyLanguage);
    expect([read.problems, read.rows.map(({ cells }) => cells)]).toEqual([[], loads]);
  });
});

describe("stock, prices and loads", () => {
  test("the heading names the unit; a cell with its own goes before it", () => {
    const read = (text: string) => readStockTable(text, tablesInAnyLanguage);
    expect(
      read("item,count,size,length (in)\nw,1,16 AWG,132\nw,1,16 AWG,7 1/2\nw,1,16 AWG,2 m\n"),
    ).toMatchObject({
      rows: [{ lengthM: 3.3528 }, { lengthM: 0.1905 }, { lengthM: 2 }],
      problems: [],
    });
    expect(
      read("artículo;cantidad;sección;longitud (pies);clase\nw;1;16 AWG;2;retal\n").problems,
    ).toMatchObject([{ problem: "unknown-column", column: "longitud (pies)", nearest: "longitud" }]);
    expect(read("item,count,size,length (V)\nw,1,16 AWG,2\n").problems).toMatchObject([
      { problem: "unknown-column" },
    ]);
    expect(read("item,count,size,length\nw,1,16 AWG,132\n").problems).toMatchObject([
      { problem: "not-a-quantity", fault: { code: "no unit" } },
    ]);
  });
  test("no two columns have one heading in any language, so that each is read back as itself", () => {
    for (const { headings } of [tablesInEnglish, tablesInSpanish])
      expect(new Set(Object.values(headings)).size).toBe(Object.keys(headings).length);
    for (const [id, said] of Object.entries(tablesInSpanish.headings))
      expect(tablesInAnyLanguage.get(said), said).toBe(id);
  });
  test("mistakes by line", () => {
    const { rows, problems } = readStockTable(
      "item,count,size,length,kind\nglands,-2,,,\nwire,1,16 AWG,3 V,\nwire,1,16 AWG,,\nties,x,,,\nwire,1,16 AWG,3 m,drum\n",
    );
    expect(rows).toEqual([]);
    expect(problems).toMatchObject([
      { problem: "negative-stock", line: 2, found: "-2" },
      { problem: "not-a-quantity", line: 3, column: "length" },
      { problem: "empty-cell", line: 4, column: "length" },
      { problem: "not-a-count", line: 5, found: "x" },
      { problem: "not-one-of", line: 6, column: "kind", found: "drum", allowed: ["offcut", "spool"] },
    ]);
  });
  test("an unknown column is named with the nearest known one", () => {
    expect(readStockTable("item,cuont\nx,1\n").problems).toMatchObject([
      { problem: "unknown-column", column: "cuont", nearest: "count" },
      { problem: "missing-column", column: "count" },
    ]);
  });
  test("prices there and back; two currencies named", () => {
    const rows = [
      { item: "red ring M5", pack: "bag of 10", count: 10, price: { currency: "EUR", minor: 420 } },
      { item: "red ring M5", pack: "single", count: 1 },
    ];
    expect(readPriceTable(writePriceTable(rows, inEnglish))).toEqual({ rows, problems: [] });
    const mixed = readPriceTable("item,count,price\na,1,1 EUR\nb,1,1 USD\n");
    expect(mixed.problems).toMatchObject([
      { problem: "not-money", line: 3, money: { problem: "two-currencies" } },
    ]);
  });
  test("loads keep the owner's words", () => {
    const rows = [{ name: "coaming lamp", count: "6", draws: "0.9 W", works: "9 V to 16 V" }];
    const read = readLoadTable(writeLoadTable(rows, inEnglish));
    expect(read.problems).toEqual([]);
    expect(read.rows.map((row) => row.cells)).toEqual(rows);
    expect(readLoadTable("name,draws\nlamp,12 V\n").problems).toMatchObject([
      { problem: "not-a-quantity", line: 2 },
    ]);
  });
});
