import { useState } from "react";
import { type BatteryLeft, batteryLeft } from "../../../core/proving/water/battery-left.js";
import { readQuantity } from "../../../core/quantity/read.js";
import { amps, decimals, hours, percent, roughHours, shareSet } from "../../../words/numbers.js";
import type { ScreenWords } from "../../../words/screen/en.js";
import { feedsWords, fuseWords, spareFuseWords, switchWords, usageWords } from "../../../words/water-card.js";
import { useFigures } from "../../app/context.js";
import { useWordsOfProof } from "../../words/proof.js";
import { useProof } from "./use-proof.js";
import { useProofWords } from "./use-proof-words.js";
import { Waiting } from "./waiting.js";

/** What one needs afloat: which switch, how long, what to turn off first, which fuse, what to carry. */
export function WaterPart() {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const outcome = useProof("water");
  if (outcome?.is !== "water") return <Waiting outcome={outcome} />;
  const { ways, batteries, spareFuses, spareThings } = outcome.card;
  return (
    <>
      <HoursLeft />
      {batteries.map(({ battery, turnOff, rows, uses, reserveShare }) => (
        <section key={battery}>
          <h3>{words.hoursOf(battery, shareSet(reserveShare))}</h3>
          <div className="wide">
            <table lang={language}>
              <thead>
                <tr>
                  <th>{said.water.atRest}</th>
                  {uses.map((use) => (
                    <th key={usageWords(use, said)}>{usageWords(use, said)}</th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {rows.map(({ restingV, left }) => (
                  <tr key={restingV}>
                    <th scope="row">{`${decimals(restingV, 2)}\u00a0V`}</th>
                    {uses.map((use, at) => (
                      <td key={usageWords(use, said)}>{roughHours(left[at]?.hoursToReserve)}</td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          {turnOff.length > 0 && (
            <>
              <h4>{words.turnOff}</h4>
              <ol lang={language}>
                {turnOff.map(({ group, circuit, currentA, gainedH }) => (
                  <li key={`${circuit} ${group}`}>
                    <bdi>{group}</bdi> (<bdi>{circuit}</bdi>): {amps(currentA)},{" "}
                    {said.water.gains(hours(gainedH))}
                  </li>
                ))}
              </ol>
            </>
          )}
        </section>
      ))}
      <section>
        <h3>{words.switches}</h3>
        <ul className="sheet-tests" lang={language}>
          {ways.map((way) => (
            <li key={way.circuit} className="sheet-test">
              <b>
                <bdi>{way.circuit}</bdi>
              </b>
              <span>{fuseWords(way, said)}</span>
              <span className="hint">
                {feedsWords(way)}; {switchWords(way, said)}
              </span>
            </li>
          ))}
        </ul>
      </section>
      <section>
        <h3>{words.spares}</h3>
        <ul lang={language}>
          {spareFuses.map((spare) => (
            <li key={`${spare.device} ${spare.ratingA}`}>{spareFuseWords(spare, said)}</li>
          ))}
          {spareThings.map((thing) => (
            <li key={thing}>{said.water.things[thing]}</li>
          ))}
        </ul>
      </section>
    </>
  );
}

/** Hours left from what the voltmeter shows and what is on. */
function HoursLeft() {
  const words = useWordsOfProof().proof;
  const figures = useFigures();
  const [name, setName] = useState<string>();
  const [volts, setVolts] = useState("");
  const [current, setCurrent] = useState("");
  const [use, setUse] = useState("");
  const batteries = figures?.plan.batteries ?? [];
  const battery = batteries.find((one) => one.name === name) ?? batteries[0];
  if (!figures || !battery) return null;
  const voltageV = numberOf(volts, "voltage");
  const currentA = current.trim() === "" ? 0 : numberOf(current, "current");
  const useA = use.trim() === "" ? currentA : numberOf(use, "current");
  const answer =
    voltageV === undefined || currentA === undefined || useA === undefined
      ? undefined
      : batteryLeft(figures.plan, battery, { voltageV, currentA, useA });
  return (
    <section>
      <h3>{words.howLong}</h3>
      <div className="water-left">
        {batteries.length > 1 && (
          <label className="field">
            <span>{words.battery}</span>
            <select value={battery.name} onChange={(event) => setName(event.target.value)}>
              {batteries.map((one) => (
                <option key={one.name}>{one.name}</option>
              ))}
            </select>
          </label>
        )}
        <label className="field">
          <span>{words.voltmeter}</span>
          <input value={volts} placeholder="12.4 V" onChange={(event) => setVolts(event.target.value)} />
        </label>
        <label className="field">
          <span>{words.whatWasOn}</span>
          <input value={current} placeholder="0 A" onChange={(event) => setCurrent(event.target.value)} />
        </label>
        <label className="field">
          <span>{words.fromNowOn}</span>
          <input value={use} placeholder="2 A" onChange={(event) => setUse(event.target.value)} />
        </label>
        <output>{answer === undefined ? words.typeVolts : leftWords(words, answer)}</output>
      </div>
    </section>
  );
}

function leftWords({ beyond, left }: ScreenWords["proof"], answer: BatteryLeft): string {
  if (answer.beyond) return beyond[answer.beyond];
  return left(
    percent(answer.charge, 0),
    `${percent(answer.chargeLow, 0)} – ${percent(answer.chargeHigh, 0)}`,
    Number.isFinite(answer.hoursToReserve)
      ? `${roughHours(answer.hoursToReserve)} (${roughHours(answer.hoursLow)} – ${roughHours(answer.hoursHigh)})`
      : undefined,
  );
}

/** A figure as typed, its unit left out or not; undefined where it can't be read or is below zero. */
function numberOf(text: string, kind: "voltage" | "current"): number | undefined {
  const plain = text.trim().replace(",", ".");
  const read = readQuantity(
    /[a-z]/i.test(plain) ? plain : `${plain} ${kind === "voltage" ? "V" : "A"}`,
    kind,
  );
  return read.ok && read.value.value >= 0 ? read.value.value : undefined;
}
