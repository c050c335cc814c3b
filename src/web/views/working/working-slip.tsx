import type { FigureRef } from "../../../core/working/figure-ref.js";
import { useWords } from "../../app/context.js";
import { Slip } from "../../parts/slip.js";

/** How a figure came about. */
export default function WorkingSlip({ figure, close }: { figure: FigureRef; close: () => void }) {
  const words = useWords();
  return (
    <Slip title={words.findings.working} close={close}>
      <p>{figure.of}</p>
    </Slip>
  );
}
