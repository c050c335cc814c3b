import { useState } from "react";
import { usePlan } from "../../app/context.js";
import { ReadProblems } from "../../app/read-problems.js";
import { useWordsOfProof } from "../../words/proof.js";
import { takeAsked } from "./asked.js";
import { FaultsPart } from "./faults-part.js";
import { SheetPart } from "./sheet-part.js";
import { WaterPart } from "./water-part.js";

const parts = ["sheet", "faults", "water"] as const;

/** Readings to take, what they mean, and the card for the water. */
export function View() {
  const words = useWordsOfProof();
  const sound = usePlan(({ reading }) => reading.ok);
  const any = usePlan(({ reading }) => reading.ok && reading.plan.work.readings.length > 0);
  const [asked, setAsked] = useState(takeAsked);
  const [part, setPart] = useState<(typeof parts)[number]>(any && asked.length === 0 ? "faults" : "sheet");
  const show = (each: (typeof parts)[number]) => {
    setAsked([]);
    setPart(each);
  };
  if (!sound) return <ReadProblems />;
  return (
    <div className="proof stack">
      <h2 className="away">{words.views.names.proof}</h2>
      <div className="proof-choice">
        {parts.map((each) => (
          <button key={each} type="button" aria-pressed={each === part} onClick={() => show(each)}>
            {words.proof.parts[each]}
          </button>
        ))}
      </div>
      {part === "sheet" && <SheetPart asked={asked} toFaults={() => show("faults")} />}
      {part === "faults" && <FaultsPart toSheet={() => show("sheet")} />}
      {part === "water" && <WaterPart />}
    </div>
  );
}
