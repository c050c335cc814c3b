import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { folderWith, skiffloom } from "./run.js";

describe("prove", () => {
  test("finds the fault of the example, says what to measure next, and ends with 1", () => {
    const { status, out } = skiffloom(["prove", "examples/second-season.yaml"]);
    expect(status).toBe(1);
    expect(out).toContain("lamp trunk, its negative wire");
    expect(out).toContain("What to measure next");
    expect(out).toContain("Changed since");
  });

  test("as data, every reading is there with its verdict", () => {
    const { out } = skiffloom(["prove", "examples/second-season.yaml", "--json"]);
    const data = JSON.parse(out);
    expect(data).toMatchObject({ skiffloom: "prove", version: 1 });
    expect(data.readings).toHaveLength(6);
    expect(data.faults.suspects[0].at).toEqual(["lamp trunk / return"]);
  });

  test("a mend is put on record; what was read before it is set back, and what proves it is asked for", () => {
    const path = join(folderWith("examples/second-season.yaml"), "second-season.yaml");
    const none = skiffloom(["prove", path, "--mended", "lamp trunk / retrun"]);
    expect(none).toMatchObject({ status: 2 });
    expect(none.err).toContain("did you mean 'lamp trunk / return'?");
    expect(readFileSync(path, "utf8")).toBe(readFileSync("examples/second-season.yaml", "utf8"));
    const words = ["--mended", "lamp trunk / return", "--note", "new ring", "--now", "2026-03-28 10:00"];
    const { status, out } = skiffloom(["prove", path, ...words]);
    expect(status).toBe(1);
    expect(out).toContain("before the mend of lamp trunk");
    expect(out).not.toContain("too low");
    expect(out).toMatch(/Measure again, to prove the mend\nvolts from coaming lamp 6 \+/);
    expect(readFileSync(path, "utf8")).toMatch(
      /at: lamp trunk \/ return, when: 2026-03-28 10:00, note: new ring/,
    );
    const data = JSON.parse(skiffloom(["prove", path, "--json"]).out);
    expect(data.again).toHaveLength(1);
    expect(data.readings[2]).toMatchObject({ verdict: "before the mend", mended: { readAgain: false } });
  });

  test("a plan without readings says how to get them, and is no failure", () => {
    const { status, out } = skiffloom(["prove", "examples/tender.yaml"]);
    expect(status).toBe(0);
    expect(out).toContain("--sheet");
  });

  test("the sheet and the card, as text and as data", () => {
    const sheet = skiffloom(["prove", "examples/tender.yaml", "--sheet"]);
    expect(sheet.status).toBe(0);
    expect(sheet.out).toContain("Insulation, positive to negative");
    const data = JSON.parse(skiffloom(["prove", "examples/tender.yaml", "--sheet", "--json"]).out);
    expect(data.sections.length).toBeGreaterThan(5);
    expect(skiffloom(["prove", "examples/tender.yaml", "--water"]).out).toContain("Spares to carry");
    const card = JSON.parse(skiffloom(["prove", "examples/tender.yaml", "--water", "--json"]).out);
    expect(card).toMatchObject({ skiffloom: "water card" });
  });

  test("hours from a voltage; what is no number is refused", () => {
    const words = ["prove", "examples/utility.yaml", "--battery", "house"];
    const { status, out } = skiffloom([...words, "--shows", "12.31 V", "--with", "3.2"]);
    expect(status).toBe(0);
    expect(out).toContain("to its reserve");
    const on = skiffloom([...words, "--shows", "12.31 V", "--on", "coaming lamp, sounder", "--json"]);
    expect(JSON.parse(on.out).charge).toBeGreaterThan(0.4);
    expect(skiffloom([...words, "--shows", "12.3", "--on", "searchlight"])).toMatchObject({ status: 2 });
    expect(skiffloom([...words, "--shows", "much"])).toMatchObject({ status: 2 });
    expect(skiffloom(words)).toMatchObject({ status: 2 });
    const other = skiffloom(["prove", "examples/utility.yaml", "--battery", "other", "--shows", "12"]);
    expect(other.status).toBe(2);
  });

  test("a voltage no such battery shows tells no hours: 124 V typed for 12.4 V, 1.24 V", () => {
    const words = ["prove", "examples/utility.yaml", "--battery", "house", "--shows"];
    const above = skiffloom([...words, "124"]);
    expect(above.out).toContain("More than a full battery");
    expect(above.out).not.toContain("charged (");
    expect(skiffloom([...words, "1.24"]).out).toContain("Less than an empty battery");
    const data = JSON.parse(skiffloom([...words, "124", "--json"]).out);
    expect(data.beyond).toBe("above full");
    expect(data).not.toHaveProperty("hoursToReserve");
  });

  test("readings that cannot be compared are said and change nothing else", () => {
    const tender = readFileSync("examples/tender.yaml", "utf8");
    const plan = `${tender}\nreadings:\n  - {at: nowhere, against: box battery -, shows: 12 V}\n`;
    const { status, out } = skiffloom(["prove", "-"], plan);
    expect(status).toBe(1);
    expect(out).toContain("not checked");
    expect(out).toContain("nowhere");
  });
});
