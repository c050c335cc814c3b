import { useFigures, usePlan, useWords } from "../../app/context.js";
import { Slip } from "../../parts/slip.js";

/** The slip of a thing of the plan, by its name. */
export default function ThingSlip({ name, close }: { name: string; close: () => void }) {
  const words = useWords().shell;
  const figures = useFigures();
  usePlan((state) => state.text);
  return (
    <Slip title={name} close={close}>
      {!figures && <p className="hint">{words.workingOut}</p>}
    </Slip>
  );
}
