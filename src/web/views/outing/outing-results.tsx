import type { OutingFigures } from "../../../core/energy/types.js";
import type { Figures } from "../../../core/figures-types.js";
import type { Outing } from "../../../core/plan/model/outing.js";
import { decimals, hours, percent, volts } from "../../../words/numbers.js";
import { Figure } from "../../parts/figure.js";
import { LevelMark } from "../../parts/level-mark.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { momentWords } from "./times.js";

/** What the outing comes to, battery by battery, and what gets too little and when; the curves in words and figures. */
export function OutingResults(props: { figures: Figures; followed: OutingFigures; outing: Outing }) {
  const { followed, outing } = props;
  const words = useWordsOfOuting().outing;
  return (
    <div className="outing-results">
      <section>
        <h3>{words.figures}</h3>
        <div className="wide">
          <table>
            <thead>
              <tr>
                <th scope="col">{words.battery}</th>
                <th scope="col" className="number">
                  {words.toReserve}
                </th>
                <th scope="col" className="number">
                  {words.left}
                </th>
                <th scope="col" className="number">
                  {words.used}
                </th>
                <th scope="col" className="number">
                  {words.lowest}
                </th>
              </tr>
            </thead>
            <tbody>
              {followed.batteries.map((trace) => {
                const of = { outing: outing.name, battery: trace.battery } as const;
                const reserve = followed.hoursToReserve.find(
                  ({ battery }) => battery === trace.battery,
                )?.hours;
                return (
                  <tr key={trace.battery}>
                    <th scope="row">
                      <bdi>{trace.battery}</bdi>
                    </th>
                    <td className="number">
                      {reserve === undefined ? (
                        hours(undefined)
                      ) : (
                        <Figure of={{ of: "hours to reserve", ...of }} label={words.toReserve}>
                          {hours(reserve)}
                        </Figure>
                      )}
                    </td>
                    <td className="number">
                      <Figure of={{ of: "charge left", ...of }} label={words.left}>
                        {percent(trace.chargeLeft, 0)}
                      </Figure>
                    </td>
                    <td className="number">
                      <Figure of={{ of: "charge used", ...of }} label={words.used}>
                        {`${decimals(trace.usedAh, 1)}\u00a0Ah`}
                      </Figure>
                    </td>
                    <td className="number">
                      {volts(Math.min(...trace.points.map(({ terminalV }) => terminalV)))}
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </div>
      </section>
      <TooLow {...props} />
      {followed.uses.length > 0 && (
        <section>
          <h3>{words.heaviest}</h3>
          <ul className="outing-uses">
            {followed.uses.slice(0, 8).map(({ gear, usedAh }) => (
              <li key={gear}>
                <ViewLink view="outing" at={gear}>
                  <bdi>{gear}</bdi>
                </ViewLink>
                <span>{`${decimals(usedAh, 2)}\u00a0Ah`}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

function TooLow({
  figures,
  followed,
  outing,
}: {
  figures: Figures;
  followed: OutingFigures;
  outing: Outing;
}) {
  const words = useWordsOfOuting().outing;
  // Numbered as the marks on the curves are: battery by battery.
  const batteryOf = (gear: string) =>
    figures.plan.circuits.get(figures.plan.circuitOf.get(gear) ?? "")?.battery ?? "";
  const among = followed.batteries.flatMap(({ battery }) =>
    followed.brownOuts
      .filter(({ gear }) => batteryOf(gear) === battery)
      .map((each, index) => ({ ...each, battery, number: index + 1 })),
  );
  return (
    <section>
      <h3>{words.brownOuts}</h3>
      {among.length === 0 ? (
        <p>{words.noBrownOut}</p>
      ) : (
        <ul className="short-findings">
          {among.map(({ gear, atH, voltageV, minV, number, battery }) => (
            <li key={gear}>
              <LevelMark level="mend" />
              <span>
                <b>
                  <bdi>{battery}</bdi> {number}.
                </b>{" "}
                <ViewLink view="outing" at={gear}>
                  {words.brownOut(gear, momentWords(atH, outing.startClockH), volts(voltageV), volts(minV))}
                </ViewLink>
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
