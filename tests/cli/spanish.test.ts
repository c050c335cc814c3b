/** The command line in Spanish: whole, chosen by option or by the system, and its tables read back in either language. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { languageAsked, languageOf } from "../../src/cli/language.js";
import { terminalInEnglish } from "../../src/words/terminal/english.js";
import { terminalInSpanish } from "../../src/words/terminal/spanish.js";
import { spreadsheetRows } from "../core/parts/spreadsheet.js";
import { englishLeftIn, pairsOf, sameFigures } from "../words/spanish.js";
import { command } from "./command.js";
import { folderWith, skiffloom } from "./run.js";

const es = (...words: readonly string[]) => command([...words, "--language", "es"]);

/** Words alike in both languages, what standards are called, and ids of rules, which are the same in any language. */
const alike = new Set(["usual", "no", "son", "peukert", "gm", "json", "schema"]);
const units = new Set(["mm", "mv", "ft", "ah", "wh", "ml", "rpm"]);
const sameInBoth =
  /33 CFR Part 183 Subpart [A-Z]|NBS Handbook|Copper Wire Tables|Electrical Installation Guide|ABYC [A-Z]-\d+|^ +[a-z]+(-[a-z]+)+: /gm;
/** Options, commands, keys and examples of the plan's format, file names. */
const format =
  /\{.*\}|--?[a-z][a-z-]*|'[^']*'|\([a-z| ]+\)|skiffloom [a-z]+|\S+\.(?:md|yaml|csv)|start from|box catalogue|flat-bottomed skiff|vee-bottomed utility|round tender|sit-on-top kayak|sit-in kayak|stands at|half-breadth|NAME|water: sea|stations, lines/g;

/** What is English in a Spanish text, but for what the plan itself says. */
function leftIn(spanish: string, english: string, plan: string): string[] {
  const bare = (text: string) => text.replaceAll(sameInBoth, " ").replaceAll("\u00a0", " ");
  const words = new Set(plan.toLowerCase().match(/\p{L}+/gu));
  const owners = new Set([...pairsOf(plan), ...pairsOf(plan.replaceAll("-", " "))]);
  const known = new Set(pairsOf(bare(english)));
  const own = (word: string) => words.has(word) || alike.has(word) || units.has(word);
  return bare(spanish)
    .replaceAll(/^ +se llama .*$/gm, "")
    .split(/\n| {2,}/)
    .flatMap((line) => [
      ...englishLeftIn(line)
        .filter((word) => !alike.has(word.toLowerCase()) && !words.has(word.toLowerCase()))
        .map((word) => `${word}: ${line}`),
      ...pairsOf(line)
        .filter((pair) => known.has(pair) && !owners.has(pair) && !pair.split(/[ -]/).every(own))
        .map((pair) => `${pair}: ${line}`),
    ]);
}

describe.each([
  [
    "examples/utility.yaml",
    [
      "check --working",
      "figures --assumed",
      "boxes",
      "cuts",
      "routes --slack",
      "parts",
      "form",
      "marks --why",
      "float",
      "work --all",
      "prove --sheet",
      "prove --water",
    ],
  ],
  ["examples/launch.yaml", ["figures", "parts"]],
  ["examples/second-season.yaml", ["prove", "work --built", "cuts --labels"]],
])("%s", (path, commands) => {
  const plan = readFileSync(path, "utf8");
  test.each(commands)(
    "%s: nothing of it is English but the plan's own words, and the figures are the same",
    async (line) => {
      const [name = "", ...flags] = line.split(" ");
      const words = [name, path, ...flags, ...(name === "work" ? ["--now", "2026-04-11 09:00"] : [])];
      const [spanish, english] = [await es(...words), await command(words)];
      expect([spanish.status, spanish.err]).toEqual([english.status, ""]);
      expect(spanish.out).not.toBe(english.out);
      expect(leftIn(spanish.out, english.out, plan)).toEqual([]);
      const digits = (text: string) => text.replaceAll(/\d+(?:st|nd|rd|th)\b|\d+\.ª/g, "");
      if (line !== "prove") sameFigures(digits(spanish.out), digits(english.out));
    },
  );
});

test("what a change of plan does", async () => {
  const [tender, changed] = ["examples/tender.yaml", join(folderWith(), "changed.yaml")];
  const text = readFileSync(tender, "utf8");
  writeFileSync(
    changed,
    text
      .replace("count: 2 ", "count: 3 ")
      .replace("lengths: [3 ft 2 in, 2 ft]", "lengths: [3 ft 2 in, 2 ft, 18 in]"),
  );
  const [spanish, english] = [
    await es("changes", tender, changed),
    await command(["changes", tender, changed]),
  ];
  expect(spanish.status).toBe(0);
  expect(leftIn(spanish.out, english.out, readFileSync(changed, "utf8"))).toEqual([]);
});

test("the help of every command, with the same options", async () => {
  const names = Object.keys(terminalInEnglish.help);
  expect(names.length).toBeGreaterThan(18);
  for (const [name, english] of Object.entries(terminalInEnglish.help)) {
    const said = Object.entries(terminalInSpanish.help).find(([one]) => one === name)?.[1] ?? "";
    const bare = (text: string) => text.replaceAll(format, " ");
    expect(leftIn(bare(said), bare(english), ""), name).toEqual([]);
    const options = (text: string) =>
      [...new Set(text.match(/(?<!\S)\[?--[a-z]+/g))].map((one) => one.replace("[", "")).toSorted();
    expect(options(said), name).toEqual(options(english));
  }
  expect((await es("--help")).out).toContain("qué está mal");
  expect((await es("check", "--help")).out).toContain("lo más grave primero");
});

/** Every sentence of the command line's own, said with made-up names. */
function sentences(words: unknown, at = ""): [string, string][] {
  if (typeof words === "string") return [[at, words]];
  if (typeof words === "function")
    return [
      [
        at,
        String(
          words(...Array.from({ length: words.length }, (_, index) => [2, "Xu", 3, "Yo", 5, "Zi"][index])),
        ),
      ],
    ];
  if (typeof words !== "object" || words === null) return [];
  return Object.entries(words).flatMap(([key, value]) => sentences(value, `${at}.${key}`));
}

test("no sentence of the command line's own, of help, problem or heading, is English", () => {
  const { help: _help, problems: _problems, tables, ...own } = terminalInSpanish;
  const { twoCurrencies: _one, ...readings } = own.work.tables;
  const { takes: _two, ...commonWords } = own.common.words;
  const all = sentences({
    ...own,
    common: { ...own.common, words: commonWords },
    work: { ...own.work, tables: readings },
    headings: tables.headings,
  });
  expect(all.length).toBeGreaterThan(300);
  for (const [at, said] of all) {
    if (at.includes("aims") || at === ".language") continue;
    const bare = said.replaceAll(format, " ").replaceAll(sameInBoth, " ");
    expect(
      englishLeftIn(bare).filter((word) => !alike.has(word.toLowerCase())),
      `${at}: ${said}`,
    ).toEqual([]);
  }
});

test.each([
  [["check"], "check necesita un archivo de plan"],
  [["chek", "x"], "no hay ninguna orden chek; ¿querías decir check?"],
  [["check", "nowhere.yaml"], "no se puede leer nowhere.yaml: no existe ese archivo"],
  [["marks", "examples/tender.yaml", "--face", "x"], "solo hay thwart front"],
  [["float", "examples/tender.yaml", "--move"], "no hay ninguna opción --move; solo hay --json"],
  [["packet", "examples/tender.yaml", "--paper", "a5"], "--paper admite letter o a4, no a5"],
  [["apply", "examples/tender.yaml", "99"], "no hay hallazgo 99"],
  [["work", "examples/tender.yaml", "--now", "soon"], "--now admite un día"],
])("%j is refused in Spanish", async (words, says) => {
  const { status, err } = await es(...words);
  expect(status).toBe(2);
  expect(err).toContain(says);
  expect(leftIn(err.replaceAll(format, " "), "", words.join(" "))).toEqual([]);
});

describe("which language", () => {
  // POSIX: of LC_ALL, LC_MESSAGES and LANG the first that is set and not empty counts (IEEE Std 1003.1, Base Definitions 8.2; from memory)
  test.each([
    [{}, "en"],
    [{ LANG: "es_ES.UTF-8" }, "es"],
    [{ LANG: "es" }, "es"],
    [{ LANG: "es_419@x" }, "es"],
    [{ LANG: "en_US.UTF-8", LC_ALL: "es_MX.UTF-8" }, "es"],
    [{ LANG: "es_ES.UTF-8", LC_ALL: "C" }, "en"],
    [{ LANG: "es_ES.UTF-8", LC_ALL: "" }, "es"],
    [{ LANG: "de_DE", LC_MESSAGES: "es_AR" }, "es"],
    [{ LANG: "est_EE" }, "en"],
  ])("%j: %s", (env, language) => expect(languageOf(env)).toBe(language));
  test("the option goes before the system's, wherever it stands", () => {
    expect(languageAsked(["--language", "es", "check", "x"])).toEqual({
      language: "es",
      rest: ["check", "x"],
    });
    expect(languageAsked(["check", "x", "--language=en"])).toEqual({ language: "en", rest: ["check", "x"] });
    expect(languageAsked(["check", "--", "--language", "es"]).language).toBeUndefined();
    const ran = skiffloom(["check", "examples/tender.yaml"], "", { LC_ALL: "es_ES.UTF-8" });
    expect(ran.out).toContain("0 alto");
    const other = skiffloom(["check", "examples/tender.yaml", "--language", "en"], "", {
      LC_ALL: "es_ES.UTF-8",
    });
    expect(other.out).toContain("0 stop");
  });
  test("data are the same in any language", async () => {
    const words = ["parts", "examples/tender.yaml", "--json"];
    expect((await es(...words)).out).toBe((await command(words)).out);
  });
});

describe("tables", () => {
  const plan = "examples/tender.yaml";
  const written = (text: string) => {
    const path = join(folderWith(), "table.csv");
    writeFileSync(path, text);
    return path;
  };
  const partsOf = async (...words: string[]) =>
    JSON.parse((await command(["parts", ...words, "--json"])).out).parts;
  test.each([
    [["parts", plan, "--csv", "list"]],
    [["parts", plan, "--csv", "stock"]],
    [["parts", plan, "--csv", "prices"]],
    [["parts", plan, "--csv", "loads"]],
    [["cuts", plan, "--csv"]],
    [["cuts", plan, "--labels", "--csv"]],
    [["routes", plan, "--csv"]],
    [["boxes", plan, "--csv"]],
  ])("%j: headings and words in Spanish, figures as they are", async (words) => {
    const [[heads = [], ...rows], [own = [], ...theirs]] = [
      spreadsheetRows((await es(...words)).out),
      spreadsheetRows((await command(words)).out),
    ];
    expect(heads.filter((head, at) => head === own[at] && !/^[xy] \(/.test(head))).toEqual([]);
    const figures = (all: string[][]) => all.map((row) => row.filter((cell) => /^-?[\d.]+$/.test(cell)));
    expect(figures(rows)).toEqual(figures(theirs));
  });
  test("stock, prices and loads come back from Spanish", async () => {
    const before = await partsOf(plan);
    const stock = written((await es("parts", plan, "--csv", "stock")).out);
    expect(await partsOf(plan, "--stock", stock)).toEqual(before);
    const prices = written((await es("parts", plan, "--csv", "prices")).out);
    expect((await partsOf(plan, "--prices", prices)).total).toEqual(before.total);
    const loads = written((await es("parts", plan, "--csv", "loads")).out);
    const copy = join(folderWith(plan), "tender.yaml");
    expect((await es("parts", copy, "--loads", loads)).out).toContain("no se ha escrito nada");
    expect(readFileSync(copy, "utf8")).toBe(readFileSync(plan, "utf8"));
  });
  test.each([
    ["--stock", "artículo,cantidad\nM16 gland,-2\n", "línea 2, cantidad: «-2» es menos que nada"],
    [
      "--stock",
      "item,count,size,length,kind\nw,1,16 AWG,3 m,drum\n",
      "«drum» no es ninguna de estas: retal, rollo",
    ],
    ["--stock", "artículo,cantdad\nx,1\n", "¿Quizá «cantidad»?"],
    ["--prices", "item,count,price\na,1,1 EUR\nb,1,1 USD\n", "Los precios en EUR y USD"],
  ])("%s %j is refused by line", async (flag, text, says) => {
    const { status, err } = await es("parts", plan, flag, written(text));
    expect(status).toBe(2);
    expect(err).toContain(says);
  });
  test("a table of offsets with Spanish headings gives the same form", async () => {
    const rows = "0,60,550,100\n1500,0,600,40\n3000,20,500,60\n";
    const spanish = written(`estación,keel altura,sheer semimanga,sheer altura\n${rows}`);
    const english = written(`station,keel height,sheer half-breadth,sheer height\n${rows}`);
    const form = async (path: string) => (await command(["form", "--offsets", path])).out;
    expect(await form(spanish)).toBe(await form(english));
  });
});

test("a new plan is asked for in Spanish, and answered with Spanish words", () => {
  const to = join(folderWith(), "barco.yaml");
  const answers = [
    "",
    "bote",
    "4.5 m",
    "sí",
    "iso",
    "abierta",
    "50 Ah",
    "12 V",
    "2 m",
    "lámpara",
    "alumbrado",
    "3 W",
    "1",
    "2 m",
    "",
  ];
  const ran = skiffloom(["new", "--to", to, "--language", "es"], `${answers.join("\n")}\n`);
  expect(ran.status, ran.err).toBe(0);
  expect(leftIn(ran.err, "", "flooded agm gel lifepo4")).toEqual([]);
  const text = readFileSync(to, "utf8");
  expect(text).toMatch(/flooded/);
  expect(text).toMatch(/lighting/);
  expect(text).toMatch(/petrol on board: true/);
  expect(skiffloom(["check", to, "--language", "es"]).status).not.toBe(2);
});
