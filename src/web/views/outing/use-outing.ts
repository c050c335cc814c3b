import { useRef, useState } from "react";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { Locator } from "../../../core/plan/edits/locate.js";
import type { OnPeriod, Outing } from "../../../core/plan/model/outing.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { periodEdits, type WrittenPeriod } from "./period-edits.js";

/** A period being dragged, before the plan takes it over. */
export interface Draft {
  readonly index: number;
  readonly period: OnPeriod;
}

export interface OutingHands {
  readonly draft: Draft | undefined;
  /** Shows a period as it would be, its figures following as fast as they come. */
  readonly tryPeriod: (index: number, period: OnPeriod) => void;
  /** Takes it into the plan. A sentence in return says why it can't be. */
  readonly take: (index: number, period: OnPeriod) => string | undefined;
  readonly make: (edits: readonly Edit[]) => string | undefined;
  readonly letGo: () => void;
}

/** What one can do to an outing: try while dragging, take when let go. */
export function useOutingHands(outing: Outing, written: readonly WrittenPeriod[]): OutingHands {
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const [draft, setDraft] = useState<Draft>();
  const asking = useRef({ busy: false, next: undefined as readonly Edit[] | undefined, trying: false });
  const editsOf = (index: number, period: OnPeriod) =>
    periodEdits(outing, index, period, written[index] ?? unwritten);
  const ask = async (edits: readonly Edit[]) => {
    const state = asking.current;
    state.next = edits;
    if (state.busy) return;
    state.busy = true;
    while (state.next) {
      const wanted = state.next;
      state.next = undefined;
      const given = await store.wouldGive(wanted);
      const outcome = given?.ok ? await store.figuresOf(given) : undefined;
      if (state.trying && outcome?.is === "figures") store.tryOut(outcome.figures);
    }
    state.busy = false;
  };
  const letGo = () => {
    asking.current.trying = false;
    asking.current.next = undefined;
    setDraft(undefined);
    store.tryOut(undefined);
  };
  const make = (edits: readonly Edit[]) => (edits.length === 0 ? undefined : refusalOf(store.edit(edits)));
  return {
    draft,
    tryPeriod: (index, period) => {
      asking.current.trying = true;
      setDraft({ index, period });
      void ask(editsOf(index, period));
    },
    take: (index, period) => {
      letGo();
      return make(editsOf(index, period));
    },
    make,
    letGo,
  };
}

const unwritten: WrittenPeriod = { from: false, to: false, runs: false, level: false };

/** Which keys of each line of an outing stand in the file. */
export function useWrittenPeriods(name: string): {
  readonly periods: readonly WrittenPeriod[];
  readonly hasList: boolean;
} {
  const reading = usePlan((state) => state.reading);
  if (!reading.ok) return { periods: [], hasList: false };
  const locator = new Locator(reading.document);
  const list = locator.node(["outings", name, "on"]);
  if (list?.kind !== "list") return { periods: [], hasList: false };
  return {
    hasList: true,
    periods: list.items.map((item) => {
      const keys = new Set(item.kind === "section" ? item.entries.map(({ key }) => key) : []);
      return { from: keys.has("from"), to: keys.has("to"), runs: keys.has("runs"), level: keys.has("level") };
    }),
  };
}
