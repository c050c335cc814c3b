import { lightKindsOf } from "../../plan/light-kind.js";
import { seenFrom } from "../../reference/seen-from.js";
import { leakTests } from "../../work/leak-tests.js";
import type { ProvingInput } from "../input.js";
import type { SheetSection, SheetTest } from "./types.js";

/** What is proven by eye: each navigation light over its arc, and new holes against water. */
export function sightSections({ plan }: ProvingInput): SheetSection[] {
  const lights = plan.gear.filter(({ role }) => role === "navigation light");
  const circuits = [...new Set(lights.map(({ name }) => plan.circuitOf.get(name) ?? ""))].filter(
    (c) => c !== "",
  );
  const seen = circuits.map((circuit): SheetSection => {
    const own = lights.filter(({ name }) => plan.circuitOf.get(name) === circuit);
    const id = `seen / ${circuit}`;
    const tests = own.map(({ name }): SheetTest => {
      const arcDeg = arcOf(name);
      const about = { id: `${id} / ${name}`, test: "seen from", at: name, stop: "not seen" } as const;
      return arcDeg === undefined ? about : { ...about, arcDeg };
    });
    return { id, kind: "seen", at: circuit, gear: own.map(({ name }) => name), tests };
  });
  const holes = leakTests(plan).flatMap(({ holes }) =>
    holes.map((hole): SheetTest => ({ id: `leak / ${hole}`, test: "leak", at: hole, stop: "lets water in" })),
  );
  const leak: SheetSection = { id: "leak", kind: "holes", at: "", gear: [], tests: holes };
  return holes.length === 0 ? seen : [...seen, leak];
}

/** Arc of a light whose name says which one it is; undefined: nothing tells, or it is several in one lantern. */
function arcOf(name: string): number | undefined {
  const [kind, more] = lightKindsOf(name);
  return kind === undefined || more !== undefined ? undefined : seenFrom[kind].arcDeg;
}
