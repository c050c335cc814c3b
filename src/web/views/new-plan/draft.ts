import type { GearRole } from "../../../core/plan/model/gear.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import type { Chemistry } from "../../../core/plan/model/supply.js";
import type { NewPlanAnswers } from "../../../core/plan/new/answers.js";
import type { ScreenWords } from "../../../words/screen/en.js";

export interface DraftGear {
  readonly id: number;
  readonly taken: boolean;
  readonly name: string;
  readonly role: GearRole;
  readonly draws: string;
  readonly count: string;
  readonly cable: string;
}

/** What has been answered so far, as typed. */
export interface Draft {
  readonly name: string;
  readonly kind: string;
  readonly length: string;
  readonly hull: keyof ScreenWords["asking"]["hulls"] | "";
  readonly petrol: boolean;
  readonly rules: Plan["rules"];
  readonly chemistry: Chemistry;
  readonly capacity: string;
  readonly voltage: string;
  readonly batteryCable: string;
  readonly gear: readonly DraftGear[];
}

/** Figures to begin with, invented and of the usual size; the owner's label counts. */
const presets = [
  { of: "lamps", role: "lighting", draws: "1 W", count: "4", ft: "9 ft", m: "2.7 m", taken: true },
  {
    of: "navigation",
    role: "navigation light",
    draws: "2 W",
    count: "1",
    ft: "10 ft",
    m: "3 m",
    taken: true,
  },
  {
    of: "bilge",
    role: "bilge pump",
    draws: "2.8 A at 12 V",
    count: "1",
    ft: "7 ft",
    m: "2.1 m",
    taken: true,
  },
  { of: "sounder", role: "electronics", draws: "9 W", count: "1", ft: "4 ft", m: "1.2 m", taken: false },
  { of: "sockets", role: "socket", draws: "11 W", count: "2", ft: "3 ft", m: "1 m", taken: false },
  { of: "voltmeter", role: "gauge", draws: "20 mA", count: "1", ft: "2 ft", m: "0.6 m", taken: false },
  { of: "well", role: "pump", draws: "3 A at 12 V", count: "1", ft: "9 ft", m: "2.7 m", taken: false },
  {
    of: "horn",
    role: "sound signal",
    draws: "4 A at 12 V",
    count: "1",
    ft: "8 ft",
    m: "2.4 m",
    taken: false,
  },
] as const;

export function firstDraft({ asking }: ScreenWords, rules: Plan["rules"]): Draft {
  const inFeet = rules === "us";
  return {
    name: asking.usualName,
    kind: asking.usualKind,
    length: inFeet ? "15 ft" : "4.6 m",
    hull: "",
    petrol: false,
    rules,
    chemistry: "agm",
    capacity: "50 Ah",
    voltage: "12 V",
    batteryCable: inFeet ? "6 ft" : "1.8 m",
    gear: presets.map(({ of, role, draws, count, ft, m, taken }, id) => ({
      id,
      taken,
      name: asking.presets[of],
      role,
      draws,
      count,
      cable: inFeet ? ft : m,
    })),
  };
}

export function answersOf(draft: Draft): NewPlanAnswers {
  const { name, kind, length, hull, petrol, rules, chemistry, capacity, voltage, batteryCable } = draft;
  return {
    name: name.trim(),
    kind: kind.trim(),
    length,
    ...(hull === "" ? {} : { hull }),
    petrolOnBoard: petrol,
    rules,
    battery: { chemistry, capacity, voltage, cable: batteryCable },
    gear: draft.gear
      .filter(({ taken }) => taken)
      .map((piece) => ({
        name: piece.name.trim(),
        role: piece.role,
        draws: piece.draws,
        cable: piece.cable,
        ...(piece.count === "1" ? {} : { count: Number(piece.count) }),
      })),
  };
}
