import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A hole that exists is where the plan wants it, and as large. What can't be compared is told. */
export const builtHole = rule({
  id: "built-hole",
  theme: "work",
  level: "mend",
  sources: both(practice),
  check: ({ record, hull }) => {
    // without the form of the boat most places can't be compared, and nothing was asked about the hull
    if (hull === undefined) return [];
    const found: Finding[] = [];
    const unknown: string[] = [];
    for (const one of record.differences) {
      const about = { rule: "built-hole", level: "mend" as const };
      switch (one.kind) {
        case "hole not compared":
          unknown.push(one.built.hole);
          break;
        case "hole moved":
          found.push({ ...about, at: one.built.hole, figure: one.byM, unit: "m", terms: { kind: "moved" } });
          break;
        case "hole on another face":
          found.push({
            ...about,
            at: one.built.hole,
            terms: {
              kind: "face",
              built: one.built.on,
              builtSide: one.built.side,
              wanted: one.wanted.on,
              wantedSide: one.wanted.side,
            },
          });
          break;
        case "hole size":
          found.push(size(one.built.hole, one.built.sizeM, one.wantedM));
          break;
        case "entry size":
          found.push(size(one.built.box, one.built.holeM, one.wantedM));
          break;
        case "entry moved":
          found.push({ ...about, at: one.built.box, with: [one.built.run], terms: { kind: "entry" } });
          break;
        default:
          break;
      }
    }
    return [...found, ...uncheckedTogether("built-hole", unknown)];
  },
});

const size = (at: string, isM: number, wantedM: number): Finding => ({
  rule: "built-hole",
  level: "mend",
  at,
  figure: isM * 1000,
  limit: wantedM * 1000,
  unit: "mm",
  terms: { kind: "size" },
});
