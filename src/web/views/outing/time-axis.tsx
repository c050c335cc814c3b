import type { Outing } from "../../../core/plan/model/outing.js";
import { clock } from "../../../words/numbers.js";
import { hourMarks } from "./times.js";

/** Hours from the start across, and the time of day under them where it is known. */
export function TimeAxis({
  outing: { lastsH, startClockH },
}: {
  outing: Pick<Outing, "lastsH" | "startClockH">;
}) {
  return (
    <>
      <span className="lane-name" />
      <div className="time-axis lane-time" aria-hidden="true">
        {hourMarks(lastsH, 6).map((atH) => (
          <span key={atH} style={{ insetInlineStart: `${(atH / lastsH) * 100}%` }}>
            {startClockH === undefined ? `${Number(atH.toFixed(2))}\u00a0h` : clock(startClockH + atH)}
          </span>
        ))}
      </div>
    </>
  );
}
