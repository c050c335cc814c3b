/** Small networks drawn by hand and counted by hand: points, branches, and what metal joins. */
import { describe, expect, test } from "vitest";
import { buildTopology } from "../../../src/core/circuit/topology/build.js";
import { supplyTree } from "../../../src/core/circuit/topology/tree.js";
import type { Topology, TopologyBranch } from "../../../src/core/circuit/topology/types.js";
import { completePlan } from "../../../src/core/plan/complete.js";
import { readPlan } from "../../../src/core/plan/read.js";

function topologyOf(sections: string): Topology {
  const read = readPlan(`skiffloom: 1\nname: trial\nrules: us\n${sections}`);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return buildTopology(completePlan(read.plan));
}

/** Groups of points that branches join, sources and converters left out. */
function islandsOf({ nodes, branches }: Topology): number {
  const islandOf = nodes.map((_, node) => node);
  for (const { from, to } of branches) {
    const [old, kept] = [islandOf[from], islandOf[to] ?? 0];
    islandOf.forEach((island, node) => {
      if (island === old) islandOf[node] = kept;
    });
  }
  return new Set(islandOf).size;
}

/** Points, branches, groups that branches join, and loops: branches beyond what a tree of each group takes. */
function counted(topology: Topology) {
  const [nodes, branches, islands] = [
    topology.nodes.length,
    topology.branches.length,
    islandsOf(topology),
  ] as const;
  return { nodes, branches, islands, loops: branches - nodes + islands };
}

const idsOf = (branches: readonly TopologyBranch[]) => branches.map(({ id }) => id);
function branchOf({ branches }: Topology, id: string): TopologyBranch {
  const found = branches.find((branch) => branch.id === id);
  if (!found) throw new Error(`no branch ${id} among ${idsOf(branches).join(", ")}`);
  return found;
}
const kindsOf = (topology: Topology, id: string) => branchOf(topology, id).parts.map(({ kind }) => kind);

/** Battery post, main, panel: 3 points and 2 branches out, 2 points and 1 branch back. */
const supply = `
batteries: {house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 30 A}}}`;
const feed = "feed: {from: house, to: helm, length: 1 m}";

describe("one lamp straight on a battery", () => {
  //  post +───fuse───(fused)───out───lamp +   lamp -───return───post -
  const topology = topologyOf(`
batteries: {house: {chemistry: agm, capacity: 50 Ah, main: none}}
gear: {lamp: {draws: 5 W}}
runs: {lead: {from: house, to: lamp, length: 2 m, return length: 3 m, fuse: 5 A}}`);

  test("5 points, 3 branches, out and back apart", () =>
    expect(counted(topology)).toEqual({ nodes: 5, branches: 3, islands: 2, loops: 0 }));

  test("the fuse comes first, then the conductor between its joints, each leg with its own length", () => {
    expect(idsOf(topology.branches)).toEqual(["lead / fuse", "lead / house / feed / out", "lead / return"]);
    expect(kindsOf(topology, "lead / fuse")).toEqual(["protection"]);
    expect(branchOf(topology, "lead / house / feed / out").parts).toMatchObject([
      { kind: "joint" },
      { kind: "conductor", lengthM: expect.closeTo(2.36, 9), wayM: 2 }, // 13 cm of slack at the battery, 23 at the lamp
      { kind: "joint" },
    ]);
    expect(branchOf(topology, "lead / return").parts[1]).toMatchObject({
      kind: "conductor",
      lengthM: expect.closeTo(3.36, 9),
      wayM: 3,
    });
  });

  test("the battery and the lamp sit at the ends of both legs", () => {
    const [source] = topology.sources;
    const [lamp] = topology.gear;
    expect(branchOf(topology, "lead / fuse").from).toBe(source?.plus);
    expect(branchOf(topology, "lead / house / feed / out").to).toBe(lamp?.plus);
    expect(branchOf(topology, "lead / return")).toMatchObject({ from: lamp?.minus, to: source?.minus });
  });
});

describe("one way of a panel", () => {
  const plan = (way: string, gear = "draws: 5 W") => `${supply}
panels: {helm: {ways: {lamps: ${way}}}}
gear: {lamp: {${gear}}}
runs: {${feed}, lead: {from: helm / lamps, to: lamp, length: 2 m}}`;

  // +: post, main, panel, fused, way, lamp; −: post, panel, lamp
  test("fuse and switch: 9 points, 7 branches", () =>
    expect(counted(topologyOf(plan("{}")))).toEqual({ nodes: 9, branches: 7, islands: 2, loops: 0 }));

  test("without a switch one point and one branch less", () =>
    expect(counted(topologyOf(plan("{switch: none}")))).toEqual({
      nodes: 8,
      branches: 6,
      islands: 2,
      loops: 0,
    }));

  test("without a fuse too: a bare link stands for the way", () => {
    const topology = topologyOf(plan("{switch: none, fuse: none}"));
    expect(counted(topology)).toEqual({ nodes: 8, branches: 6, islands: 2, loops: 0 });
    expect(kindsOf(topology, "helm / lamps / link")).toEqual(["joint"]);
    expect(topology.devices.map(({ id }) => id)).toEqual(["house / main"]);
  });

  test("leads of the gear's own: two points and two branches more, and the gear behind them", () => {
    const topology = topologyOf(plan("{}", "draws: 5 W, leads: {size: 22 AWG, length: 8 in}"));
    expect(counted(topology)).toEqual({ nodes: 11, branches: 9, islands: 2, loops: 0 });
    expect(branchOf(topology, "lamp / lead / out").to).toBe(topology.gear[0]?.plus);
    expect(branchOf(topology, "lamp / lead / return").from).toBe(topology.gear[0]?.minus);
  });

  test("leads of no length are no branch", () =>
    expect(counted(topologyOf(plan("{}", "draws: 5 W, leads: {size: 22 AWG, length: 0 in}"))).branches).toBe(
      7,
    ));
});

describe("switches by the battery and in the panel", () => {
  const plan = (way: string) => `
batteries: {house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 30 A}, master: {rating: 100 A}}}
panels: {helm: {main: {device: breaker, rating: 20 A}, master: {rating: 30 A}, ways: {lamps: ${way}}}}
gear: {lamp: {draws: 5 W}}
runs: {feed: {from: house, to: helm, length: 1 m}, lead: {from: helm / lamps, to: lamp, length: 2 m}}`;

  test("each device and switch is a branch of its own, in a row", () => {
    const topology = topologyOf(plan("{}"));
    expect(counted(topology)).toEqual({ nodes: 12, branches: 10, islands: 2, loops: 0 });
    const row = [
      "house / main",
      "house / master",
      "feed / house / feed / out",
      "helm / main",
      "helm / master",
    ];
    for (const [at, id] of row.entries()) {
      const next = row[at + 1];
      if (next) expect(branchOf(topology, id).to).toBe(branchOf(topology, next).from);
    }
  });

  test("a way that stays live is taken behind the panel's main and before its master", () => {
    const topology = topologyOf(plan("{always live: true}"));
    const way = branchOf(topology, "helm / lamps / fuse");
    expect(way.from).toBe(branchOf(topology, "helm / main").to);
    expect(way.from).toBe(branchOf(topology, "helm / master").from);
  });

  test.each([
    ["", "house / master", "to"],
    [", before master: true", "house / main", "to"],
    [", before main: true", "house / main", "from"],
  ] as const)("a run from the battery%s starts at that point", (tap, id, end) => {
    const topology = topologyOf(
      `${plan("{}")
        .replace(
          "runs: {",
          `runs: {
  motor lead: {from: house, to: motor, length: 1 m, fuse: 40 A${tap}}, `,
        )
        .replace("gear: {", "gear: {motor: {draws: 20 A}, ")}`,
    );
    expect(branchOf(topology, "motor lead / fuse").from).toBe(branchOf(topology, id)[end]);
  });
});

describe("two ways in one cable to a box", () => {
  const plan = (returns: string, box: string) => `${supply}
panels: {helm: {ways: {fore: {switch: none}, aft: {switch: none}}}}
boxes: {box: {${box}}}
gear: {fore lamp: {draws: 5 W}, aft lamp: {draws: 5 W}}
runs:
  ${feed}
  trunk: {from: helm, to: box, carries: [fore, aft], return: ${returns}, length: 3 m}
  fore lead: {from: box / fore, to: fore lamp, length: 1 m}
  aft lead: {from: box / aft, to: aft lamp, length: 1 m}`;

  // +: post, main, panel, then way, box and lamp of each; −: post, panel, box of each, lamp of each
  test("returns of their own, kept apart in the box: two trees", () => {
    const topology = topologyOf(plan("own", "returns: apart"));
    expect(counted(topology)).toEqual({ nodes: 15, branches: 13, islands: 2, loops: 0 });
    expect(idsOf(topology.branches.filter(({ of, leg }) => of === "trunk" && leg === "return"))).toEqual([
      "trunk / helm / fore / return",
      "trunk / helm / aft / return",
    ]);
  });

  test("returns of their own, joined in the box: one point less, and a loop of metal", () =>
    expect(counted(topologyOf(plan("own", "returns: joined")))).toEqual({
      nodes: 14,
      branches: 13,
      islands: 2,
      loops: 1,
    }));

  test("one shared return: a single branch that names both circuits, and no loop", () => {
    const topology = topologyOf(plan("shared", "returns: joined"));
    expect(counted(topology)).toEqual({ nodes: 14, branches: 12, islands: 2, loops: 0 });
    expect(branchOf(topology, "trunk / return").circuits).toEqual(["helm / fore", "helm / aft"]);
    const back = (lead: string) => branchOf(topology, `${lead} / return`).to;
    expect(back("fore lead")).toBe(back("aft lead"));
    expect(back("fore lead")).toBe(branchOf(topology, "trunk / return").from);
  });

  test("the two ways stay apart on the way out, whatever the return", () => {
    const topology = topologyOf(plan("shared", "returns: joined"));
    expect(branchOf(topology, "trunk / helm / fore / out").to).not.toBe(
      branchOf(topology, "trunk / helm / aft / out").to,
    );
  });
});

test("a metal hull as return is one joint of metal, no conductor to be sized", () => {
  const topology = topologyOf(`${supply}
panels: {helm: {ways: {lamps: {}}}}
gear: {lamp: {draws: 5 W}}
runs: {${feed}, lead: {from: helm / lamps, to: lamp, length: 2 m, return: hull}}`);
  expect(counted(topology)).toEqual({ nodes: 9, branches: 7, islands: 2, loops: 0 });
  expect(kindsOf(topology, "lead / return")).toEqual(["hull"]);
});

test("a chain goes from lamp to lamp, a star from the box to each", () => {
  const plan = (reaches: string) =>
    topologyOf(`${supply}
panels: {helm: {ways: {lamps: {}}}}
gear: {lamp: {count: 3, draws: 1 W}}
boxes: {box: {}}
runs:
  ${feed}
  trunk: {from: helm / lamps, to: box, length: 2 m}
  leads: {from: box, to: lamp, reaches: ${reaches}, lengths: [1 m, 1 m, 1 m]}`);
  const chain = plan("chain");
  const star = plan("each");
  expect(counted(chain)).toEqual({ nodes: 15, branches: 13, islands: 2, loops: 0 });
  expect(counted(star)).toEqual(counted(chain));
  const starts = (topology: Topology) =>
    new Set(topology.branches.filter(({ id }) => /^leads .* \/ out$/.test(id)).map(({ from }) => from)).size;
  expect([starts(chain), starts(star)]).toEqual([3, 1]);
});

describe("a converter", () => {
  const plan = (isolated: boolean) =>
    topologyOf(`
batteries: {drive: {chemistry: lifepo4, voltage: 24 V, capacity: 100 Ah, main: {device: cartridge fuse, rating: 60 A}}}
converters: {step: {output: 12.5 V, most output: 20 A, isolated: ${isolated}}}
panels: {helm: {ways: {lamps: {}}}}
gear: {lamp: {draws: 5 W}}
runs:
  in: {from: drive, to: step / in, length: 1 m}
  out: {from: step / out, to: helm, length: 1 m}
  lead: {from: helm / lamps, to: lamp, length: 2 m}`);
  // +: post, main, input | output, panel, fused, way, lamp; −: post, input | output, panel, lamp

  test("isolated: no metal joins its two sides", () => {
    const topology = plan(true);
    expect(counted(topology)).toEqual({ nodes: 13, branches: 9, islands: 4, loops: 0 });
    const [{ inMinus, outMinus } = { inMinus: 0, outMinus: 0 }] = topology.converters;
    expect(inMinus).not.toBe(outMinus);
  });

  test("with a common negative both sides share one point", () => {
    const topology = plan(false);
    expect(counted(topology)).toEqual({ nodes: 12, branches: 9, islands: 3, loops: 0 });
    const [{ inMinus, outMinus } = { inMinus: 0, outMinus: 1 }] = topology.converters;
    expect(inMinus).toBe(outMinus);
  });

  test.each([true, false])(
    "isolated %s: the lamp is reached through it, and guarded by its own way",
    (isolated) => {
      const topology = plan(isolated);
      const tree = supplyTree(topology);
      const lamp = topology.gear[0];
      expect(tree.parentBranch[lamp?.plus ?? -1]).toBeGreaterThanOrEqual(0);
      expect(tree.parentBranch[lamp?.minus ?? -1]).toBeGreaterThanOrEqual(0);
      expect(topology.devices[tree.guardOfNode[lamp?.plus ?? -1] ?? -1]?.id).toBe("helm / lamps / fuse");
      // the main guards the input side only
      expect(tree.guardOfNode[topology.converters[0]?.inPlus ?? -1]).toBe(0);
      expect(tree.guardOfNode[topology.converters[0]?.outPlus ?? -1]).toBe(-1);
    },
  );
});

test("two batteries, each with its own gear: four groups of metal and two sources", () => {
  const topology = topologyOf(`
batteries: {house: {chemistry: agm, capacity: 50 Ah, main: none}, drive: {chemistry: agm, capacity: 80 Ah, main: none}}
gear: {lamp: {draws: 5 W}, motor: {draws: 20 A}}
runs:
  lamp lead: {from: house, to: lamp, length: 2 m, fuse: 5 A}
  motor lead: {from: drive, to: motor, length: 2 m, fuse: 40 A}`);
  expect(counted(topology)).toEqual({ nodes: 10, branches: 6, islands: 4, loops: 0 });
  expect(topology.sources.map(({ battery }) => battery)).toEqual(["house", "drive"]);
});

test("what nothing flows through is no branch: a charger's lead, a panel without a feed, a loose lamp", () => {
  const topology = topologyOf(`${supply}
chargers: {shore: {kind: mains, charges: house, output: 10 A}}
panels: {helm: {ways: {lamps: {}}}, spare: {ways: {nothing: {}}}}
gear: {lamp: {draws: 5 W}, loose lamp: {draws: 5 W}}
runs:
  ${feed}
  lead: {from: helm / lamps, to: lamp, length: 2 m}
  shore lead: {from: shore, to: house, length: 1 m, fuse: 15 A}`);
  expect(counted(topology)).toEqual({ nodes: 9, branches: 7, islands: 2, loops: 0 });
  expect(topology.gear.map(({ id }) => id)).toEqual(["lamp"]);
});
