import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOutHull } from "../../../src/core/hull-figures.js";
import { completePlan } from "../../../src/core/plan/complete.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { pullRows } from "../../../src/words/pull-words.js";

const utility = readFileSync(new URL("../../../examples/utility.yaml", import.meta.url), "utf8");
const cables = new Map([1, 2, 3, 4, 5, 6].map((number) => [`lamp chain ${number}`, 0.007]));

function pullingOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workOutHull(completePlan(read.plan), cables);
}

describe("pulling the lamps' cables of utility", () => {
  const figures = pullingOf(utility);
  const through = (name: string) => figures.pulling.order.find((one) => one.name === name)?.through;

  test("the first comes in by the hatch that reaches the lamp, the next from lamp to lamp behind the lining", () => {
    expect(through("lamp chain 1")).toEqual(["hatch port", "coaming lamp 1"]);
    expect(through("lamp chain 2")).toEqual(["coaming lamp 1", "coaming lamp 2"]);
  });
  test("across the boat it leaves one lining by its hatch and enters the other by the other's", () => {
    expect(through("lamp chain 4")).toEqual([
      "coaming lamp 3",
      "hatch port",
      "hatch starboard",
      "coaming lamp 4",
    ]);
  });
  test("the table names the narrowest place on the way", () => {
    const { shows } = figures.plan.source;
    const row = pullRows(figures, shows).find(({ cable }) => cable === "lamp chain 4");
    expect(row?.tightest).toMatch(/^coaming lamp [34], 20\u00a0mm$/);
    expect(row?.mustPass).toBe("7\u00a0mm");
  });
  test("what must pass is told apart from what is not known", () => {
    expect(figures.pulling.unknown).toEqual([]);
    const silent = pullingOf(utility.replace("      passes: 6 mm # no plug: bare ends\n", ""));
    expect(silent.pulling.unknown.toSorted()).toEqual([1, 2, 3, 4, 5, 6].map((n) => `coaming lamp ${n}`));
  });
  test("a plug wider than the hole it is drawn through does not pass", () => {
    const wide = pullingOf(utility.replace("passes: 6 mm # no plug", "passes: 26 mm # a plug"));
    const lost = wide.problems.filter(({ problem }) => problem === "does not pass");
    expect(lost.map(({ at }) => at)).toContain("lamp chain 2");
  });
});
