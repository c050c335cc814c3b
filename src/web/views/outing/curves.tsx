import { type ReactNode, useState } from "react";
import type { BatteryTrace, BrownOut, OutingFigures } from "../../../core/energy/types.js";
import type { Figures } from "../../../core/figures-types.js";
import type { Outing } from "../../../core/plan/model/outing.js";
import { decimals, percent, shareSet, volts } from "../../../words/numbers.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { Lines } from "./lane.js";
import { momentWords } from "./times.js";

interface CurvesProps {
  readonly figures: Figures;
  readonly followed: OutingFigures;
  readonly outing: Pick<Outing, "startClockH">;
}

/** Charge and voltage of a battery through the outing, on the hours of the bars above, with where something gets too little. */
export function Curves({ figures, followed, outing }: CurvesProps) {
  const words = useWordsOfOuting().outing;
  const [chosen, choose] = useState<string>();
  const trace = followed.batteries.find(({ battery }) => battery === chosen) ?? followed.batteries[0];
  const battery = figures.plan.batteries.find(({ name }) => name === trace?.battery);
  if (!trace || !battery) return null;
  const fed = new Set(
    figures.plan.gear
      .filter(({ name }) => {
        const circuit = figures.plan.circuits.get(figures.plan.circuitOf.get(name) ?? "");
        return circuit?.battery === trace.battery;
      })
      .map(({ name }) => name),
  );
  const brownOuts = followed.brownOuts.filter(({ gear }) => fed.has(gear));
  const lowest = Math.min(...trace.points.map(({ terminalV }) => terminalV));
  const stepV = battery.nominalV > 18 ? 2 : 1;
  const bottomV = Math.floor((Math.min(battery.cutOffV, lowest) - 0.02 * battery.nominalV) / stepV) * stepV;
  const topV =
    Math.ceil(Math.max(battery.nominalV, ...trace.points.map(({ terminalV }) => terminalV)) / stepV) * stepV;
  const marks = [
    ...(trace.reserveAtH === undefined ? [] : [{ atH: trace.reserveAtH, says: words.reserveAt }]),
    ...(trace.cutOffAtH === undefined ? [] : [{ atH: trace.cutOffAtH, says: words.cutOffAt }]),
  ].filter(({ atH }) => atH <= followed.lastsH);
  return (
    <>
      {followed.batteries.length > 1 && (
        <fieldset className="choice outing-wide">
          <legend>{words.battery}</legend>
          <div className="choice-row">
            {followed.batteries.map(({ battery: name }) => (
              <label key={name}>
                <input
                  type="radio"
                  name="traced battery"
                  checked={name === trace.battery}
                  onChange={() => choose(name)}
                />
                <bdi>{name}</bdi>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      <span className="lane-name curve-name">
        <b>{words.chargeCurve}</b>
        <span className="hint"> {percent(trace.chargeLeft, 0)}</span>
      </span>
      <Curve
        label={words.curveText(trace.battery, percent(trace.chargeLeft, 0), volts(lowest))}
        trace={trace}
        lastsH={followed.lastsH}
        figureOf={({ charge }) => charge}
        bounds={[0, headroom]}
        limit={{ at: battery.reserveShare, says: words.reserve(shareSet(battery.reserveShare)) }}
        ticks={[0.5, 1].map((share) => [share, percent(share, 0)])}
      >
        {marks.map(({ atH, says }) => (
          <Moment key={says("")} atH={atH} lastsH={followed.lastsH}>
            {says(momentWords(atH, outing.startClockH))}
          </Moment>
        ))}
      </Curve>
      <span className="lane-name curve-name">
        <b>{words.voltageCurve}</b>
        <span className="hint"> {volts(trace.points.at(-1)?.terminalV)}</span>
      </span>
      <Curve
        label={`${words.voltageCurve}: ${volts(lowest)}`}
        trace={trace}
        lastsH={followed.lastsH}
        figureOf={({ terminalV }) => terminalV}
        bounds={[bottomV, bottomV + (topV - bottomV) * headroom]}
        limit={{ at: battery.cutOffV, says: words.stops(`${decimals(battery.cutOffV, 1)}\u00a0V`) }}
        ticks={[topV, (topV + bottomV) / 2].map((value) => [value, `${decimals(value, 1)}\u00a0V`])}
      >
        <BrownOuts brownOuts={brownOuts} lastsH={followed.lastsH} />
      </Curve>
    </>
  );
}

/** Room above the highest figure, so that the line does not run into its words. */
const headroom = 1.12;

type Point = BatteryTrace["points"][number];

function Curve(props: {
  label: string;
  trace: BatteryTrace;
  lastsH: number;
  figureOf: (point: Point) => number;
  bounds: readonly [number, number];
  limit: { readonly at: number; readonly says: string };
  ticks: readonly (readonly [number, string])[];
  children: ReactNode;
}) {
  const { trace, lastsH, figureOf, limit } = props;
  const [least, most] = props.bounds;
  const down = (value: number) =>
    100 - (Math.min(Math.max((value - least) / (most - least), 0), 1) * 100 || 0);
  const points = trace.points.filter((point) => Number.isFinite(figureOf(point)));
  const d = points.map((point) => `${(point.atH / lastsH) * 100} ${down(figureOf(point))}`).join("L");
  return (
    <div className="curve lane-time" role="img" aria-label={props.label}>
      <Lines lastsH={lastsH} />
      <span className="curve-limit" style={{ top: `${down(limit.at)}%` }}>
        <i>{limit.says}</i>
      </span>
      {props.ticks.map(([value, says]) => (
        <span key={says} className="curve-tick" style={{ top: `${down(value)}%` }}>
          {says}
        </span>
      ))}
      <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        {d !== "" && <path d={`M${d}`} vectorEffect="non-scaling-stroke" />}
      </svg>
      {props.children}
    </div>
  );
}

/** A line at a moment with its words on the side that has room. */
function Moment({ atH, lastsH, children }: { atH: number; lastsH: number; children: string }) {
  return (
    <span
      className="moment"
      data-side={atH > lastsH / 2 ? "before" : "after"}
      style={{ insetInlineStart: `${(atH / lastsH) * 100}%` }}
    >
      <i>{children}</i>
    </span>
  );
}

function BrownOuts({ brownOuts, lastsH }: { brownOuts: readonly BrownOut[]; lastsH: number }) {
  return brownOuts.map(({ gear, atH }, index) => (
    <span
      key={gear}
      className="brown-out"
      style={{ insetInlineStart: `${(Math.min(atH, lastsH) / lastsH) * 100}%` }}
    >
      <svg viewBox="0 0 12 10" aria-hidden="true" focusable="false">
        <path d="M0 0h12L6 10z" />
      </svg>
      {index + 1}
    </span>
  ));
}
