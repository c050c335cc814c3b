import { useState } from "react";
import { type GearTrace, type TraceStep, traceGear } from "../../../core/circuit/gear-trace.js";
import type { Figures } from "../../../core/figures-types.js";
import { amps, decimals, marked, volts } from "../../../words/numbers.js";
import type { ScreenWords } from "../../../words/screen/en.js";
import { Figure } from "../../parts/figure.js";
import { useWordsOfCircuits } from "../../words/circuits.js";

/** Both legs of the gear that is selected, stretch by stretch, with what a meter would show. */
export function TraceTable(props: {
  figures: Figures;
  corner: string;
  gear: readonly string[];
  /** Does it lie open at first. */
  open: boolean;
  select: (name: string) => void;
}) {
  const { figures, gear, select } = props;
  const words = useWordsOfCircuits().circuits;
  const [piece, setPiece] = useState<string>();
  const corner = figures.corners.find(({ name }) => name === props.corner);
  if (gear.length === 0 || !corner) return <p className="hint">{words.traceHint}</p>;
  const shown =
    piece !== undefined && gear.includes(piece) ? piece : (worstOf(gear, corner.gear) ?? gear[0] ?? "");
  const trace = traceGear(figures, corner, shown);
  return (
    <details className="trace" open={props.open}>
      <summary>{trace ? words.traceOf(shown, trace.supply) : words.trace}</summary>
      {gear.length > 1 && (
        <label className="trace-piece">
          {words.piece}
          <select value={shown} onChange={(event) => setPiece(event.target.value)}>
            {gear.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </label>
      )}
      {trace ? <Stretches trace={trace} corner={corner.name} select={select} /> : <p>{words.noTrace}</p>}
    </details>
  );
}

function worstOf(gear: readonly string[], known: Figures["corners"][number]["gear"]): string | undefined {
  const among = known.filter(({ id, on }) => on && gear.includes(id));
  return among.toSorted((a, b) => b.dropV - a.dropV)[0]?.id;
}

function Stretches({
  trace,
  corner,
  select,
}: {
  trace: GearTrace;
  corner: string;
  select: (name: string) => void;
}) {
  const words = useWordsOfCircuits().circuits;
  const outs = trace.steps.filter(({ leg }) => leg === "out");
  const backs = trace.steps.filter(({ leg }) => leg === "back");
  const atPlus = outs.at(-1)?.againstNegativeV ?? trace.supplyV;
  const atMinus = backs.reduce((sum, { dropV }) => sum + dropV, 0);
  const row = (step: TraceStep) => (
    <Stretch key={step.branch.id} step={step} corner={corner} select={select} />
  );
  return (
    <>
      {!trace.on && <p className="hint">{words.notOn}</p>}
      <div className="wide">
        <table className="trace-table">
          <thead>
            <tr>
              <th scope="col">{words.stretch}</th>
              <th scope="col">{words.rating}</th>
              <th scope="col" className="number">
                {words.current}
              </th>
              <th scope="col" className="number">
                {words.drop}
              </th>
              <th scope="col" className="number">
                {words.against}
              </th>
            </tr>
          </thead>
          <tbody>
            <Between name={`${words.start}: ${trace.supply}`} value={trace.supplyV} />
            {outs.map(row)}
            <Between name={`${words.atGear}: ${trace.gear}`} value={atPlus - atMinus} across />
            {backs.map(row)}
          </tbody>
        </table>
      </div>
    </>
  );
}

function Between({ name, value, across = false }: { name: string; value: number; across?: boolean }) {
  return (
    <tr className={across ? "trace-gear" : undefined}>
      <th scope="row" colSpan={4}>
        <bdi>{name}</bdi>
      </th>
      <td className="number">
        <b>{volts(value)}</b>
      </td>
    </tr>
  );
}

function Stretch({
  step,
  corner,
  select,
}: {
  step: TraceStep;
  corner: string;
  select: (name: string) => void;
}) {
  const words = useWordsOfCircuits().circuits;
  const { branch, dropV, againstNegativeV, leg } = step;
  return (
    <tr>
      <th scope="row">
        <button type="button" className="quiet" onClick={() => select(branch.of)}>
          <bdi>{branch.of}</bdi>
        </button>{" "}
        <span className="hint">{words.legs[leg]}</span>
      </th>
      <td>{partsOf(step, words)}</td>
      <td className="number">{amps(Math.abs(branch.currentA))}</td>
      <td className="number">
        <Figure of={{ of: "branch drop", branch: branch.id, corner }} label={words.drop}>
          {`${decimals(dropV * 1000, 0)}\u00a0mV`}
        </Figure>
      </td>
      <td className="number">{volts(againstNegativeV)}</td>
    </tr>
  );
}

/** Size of the conductor, or rating of the device, that makes the stretch. */
function partsOf({ branch }: TraceStep, words: ScreenWords["circuits"]): string {
  const said = branch.parts.flatMap((part) => {
    switch (part.kind) {
      case "conductor":
        return [part.sizeKey.replaceAll(" ", "\u00a0")];
      case "protection":
        return [`${words.devices.fuse} ${marked(part.ratingA, "A")}`];
      case "switch":
        return [words.switched];
      case "joint":
        return [];
      default:
        return part satisfies never;
    }
  });
  return said.length > 0 ? said.join(", ") : words.joint;
}
