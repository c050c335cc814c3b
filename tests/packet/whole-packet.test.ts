import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { fileList } from "../../src/packet/files/make-file.js";

// What a person takes to the garage: every part of the job has its pages in the packet that command line and page make.

test("the utility boat's packet has pages for every part of the job", () => {
  const read = readPlan(readFileSync("examples/utility.yaml", "utf8"));
  if (!read.ok) throw new Error("the example can be read");
  const { sheets } = fileList(workOutWhole(read.plan), read.plan.shows);
  const titles = sheets.map(({ title }) => title);
  for (const part of [
    "Load list",
    "Conductor schedule",
    "Protection schedule",
    "Findings",
    "One-line diagram",
    "Survey of the form",
    "Marks: lining, port",
    "How she floats",
    "Shopping list",
    "Box: fore box",
    "Run sheet",
    "Cut list",
    "Terminations",
    "Wire flags",
    "Order of work",
    "As built",
    "Test sheet",
    "Card for the water",
    "Cautions",
  ])
    expect(titles).toContain(part);
});
