import type { Edit } from "../../plan/edits/edit.js";
import type { Facts } from "../facts.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A float-switch pump has a way to itself, so that nothing else can blow its fuse. A counter or telltale of the pump may share it. */
export const floatPumpWay = rule({
  id: "float-pump-way",
  theme: "layout",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    [...facts.gearOn].flatMap(([circuit, gear]): Finding[] => {
      const pumps = gear.filter(({ floatSwitch }) => floatSwitch);
      const others = gear.filter(({ floatSwitch, role }) => !floatSwitch && role !== "gauge");
      if (pumps.length === 0 || others.length === 0) return [];
      return [
        {
          rule: "float-pump-way",
          level: "mend",
          at: circuit,
          with: others.map(({ name }) => name),
          remedies: emptyWayRemedies(
            facts,
            circuit,
            others.map(({ name }) => name),
          ),
        },
      ];
    }),
});

/** Moves the runs that lead straight to the other gear to a way of the same panel that feeds nothing. */
function emptyWayRemedies(facts: Facts, circuit: string, others: readonly string[]): Edit[] {
  const [panelName = ""] = circuit.split(" / ");
  const panel = facts.panels.get(panelName);
  const empty = panel?.ways.find(({ name }) => !facts.gearOn.has(`${panelName} / ${name}`));
  const run = (facts.runsAt.get(panelName) ?? []).filter(({ to }) => others.includes(to.place));
  const [only] = run;
  if (empty === undefined || only === undefined || run.length > 1 || others.length > 1) return [];
  return [{ edit: "set field", at: only.group, field: "from", to: `${panelName} / ${empty.name}` }];
}
