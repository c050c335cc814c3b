import type { NewGear } from "./answers.js";

export interface NewWay {
  readonly name: string;
  readonly gear: readonly NewGear[];
  /** Feeds a pump on a float switch: no switch, and live when everything else is off. */
  readonly floats: boolean;
}

/** Ways for a first panel: lamps together, navigation lights together, each bilge pump and all else on its own, and a spare. */
export function newWays(items: readonly NewGear[]): NewWay[] {
  const gear = items.filter(({ straightFrom }) => straightFrom === undefined);
  const of = (role: NewGear["role"]) => gear.filter((item) => item.role === role);
  const alone = gear.filter((item) => item.role !== "lighting" && item.role !== "navigation light");
  const together = [
    { name: "lamps", gear: of("lighting"), floats: false },
    { name: "running lights", gear: of("navigation light"), floats: false },
  ].filter((way) => way.gear.length > 0);
  const single = alone.map((item) => ({
    name: item.name === "feed" ? "feed way" : item.name,
    gear: [item],
    floats: item.role === "bilge pump",
  }));
  return unique([...together, ...single, { name: "spare", gear: [], floats: false }]);
}

/** A way as it is written: one that feeds a pump on a float switch has no switch and is always live. */
export const wayText = (floats: boolean): string =>
  floats ? "{switch: none, fuse: work out, always live: true}" : "{switch: {rating: 10 A}, fuse: work out}";

/** A way of a taken name gets a number behind it. */
function unique(ways: readonly NewWay[]): NewWay[] {
  const taken = new Set<string>();
  return ways.map((way) => {
    let { name } = way;
    for (let number = 2; taken.has(name); number++) name = `${way.name} ${number}`;
    taken.add(name);
    return { ...way, name };
  });
}
