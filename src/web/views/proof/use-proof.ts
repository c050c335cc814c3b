import { useEffect, useState } from "react";
import type { Probe } from "../../../core/proving/probe.js";
import { readShown } from "../../../core/quantity/moments.js";
import { mendEdits, readingEdits } from "../../../core/work/work-edits.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import type { ForemanOutcome, ForemanQuestion } from "../../garage/messages.js";
import { ownersMinutes, useForeman } from "../../garage/use-foreman.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfProof } from "../../words/proof.js";
import { useProofWords } from "./use-proof-words.js";

type Asked = "sheet" | "prove" | "water";

/** What the foreman says of the plan as it stands, asked anew when it changes; the last answer stays until the next is there. */
export function useProof(ask: Asked): ForemanOutcome | undefined {
  const foreman = useForeman();
  const text = usePlan((state) => state.text);
  const [outcome, setOutcome] = useState<ForemanOutcome>();
  useEffect(() => {
    let wanted = true;
    const load = async () => {
      const question: ForemanQuestion = { ask, text };
      const answer = await foreman(question);
      if (wanted) setOutcome(answer);
    };
    void load();
    return () => {
      wanted = false;
    };
  }, [foreman, ask, text]);
  return outcome;
}

/** Puts mends on record, takes one back, says more about it. Answers why that can't be. */
export function useMends(): {
  readonly put: (places: readonly string[]) => string | undefined;
  readonly takeBack: (row: number) => string | undefined;
  /** Empty: there is nothing to say of it. */
  readonly note: (row: number, said: string) => string | undefined;
} {
  const store = usePlanStore();
  const refusalOf = useRefusal();
  return {
    put: (places) => refusalOf(store.edit(mendEdits(places, ownersMinutes()))),
    note: (row, said) => {
      const field = `${row + 1} / note`;
      return refusalOf(
        store.edit([
          said === ""
            ? { edit: "remove field", at: "mends", field }
            : { edit: "set field", at: "mends", field, to: said },
        ]),
      );
    },
    takeBack: (row) => refusalOf(store.edit([{ edit: "remove field", at: "mends", field: String(row + 1) }])),
  };
}

const unitOf = { voltage: "V", current: "A", ohm: "Ω", marking: "A" } as const;

/** Puts a reading on record as typed: a bare number is in the unit of its kind. Answers why it can't be taken. */
export function useTakeReading(): (probe: Probe, typed: string, step?: string) => string | undefined {
  const store = usePlanStore();
  const words = useWordsOfProof();
  const refusalOf = useRefusal();
  const { open } = useProofWords().words.proving;
  return (probe, entered, step) => {
    // plans hold the word in English
    const typed = entered.toLowerCase() === open ? "open" : entered;
    const plain = /^[+-]?\d+([.,]\d+)?$/.test(typed)
      ? `${typed.replace(",", ".")} ${unitOf[probe.kind]}`
      : typed;
    const read = readShown(probe.kind === "marking" && !/^\s*marked/.test(plain) ? `marked ${plain}` : plain);
    if (!read.ok) return words.proof.notAReading(unitOf[probe.kind]);
    if (read.value.kind !== probe.kind) return words.proof.otherKind(unitOf[probe.kind]);
    const { reading: plan } = store.get();
    // without a sound plan there is no probe to have taken it at
    if (!plan.ok) return words.proof.notAReading(unitOf[probe.kind]);
    const edits = readingEdits(
      plan.plan.work,
      {
        kind: probe.kind,
        at: probe.at,
        ...("against" in probe ? { against: probe.against } : {}),
        withOn: probe.on,
        ...(probe.kind === "ohm" && probe.lifted ? { lifted: probe.lifted } : {}),
        value: read.value.value,
        ...(step === undefined ? {} : { step }),
      },
      ownersMinutes(),
    );
    return refusalOf(store.edit(edits));
  };
}
