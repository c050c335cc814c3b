import { useEffect, useState } from "react";
import type { Step } from "../../../core/work/step.js";
import type { StepDrawing } from "../../../drawing/work/step-drawing.js";
import { usePreferences } from "../../app/context.js";
import { ShapeView } from "../../parts/shape-view.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfBuild } from "../../words/build.js";

type Drawn = NonNullable<Step["drawing"]>;

/** What is better drawn than told, in the step itself, and the way to the view that shows it whole. */
export function StepDrawings({
  step,
  draw,
}: {
  step: Step & { readonly drawing: Drawn };
  draw: (step: Step) => Promise<readonly StepDrawing[]>;
}) {
  const [drawings, setDrawings] = useState<readonly StepDrawing[]>([]);
  useEffect(() => {
    let wanted = true;
    const load = async () => {
      const made = await draw(step);
      if (wanted) setDrawings(made);
    };
    void load();
    return () => {
      wanted = false;
    };
  }, [draw, step]);
  return (
    <>
      {drawings.map((drawing) => (
        <Drawing key={drawing.words} of={drawing} />
      ))}
      <DrawingLink of={step.drawing} pieces={step.pieces} />
    </>
  );
}

const drawn = { role: "img" } as const;
/** A drawing that is wider than the step is moved across under the finger, or by key. */
const mover = (label: string) => ({ role: "group", tabIndex: 0, "aria-label": label }) as const;
/** Words of a drawing stay readable: it is never made smaller than so many pixels for a millimetre. */
const leastPxPerMm = 3;

function Drawing({ of: { shapes, widthMm, heightMm, words } }: { of: StepDrawing }) {
  const screen = useWordsOfBuild().build;
  const [{ language }] = usePreferences();
  return (
    <figure className="step-drawing">
      <div className="wide" {...mover(screen.drawing)}>
        <svg
          {...drawn}
          aria-label={words}
          lang={language}
          viewBox={`0 ${-heightMm} ${widthMm} ${heightMm}`}
          style={{ minWidth: widthMm * leastPxPerMm, maxWidth: widthMm * 6 }}
        >
          <ShapeView shapes={shapes} />
        </svg>
      </div>
      <figcaption className="hint" lang={language}>
        {words}
      </figcaption>
    </figure>
  );
}

const viewOf = { template: "boxes", marks: "layout", diagram: "circuits" } as const;

/** Leads to the view that draws it, with the thing itself selected there. */
function DrawingLink({ of, pieces }: { of: Drawn; pieces: readonly string[] }) {
  const words = useWordsOfBuild().build;
  const at = of.sheet === "marks" ? (pieces[0] ?? of.of) : of.of;
  return (
    <p>
      <ViewLink view={viewOf[of.sheet]} at={at}>
        {words.toDrawing[of.sheet]}
      </ViewLink>
    </p>
  );
}
