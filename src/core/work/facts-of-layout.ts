import type { BoxFigures } from "../box/plan-boxes.js";
import { jointName, sleeveName, terminalName } from "../parts/item-names.js";
import type { LayoutFigures } from "../parts/layout-types.js";
import type { EndFigures } from "../terminations/plan-terminations.js";
import { groupedBy } from "./grouped.js";
import { type EndFacts, type EntryHole, endKey, type HeldStretch, type WorkFacts } from "./work-input.js";

/** What the layout of a plan tells the order of work. */
export function factsOfLayout({ boxes, routes, terminations, cuts }: LayoutFigures): WorkFacts {
  const joints = new Map(terminations.joints.map((joint) => [joint.id, joint]));
  const sharing = groupedBy(
    terminations.ends.filter(({ joint }) => joint !== undefined),
    ({ joint = "" }) => joint,
  );
  const part = (end: EndFigures): string | undefined => {
    const joint = end.joint === undefined ? undefined : joints.get(end.joint);
    return joint === undefined ? terminalName(end) : jointName(joint, sharing.get(joint.id) ?? []);
  };
  const facts = (end: EndFigures): EndFacts => {
    const named = part(end);
    return {
      size: {
        what: "end",
        of: end.at.conductor,
        leg: end.at.leg,
        stripMm: end.stripMm,
        tool: end.tool,
        ...(end.at.colour === undefined ? {} : { colour: end.at.colour }),
        ...(named === undefined ? {} : { part: named }),
        ...(end.sleeve === undefined ? {} : { sleeve: sleeveName(end.sleeve) }),
        ...(end.pull === undefined ? {} : { pullN: end.pull.inUseN }),
      },
      ...(end.joint === undefined ? {} : { joint: end.joint }),
    };
  };
  const ends = groupedBy(terminations.ends, ({ at }) => endKey(at.run, at.end));
  const pieces = cuts.kinds.flatMap(({ kind, pieces: list }) =>
    list.map(({ piece, run, lengthMm }) => ({
      run,
      size: { what: "cut length" as const, of: piece, mm: lengthMm, wire: kind },
    })),
  );
  return {
    entries: new Map(boxes.flatMap((box) => (box.layout ? [[box.box, entriesOf(box)] as const] : []))),
    contents: new Map(boxes.map((box) => [box.box, box.layout?.contents.map(({ id }) => id) ?? []])),
    cuts: new Map(
      [...groupedBy(pieces, ({ run }) => run)].map(([run, list]) => [run, list.map(({ size }) => size)]),
    ),
    ends: new Map([...ends].map(([key, list]) => [key, list.map(facts)])),
    stretches: routes.legs.map(
      ({ leg, ofRun, from, to, runs, supports, enclosed }): HeldStretch => ({
        leg,
        ofRun,
        at: [from, to],
        runs,
        supports: enclosed ? 0 : (supports?.atM.length ?? 0) + 2,
        ...(supports === undefined ? {} : { apartM: supports.apartM }),
      }),
    ),
  };
}

function entriesOf({ layout }: BoxFigures): EntryHole[] {
  const glands = new Map((layout?.glands ?? []).map(({ cable, fit }) => [cable, fit.size]));
  return (layout?.entries ?? []).map(({ id, holeMm, on, x, y }): EntryHole => {
    const gland = glands.get(id);
    return {
      run: id,
      holeMm,
      on,
      atM: [x / 1000, y / 1000],
      ...(gland === undefined ? {} : { gland }),
    };
  });
}
