import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { editSound } from "../../../src/core/plan/edits/edit-sound.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { diagnose } from "../../../src/core/proving/diagnose.js";
import { mendEdits } from "../../../src/core/work/work-edits.js";
import { boatOf } from "./boats.js";

const text = readFileSync("examples/second-season.yaml", "utf8");
const low = "coaming lamp 6 at joint +";
const minus = "coaming lamp 6 at joint -";

/** The dim lamps of the second season, with mends and readings added. */
function withMends(mends: readonly string[], readings: readonly string[] = []) {
  const more = readings.map((line) => `  - {${line}}\n`).join("");
  const plan = text.replace(
    /\nas built:\n/,
    `${more}\nmends:\n${mends.map((line) => `  - {${line}}\n`).join("")}\nas built:\n`,
  );
  const { figures, circuit } = boatOf(plan);
  return { figures, ...diagnose(figures, circuit) };
}
const trunk = "at: lamp trunk / return, when: 2026-03-28 09:30";
const lampAgain = (v: string, when: string) =>
  `at: ${low}, against: ${minus}, on: [coaming lamp], shows: ${v}, when: ${when}`;
const verdicts = ({ judged }: ReturnType<typeof withMends>) => judged.map(({ verdict }) => verdict);

describe("a mend on record", () => {
  test("takes back what was read through it before, and nothing else", () => {
    const told = withMends([trunk]);
    expect(verdicts(told)).toEqual([
      "within",
      "before the mend",
      "before the mend",
      "before the mend",
      "before the mend",
      "within",
    ]);
    expect(told.judged.map(({ mended }) => mended?.wasOutside)).toEqual([
      undefined,
      false,
      true,
      false,
      true,
      undefined,
    ]);
    expect(told.faults?.suspects[0]?.kind).toBe("well");
    expect(told.figures.findings.filter(({ rule }) => rule === "reading-outside")).toEqual([]);
  });

  test("asks for the voltage at the far end of the way, once, and for nothing more when it was read", () => {
    const told = withMends([trunk]);
    const lamps = [1, 2, 3, 4, 5, 6].map((n) => `coaming lamp ${n}`);
    expect(told.again).toEqual([{ kind: "voltage", at: low, against: minus, on: lamps }]);
    const again = withMends([trunk], [lampAgain("12.61 V", "2026-03-28 09:40")]);
    expect(again.again).toEqual([]);
    expect(again.judged.at(-1)?.verdict).toBe("within");
    expect(again.judged[2]?.mended).toMatchObject({ at: "lamp trunk / return", readAgain: true });
    expect(again.judged.flatMap(({ differsFrom }) => differsFrom)).toEqual([]);
  });

  test("proven badly, the new reading is held against the boat: there is more", () => {
    const told = withMends([trunk], [lampAgain("12.25 V", "2026-03-28 09:40")]);
    expect(told.judged.at(-1)?.verdict).toBe("low");
    expect(told.faults?.suspects[0]?.kind).not.toBe("well");
    expect(told.next.length).toBeGreaterThan(0);
  });

  test("does not reach readings taken later, of another way, or on the same day where no time is told", () => {
    expect(verdicts(withMends(["at: lamp trunk / return, when: 2026-03-28 08:30"]))).not.toContain(
      "before the mend",
    );
    expect(verdicts(withMends(["at: lamp trunk / return, when: 2026-03-28"]))).not.toContain(
      "before the mend",
    );
    expect(verdicts(withMends(["at: sounder cable, when: 2026-03-29"]))).not.toContain("before the mend");
  });

  test("may be of a cable, a piece of gear, a battery, or a joint made later", () => {
    const count = (...mends: string[]) =>
      verdicts(withMends(mends)).filter((verdict) => verdict === "before the mend").length;
    expect(count("at: lamp trunk, when: 2026-03-29")).toBe(4);
    expect(count("at: coaming lamp, when: 2026-03-29")).toBe(4);
    expect(count("at: bilge pump, when: 2026-03-29")).toBe(1);
    expect(count("at: house, when: 2026-03-29")).toBe(6);
    const joint = text.replace(
      "\n  joints:\n",
      "\n  joints:\n    - {at: lamp trunk, end: start, kind: crimped ring, when: 2026-03-29}\n",
    );
    const { figures, circuit } = boatOf(joint);
    const { judged } = diagnose(figures, circuit);
    expect(judged.filter(({ verdict }) => verdict === "before the mend")).toHaveLength(4);
  });

  test("of nothing in the plan, or without a day, is said and takes nothing back", () => {
    const told = withMends(["at: gone cable, when: 2026-03-29", "at: lamp trunk"]);
    expect(told.idleMends).toEqual([
      { at: "gone cable", why: "no such place" },
      { at: "lamp trunk", why: "no day" },
    ]);
    expect(verdicts(told)).not.toContain("before the mend");
  });

  test("what was read when a project was finished is no baseline for what was mended since", () => {
    const changed = (told: ReturnType<typeof withMends>) => told.changes.map(({ now }) => now.at);
    expect(changed(withMends(["at: sounder cable, when: 2026-03-29"]))).toContain(low);
    const again = withMends([trunk], [lampAgain("12.61 V", "2026-03-28 09:40")]);
    expect(changed(again)).not.toContain(low);
  });

  test("is written as an edit, goes with a thing's new name, and is read back", () => {
    const read = readPlan(text);
    if (!read.ok) throw new Error("does not read");
    const at = ["lamp trunk / return"];
    const edited = editSound(read, mendEdits(at, 29_570_000, ' cut "it" off '));
    if (!edited.ok) throw new Error(JSON.stringify(edited.problem));
    expect(edited.plan.work.mends).toEqual([
      { at: "lamp trunk / return", when: expect.stringMatching(/^2026-/), note: 'cut "it" off' },
    ]);
    const renamed = editSound(edited, [{ edit: "rename", at: "lamp trunk", to: "fore trunk" }]);
    if (!renamed.ok) throw new Error(JSON.stringify(renamed.problem));
    expect(renamed.plan.work.mends[0]?.at).toBe("fore trunk / return");
  });
});
