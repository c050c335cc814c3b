import type { BoxFigures } from "../box/plan-boxes.js";
import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { CompletePlan } from "../plan/completed.js";
import { consumables } from "../reference/consumables.js";
import type { RoutesFigures } from "../route/plan-routes.js";
import type { TerminationsFigures } from "../terminations/plan-terminations.js";
import {
  deviceEndName,
  fuseName,
  grommetName,
  holderName,
  insidePanel,
  jointName,
  sleeveName,
  switchName,
  terminalName,
} from "./item-names.js";
import type { Need, PartKind } from "./parts-list.js";
import type { CutsFigures } from "./plan-cuts.js";

/** What the parts are counted from. */
export interface NeedsInput {
  readonly plan: CompletePlan;
  readonly boxes: readonly BoxFigures[];
  readonly routes: RoutesFigures;
  readonly terminations: TerminationsFigures;
  readonly cuts: CutsFigures;
  readonly protection: readonly ProtectionFigures[];
}

/** Everything the plan needs besides wire, each with the thing it is for. */
export function planNeeds(input: NeedsInput): Need[] {
  return [
    ...endNeeds(input.terminations),
    ...boxNeeds(input),
    ...fuseNeeds(input),
    ...switchNeeds(input.plan),
    ...busNeeds(input),
    ...panelNeeds(input),
    ...holdingNeeds(input),
    ...gearNeeds(input.plan),
  ];
}

const need = (kind: PartKind, item: string, count: number, whatFor: string): Need => ({
  kind,
  item,
  count,
  for: whatFor,
});

function endNeeds({ ends, joints }: TerminationsFigures): Need[] {
  const ofJoint = new Map<string, typeof ends>();
  for (const end of ends)
    if (end.joint !== undefined)
      ofJoint.set(key(end.joint, end.kind), [...(ofJoint.get(key(end.joint, end.kind)) ?? []), end]);
  const sleeve = (end: (typeof ends)[number], whatFor: string): Need[] =>
    end.sleeve === undefined
      ? []
      : [need("sleeve", sleeveName(end.sleeve), Math.ceil(end.sleeve.lengthMm / 10), whatFor)];
  return [
    ...ends.flatMap((end): Need[] => {
      if (end.joint !== undefined) return [];
      const item = terminalName(end);
      return [
        ...(item === undefined ? [] : [need("terminal", item, 1, end.at.place)]),
        ...sleeve(end, end.at.place),
      ];
    }),
    ...joints.flatMap((joint): Need[] => {
      const made = ofJoint.get(key(joint.id, joint.kind)) ?? [];
      const item = jointName(joint, made);
      const sleeved = made.find((end) => end.sleeve !== undefined);
      return [
        ...(item === undefined ? [] : [need("joint", item, 1, joint.place)]),
        ...(sleeved === undefined ? [] : sleeve(sleeved, joint.place)),
      ];
    }),
  ];
}

const key = (joint: string, kind: string): string => `${joint}\n${kind}`;

function boxNeeds({ boxes, plan }: NeedsInput): Need[] {
  const cased = new Map([...plan.boxes, ...plan.panels].map((one) => [one.name, one]));
  return boxes.flatMap(({ box, from, bought, layout }): Need[] => {
    const glands = (layout?.glands ?? []).map(({ fit }) => need("gland", `${fit.size} gland`, 1, box));
    const sizeOf = (holeMm: number) => layout?.glands.find(({ fit }) => fit.holeMm === holeMm)?.fit.size;
    const spares = (layout?.entries ?? []).flatMap(({ id, holeMm, spanner }) => {
      const size = sizeOf(holeMm);
      return spanner && /^spare \d+$/.test(id) && size !== undefined
        ? [need("gland", `${size} plug`, 1, box)]
        : [];
    });
    const itself =
      from === "own"
        ? [need("box", box, 1, box)]
        : bought === undefined
          ? []
          : [need("box", bought.name, 1, box)];
    const { contents = [], fittings = [] } = cased.get(box) ?? {};
    return [
      ...itself,
      ...glands,
      ...spares,
      ...contents.map(({ name, count }) => need("other", name, count, box)),
      ...fittings.map(({ name }) => need("other", name, 1, box)),
    ];
  });
}

/**
 * A fuse of each rating, and a holder for each; one holder a way too, since panels are made up from parts. A panel whose
 * contents the owner lists has its holders among them. A spare way has its holder, and no fuse before something hangs on it.
 * A holder that sits in a lead has two ends of its own, of the kind its maker asks.
 */
function fuseNeeds({ plan, protection }: NeedsInput): Need[] {
  const held = new Set(
    plan.panels.flatMap(({ name, ways, contents = [] }) =>
      contents.length === 0 ? [] : ways.map((way) => `${name} / ${way.name}`),
    ),
  );
  const inPanel = new Set(
    plan.panels.flatMap(({ name, ways }) => ways.map((way) => `${name} / ${way.name}`)),
  );
  return protection.flatMap(({ of, device, ratingA, spare }): Need[] => {
    const holder = held.has(of) ? undefined : holderName(device);
    return [
      ...(spare ? [] : [need("fuse", fuseName(device, ratingA), 1, of)]),
      ...(holder === undefined ? [] : [need("fuse holder", holder, 1, of)]),
      ...(inPanel.has(of) ? [] : [need("fuse holder", deviceEndName(device), 2, of)]),
    ];
  });
}

/** What joins buses, fuses and switches of a panel: the plan does not lay it out, so it is one line. */
function panelNeeds({ plan }: NeedsInput): Need[] {
  return plan.panels.flatMap(({ name, ways }) =>
    ways.length === 0 ? [] : [need("bus", insidePanel, 1, name)],
  );
}

function switchNeeds({ batteries, panels, runs }: CompletePlan): Need[] {
  const seen = new Set<string>();
  return [
    ...[...batteries, ...panels].flatMap(({ name, master }) =>
      master === undefined ? [] : [need("switch", switchName(master, true), 1, name)],
    ),
    ...panels.flatMap(({ name, ways }) =>
      ways.flatMap((way) =>
        way.switch === "none" ? [] : [need("switch", switchName(way.switch), 1, `${name} / ${way.name}`)],
      ),
    ),
    ...runs.flatMap(({ name, group, switch: own }) => {
      if (own === undefined || seen.has(group)) return [];
      seen.add(group);
      return [need("switch", switchName(own), 1, name)];
    }),
  ];
}

/** Two buses a panel; in a box one for each set of conductors that meets. Where the owner lists what is inside, that is it. */
function busNeeds({ plan, terminations }: NeedsInput): Need[] {
  const panels = plan.panels.flatMap(({ name, studsPerBus, contents = [] }) =>
    contents.length > 0 ? [] : [need("bus", `bus bar, ${studsPerBus} studs`, 2, name)],
  );
  const boxes = plan.boxes.flatMap((box): Need[] => {
    if (box.joins === "tee" || (box.contents?.length ?? 0) > 0) return [];
    const here = terminations.ends.filter(({ at, joint }) => at.place === box.name && joint === undefined);
    const nodes = new Map<string, number>();
    for (const { at } of here) {
      const shared = at.leg === "return" && box.returns === "joined";
      const node = shared ? "return" : `${at.circuits.join(", ")} ${at.leg}`;
      nodes.set(node, (nodes.get(node) ?? 0) + 1);
    }
    return [...nodes.values()].map((count) =>
      box.joins === "bus"
        ? need("bus", `bus bar, ${Math.max(2, count)} studs`, 1, box.name)
        : need("bus", "terminal strip, one pole", Math.max(1, count - 1), box.name),
    );
  });
  return [...panels, ...boxes];
}

/** Clips and ties along legs and at waypoints, grommets, flags for the ends, and what seals. */
function holdingNeeds({ plan, routes, cuts, terminations }: NeedsInput): Need[] {
  const { stockParts, partOffers, shows } = plan.source;
  const known = new Set([...stockParts, ...partOffers].map(({ item }) => item));
  const grommets = plan.source.waypoints.flatMap(({ name, opening, edge }) => {
    const passed = routes.points.some(({ point }) => point === name);
    return passed && edge === "grommet" && opening?.shape === "circle"
      ? [need("other", grommetName(opening.diameterM, shows.lengths, known), 1, name)]
      : [];
  });
  const wet = (surroundings: string) => surroundings !== "dry" && surroundings !== "engine space";
  const wetGear = plan.gear.find(({ surroundings }) => wet(surroundings));
  const wetJoint = terminations.ends.find(({ at }) => wet(at.surroundings));
  return [
    need("tie", "cable clip or tie", routes.supports + routes.points.length, "runs"),
    ...grommets,
    need("label", "wire flag", cuts.labels.length, "runs"),
    ...(wetGear === undefined ? [] : [need("sealant", consumables.sealant, 1, wetGear.group)]),
    ...(wetJoint === undefined ? [] : [need("tape", consumables.tape, 1, wetJoint.at.place)]),
  ];
}

function gearNeeds({ source, batteries, chargers, converters }: CompletePlan): Need[] {
  return [
    ...batteries.map(({ name }) => need("gear", name, 1, name)),
    ...chargers.map(({ name }) => need("gear", name, 1, name)),
    ...converters.map(({ name }) => need("gear", name, 1, name)),
    ...source.gear.map(({ name, count }) => need("gear", name, count, name)),
  ];
}
