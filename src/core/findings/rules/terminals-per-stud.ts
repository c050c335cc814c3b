import type { Facts } from "../facts.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { e11, iso10133 } from "../sources.js";

/** No stud holds more ring terminals than it can clamp. */
export const terminalsPerStud = rule({
  id: "terminals-per-stud",
  theme: "joints",
  level: "mend",
  sources: { us: [e11("terminals on one stud")], iso: [iso10133("terminals on one stud", "memory")] },
  check: (facts) =>
    studsOf(facts).flatMap(({ at, terminals, studs }): Finding[] => {
      const limit = facts.ruleSet.maxTerminalsPerStud.value;
      const figure = Math.ceil(terminals / studs);
      if (figure <= limit) return [];
      const working = [
        { symbol: "terminals", value: terminals },
        { symbol: "studs", value: studs },
      ] as const;
      return [{ rule: "terminals-per-stud", level: "mend", at, figure, limit, working }];
    }),
});

interface Studs {
  readonly at: string;
  readonly terminals: number;
  readonly studs: number;
}

/** Where rings meet on studs: battery posts (the negative, which all returns share), panel buses, boxes where the owner says so. */
function studsOf({ plan, runsAt }: Facts): Studs[] {
  const batteries = plan.batteries.map(({ name, studsPerPost, parallelWith }): Studs => {
    const back = (runsAt.get(name) ?? []).filter(({ legs, return: way }) => legs !== "out" && way !== "hull");
    return { at: name, terminals: back.length + parallelWith.length, studs: studsPerPost };
  });
  const panels = plan.panels.map(({ name, studsPerBus }): Studs => {
    const back = (runsAt.get(name) ?? []).filter(({ legs, return: way }) => legs !== "out" && way !== "hull");
    const terminals = back.reduce(
      (sum, run) => sum + (run.return === "shared" ? 1 : Math.max(1, run.carries.length)),
      0,
    );
    return { at: name, terminals, studs: studsPerBus };
  });
  const boxes = plan.boxes.flatMap(({ name, terminalsPerStud: terminals }): Studs[] =>
    terminals === undefined ? [] : [{ at: name, terminals, studs: 1 }],
  );
  return [...batteries, ...panels, ...boxes];
}
