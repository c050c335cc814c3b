import { expect, test } from "vitest";
import { dropsWithSlack } from "../../../src/core/findings/with-slack.js";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { layoutPlan } from "./layout-boat.js";

const worked = (text: string) => {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workOutWhole(read.plan);
};

/** Worst drop of a lamp over the corners, as the solver has it. */
const solved = ({ figures: { corners } }: ReturnType<typeof worked>, lamp: string) =>
  Math.max(...corners.map(({ gear }) => gear.find(({ id }) => id === lamp)?.dropShare ?? 0));

test("the slack adds what the solver finds with every run as long as it is cut", () => {
  const text = layoutPlan({ trunk: "length: 40 ft, size: 16 AWG" });
  const whole = worked(text);
  const cutM = new Map(whole.layout.routes.runs.map(({ group, cut }) => [group, cut.cutM]));
  // a run without its own length, and with that of its cut instead
  const asCut = text.replaceAll(
    /^ {2}(battery feed|trunk|leads): (.*)length: [^,}]+/gm,
    (_all, run: string, before: string) => `  ${run}: ${before}length: ${cutM.get(run) ?? 0} m`,
  );
  expect(asCut).not.toBe(text);
  const withSlack = dropsWithSlack(whole.figures.corners, whole.figures.paths, whole.layout);
  for (const lamp of ["lamp 1", "lamp 2"]) {
    const share = withSlack.get(lamp) ?? 0;
    const along = solved(whole, lamp);
    expect(share).toBeGreaterThan(along * 1.03);
    // lamps draw a little more at the lower voltage, which the estimate leaves out
    expect(share / solved(worked(asCut), lamp)).toBeCloseTo(1, 2);
  }
});
