import { Fragment, useState } from "react";
import type { Outing } from "../../../core/plan/model/outing.js";
import { useFigures, usePlan } from "../../app/context.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { AddPeriod } from "./add-period.js";
import { Curves } from "./curves.js";
import { Lane } from "./lane.js";
import { OutingFields } from "./outing-fields.js";
import { OutingResults } from "./outing-results.js";
import { PeriodEditor } from "./period-editor.js";
import { TimeAxis } from "./time-axis.js";
import { useOutingHands, useWrittenPeriods } from "./use-outing.js";

/** One outing: its hours across, what is on as bars, under them what the batteries make of it. */
export function OutingSheet({ outing }: { outing: Outing }) {
  const words = useWordsOfOuting();
  const figures = useFigures();
  const fresh = usePlan((state) => state.fresh || state.triedOut !== undefined);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const { periods: written, hasList } = useWrittenPeriods(outing.name);
  const hands = useOutingHands(outing, written);
  const [open, setOpen] = useState<number>();
  const followed = figures?.outings.find(({ name }) => name === outing.name);
  return (
    <>
      <OutingFields outing={outing} written={written} make={hands.make} readOnly={readOnly} />
      <section className="outing-sheet" aria-label={words.outing.timeline}>
        <p className="away" id="outing-hint">
          {words.outing.timelineHint}
        </p>
        <TimeAxis outing={outing} />
        {outing.on.length === 0 && <p className="hint outing-wide">{words.outing.nothingOn}</p>}
        {lanesOf(outing).map(({ key, index }) => (
          <Fragment key={key}>
            <Lane
              outing={outing}
              index={index}
              hands={hands}
              open={open === index}
              onOpen={() => setOpen(open === index ? undefined : index)}
              readOnly={readOnly}
            />
            {open === index && (
              <PeriodEditor
                outing={outing}
                index={index}
                hands={hands}
                readOnly={readOnly}
                close={() => setOpen(undefined)}
              />
            )}
          </Fragment>
        ))}
        {!readOnly && <AddPeriod outing={outing} hasList={hasList} make={hands.make} />}
        {figures && followed ? (
          <div className="outing-curves" aria-busy={!fresh}>
            <Curves figures={figures} followed={followed} outing={outing} />
          </div>
        ) : (
          <p className="hint outing-wide">{words.outing.uncertain}</p>
        )}
      </section>
      {figures && followed && <OutingResults figures={figures} followed={followed} outing={outing} />}
    </>
  );
}

/** The lines of an outing by what is on; where the same thing is on twice, the first and the second time. */
function lanesOf({ on }: Outing): { readonly key: string; readonly index: number }[] {
  const times = new Map<string, number>();
  return on.map(({ what }, index) => {
    const time = (times.get(what) ?? 0) + 1;
    times.set(what, time);
    return { key: `${what}\n${time}`, index };
  });
}
