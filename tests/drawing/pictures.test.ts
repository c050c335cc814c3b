import { expect, test } from "vitest";
import type { BatteryTrace } from "../../src/core/energy/types.js";
import { completePlan } from "../../src/core/plan/complete.js";
import { gearRoles } from "../../src/core/plan/model/gear.js";
import { points, text } from "../../src/drawing/make.js";
import { oneLineDiagram } from "../../src/drawing/one-line/diagram.js";
import {
  batterySymbol,
  breakerSymbol,
  converterSymbol,
  fuseSymbol,
  gearSymbol,
  switchSymbol,
} from "../../src/drawing/one-line/symbols.js";
import { plantTrees } from "../../src/drawing/one-line/tree.js";
import { outingChart } from "../../src/drawing/outing-chart.js";
import type { Shape } from "../../src/drawing/shapes.js";
import { svgSheet } from "../../src/drawing/writers/svg.js";
import { overlaps, planAt, textsOf } from "../packet/pages.js";
import { expectPicture } from "./picture.js";

const sheet = (title: string, shapes: readonly Shape[], widthMm = 250, heightMm = 165) => ({
  title,
  widthMm,
  heightMm,
  shapes,
});

test("symbols as saved", () => {
  const devices = [batterySymbol, fuseSymbol, breakerSymbol, switchSymbol].map((symbol, index) =>
    symbol(8, 10 + index * 10),
  );
  const gear = gearRoles.flatMap((role, index) => [
    gearSymbol(40, 10 + index * 10, role),
    text(50, 9 + index * 10, role, { sizeMm: points(9) }),
  ]);
  expectPicture(
    "symbols.svg",
    svgSheet(sheet("Symbols", [...devices, converterSymbol(8, 52, "~", "="), ...gear], 90, 130)),
  );
});

test("an outing as saved: reserve, end, things that are on in part, gear that gives up", () => {
  const trace: BatteryTrace = {
    battery: "house",
    points: [0, 1, 2, 3, 4, 4.6].map((atH) => ({
      atH,
      charge: 0.9 - atH * 0.18,
      terminalV: 12.7 - atH * 0.45,
      currentA: 4,
    })),
    usedAh: 18,
    chargeLeft: 0.07,
    reserveAtH: 2.2,
    cutOffAtH: 4.6,
    usableAh: 22,
  };
  const shapes = outingChart(
    {
      outing: { lastsH: 6, startClockH: 20.5 },
      trace,
      reserveShare: 0.5,
      cutOffV: 10.5,
      nominalV: 12,
      on: [
        { what: "helm / lamps", fromH: 0, toH: 6, duty: 1, level: 1 },
        { what: "motor", fromH: 0, toH: 2, duty: 1, level: 0.5 },
        { what: "motor", fromH: 4, toH: 6, duty: 1, level: 0.5 },
        { what: "bilge pump", fromH: 0, toH: 6, duty: 1 / 30, level: 1 },
      ],
      brownOuts: [
        { gear: "sounder", atH: 4.1, voltageV: 10.9, minV: 11 },
        { gear: "lamp", atH: 4.2, voltageV: 10.4, minV: 10.5 },
      ],
    },
    { left: 0, bottom: 5, widthMm: 250, heightMm: 155 },
  );
  expect(overlaps(sheet("Outing", shapes))).toEqual([]);
  expectPicture("outing.svg", svgSheet(sheet("Outing", shapes)));
});

const complete = completePlan(planAt("tests/packet/overloaded.yaml"));
const figures = {
  plan: complete,
  assumptions: [],
  sizes: { choices: [], aim: "cheapest", total: 0, proof: "none", lowerBound: 0, unmet: [] },
  protection: [],
  corners: [],
  outings: [],
  charging: [],
  paths: [],
  findings: [],
} as const;
const room = { left: 5, bottom: 3, widthMm: 240, heightMm: 158 };

test("one-line diagram as saved, before any figure is known", () => {
  const sheets = oneLineDiagram(figures, complete.source.shows, room);
  for (const [index, shapes] of sheets.entries()) {
    expect(overlaps(sheet("Diagram", shapes))).toEqual([]);
    expectPicture(`one-line-${index + 1}.svg`, svgSheet(sheet(`One-line diagram ${index + 1}`, shapes)));
  }
});

test("every run and every thing stands on the diagram exactly once, or says where it stands", () => {
  const nodes = plantTrees(complete);
  const runs = nodes.flatMap(({ run }) => (run === undefined ? [] : [run.name]));
  expect([...runs].sort()).toEqual(complete.runs.map(({ name }) => name).sort());
  for (const kind of ["battery", "panel", "gear", "converter"] as const) {
    const drawn = nodes.filter((node) => node.kind === kind).map(({ name }) => name);
    const planned = {
      battery: complete.batteries,
      panel: complete.panels,
      gear: complete.gear,
      converter: complete.converters,
    }[kind];
    expect(drawn.sort()).toEqual(planned.map(({ name }) => name).sort());
  }
  for (const [index, { parent }] of nodes.entries()) expect(parent).toBeLessThan(index);
});

test("a deep plan is cut into parts that fit, and nothing is lost", () => {
  const names = Array.from({ length: 9 }, (_, index) => `box ${index + 1}`);
  const plan = planAt("tests/packet/overloaded.yaml");
  const box = plan.boxes[0];
  const run = plan.runs.find(({ name }) => name === "bow pump cable");
  if (box === undefined || run === undefined) throw new Error("the plan of the test has changed");
  const chain = names.map((name, index) => ({
    ...run,
    name: `deep ${index + 1}`,
    from: index === 0 ? run.from : { place: names[index - 1] ?? "" },
    to: { place: name },
  }));
  const last = { ...run, from: { place: names.at(-1) ?? "" } };
  const deep = completePlan({
    ...plan,
    boxes: [...plan.boxes, ...names.map((name) => ({ ...box, name }))],
    runs: [...plan.runs.filter((one) => one !== run), ...chain, last],
  });
  const sheets = oneLineDiagram({ ...figures, plan: deep }, plan.shows, room).map((shapes) =>
    sheet("Deep", shapes),
  );
  const words = sheets.flatMap((one) => textsOf(one).map(({ text: shown }) => shown.text));
  for (const name of ["deep 1", "deep 9", "bow pump", ...names]) expect(words).toContain(name);
  for (const one of sheets) {
    expect(overlaps(one)).toEqual([]);
    for (const { bounds } of textsOf(one))
      expect(bounds.maxX).toBeLessThanOrEqual(room.left + room.widthMm + 0.5);
  }
});
