import type { Level } from "../../../core/findings/finding.js";
import type { GearRole } from "../../../core/plan/model/gear.js";
import type { AtSpot } from "../../../drawing/circuit-map/at-spot.js";
import type { Spot } from "../../../drawing/circuit-map/lay-out.js";
import { startMm } from "../../../drawing/circuit-map/lines.js";
import { line, points } from "../../../drawing/make.js";
import {
  batteryMm,
  batterySymbol,
  breakerSymbol,
  converterSymbol,
  deviceMm,
  fuseSymbol,
  gearSymbol,
  switchSymbol,
} from "../../../drawing/one-line/symbols.js";
import type { Shape } from "../../../drawing/shapes.js";
import { amps, marked } from "../../../words/numbers.js";
import { useShows } from "../../app/context.js";
import { LevelMark } from "../../parts/level-mark.js";
import { ShapeView } from "../../parts/shape-view.js";
import type { Shorten } from "../../parts/use-shorten.js";
import { useWordsOfCircuits } from "../../words/circuits.js";
import { figuresLine, nameOf, runLine, runParts } from "./spot-words.js";

const nameMm = points(10.5);
export const smallMm = points(9.5);

export interface SpotProps {
  readonly spot: Spot;
  readonly at: AtSpot;
  readonly role: GearRole;
  readonly level: Level | undefined;
  readonly shorten: Shorten;
}

/** Symbol, name and figures of one thing on a wide map; the origin is where its line comes in. */
export function WideSpot({ spot, at, role, level, shorten }: SpotProps) {
  const words = useWordsOfCircuits();
  const { node, widthMm } = spot;
  const name = nameOf(node, words);
  const figures = figuresLine(at);
  switch (node.kind) {
    case "battery":
    case "panel": {
      const start = node.kind === "battery" ? startMm.battery : 5;
      const end = node.kind === "battery" ? widthMm - 3 : startMm.panel;
      const symbol = node.kind === "battery" ? [batterySymbol(0, 0)] : [];
      const from = node.kind === "battery" ? batteryMm : 0;
      return (
        <>
          <ShapeView shapes={[...symbol, line(from, 0, start, 0), ...inLine(at, start, end)]} />
          <Ratings at={at} start={start} down={-3.4} />
          <Words x={0} y={-11.8} name={shorten(name, widthMm - 4, nameMm, "semibold")} />
          <Words x={0} y={-7.6} small={figures} />
          <Sign level={level} x={widthMm - 8} y={-15.4} />
        </>
      );
    }
    case "way":
      return (
        <>
          <ShapeView shapes={inLine(at, 0, widthMm - 3)} />
          <Ratings at={at} start={0} down={5.8} />
          <Words
            x={19}
            y={-1.4}
            name={shorten(name, widthMm - (level === undefined ? 21 : 26), nameMm, "semibold")}
          />
          <Words x={19} y={5.8} small={at.currentA === undefined ? "" : amps(at.currentA)} />
          <Sign level={level} x={widthMm - 6} y={-6} />
        </>
      );
    case "box":
      return (
        <>
          <ShapeView shapes={[line(0, 0, startMm.box, 0)]} />
          <Words x={1} y={-1.6} name={shorten(name, widthMm - 7, nameMm, "semibold")} />
          <Words x={1} y={5.8} small={figures} />
          <Sign level={level} x={widthMm - 5.5} y={-6} />
        </>
      );
    case "converter":
      return (
        <>
          <ShapeView shapes={[converterSymbol(0, 0, "=", "="), line(8.4, 0, widthMm - 3, 0)]} />
          <Words x={10} y={-1.6} name={shorten(name, widthMm - 12, nameMm, "semibold")} />
          <Words x={10} y={5.8} small={figures} />
          <Sign level={level} x={widthMm - 6} y={-7} />
        </>
      );
    case "gear":
    case "charger":
    case "reference":
      return (
        <>
          <ShapeView shapes={endSymbol(spot, role)} />
          <Words x={9.5} y={-0.6} name={shorten(name, widthMm - 16, nameMm, "semibold")} />
          <Words x={9.5} y={3.8} small={figures} />
          <Sign level={level} x={widthMm - 5.5} y={-4} />
        </>
      );
    default:
      return node.kind satisfies never;
  }
}

/** The same in one line as wide as a phone: symbol, name, run, and the figures at the right. */
export function NarrowSpot({ spot, at, role, level, shorten }: SpotProps) {
  const words = useWordsOfCircuits();
  const shows = useShows();
  const { node, widthMm } = spot;
  const left = 9.5;
  const right = widthMm - 6;
  const { voltageV, currentA, dropShare, inTurn } = at;
  const name = nameOf(node, words);
  const room = right - left;
  // the drop stands with the voltage where the name leaves room for both, else in a line of its own: the length to cut is read too
  const dropAbove = shorten(name, room - 25, nameMm, "semibold") === name;
  const volts = figuresLine({ voltageV, dropShare: dropAbove ? dropShare : undefined, inTurn });
  const current = figuresLine({ currentA, inTurn });
  const drop = figuresLine({ dropShare: dropAbove ? undefined : dropShare, inTurn });
  const devices = at.devices
    .flatMap(({ ratingA }) => (ratingA === undefined ? [] : [marked(ratingA, "A")]))
    .join(" · ");
  const whole = at.run ? runLine(at.run, words, shows) : devices;
  // a length cut short would be another length: size and length stand in a line each where one is too short for both
  const [second = "", third = ""] =
    at.run && shorten(whole, room - 14, smallMm) !== whole ? runParts(at.run, words, shows) : [whole];
  const nameRoom = room - (volts === "" ? 0 : dropShare !== undefined && dropAbove ? 25 : 15);
  return (
    <>
      <ShapeView shapes={narrowSymbol(spot, at, role)} />
      <Words x={left} y={-0.8} name={shorten(name, nameRoom, nameMm, "semibold")} />
      <Words x={left} y={3.7} small={shorten(second, room - 14, smallMm)} />
      <Words x={left} y={8.2} small={third} />
      <text className="map-small" x={right} y={-0.8} fontSize={smallMm} textAnchor="end">
        {volts}
      </text>
      <text className="map-small" x={right} y={3.7} fontSize={smallMm} textAnchor="end">
        {current}
      </text>
      <text className="map-small" x={right} y={8.2} fontSize={smallMm} textAnchor="end">
        {drop}
      </text>
      <Sign level={level} x={widthMm - 5} y={-4.6} />
    </>
  );
}

function endSymbol({ node }: Spot, role: GearRole): Shape[] {
  if (node.kind === "gear") return [gearSymbol(0, 0, role)];
  if (node.kind === "charger") return [converterSymbol(0, 0, "~", "=")];
  return [line(0, 0, 6, 0), line(6, 0, 3.5, 1.4), line(6, 0, 3.5, -1.4)];
}

function narrowSymbol(spot: Spot, at: AtSpot, role: GearRole): Shape[] {
  switch (spot.node.kind) {
    case "battery":
      return [batterySymbol(0, 0)].map((one) => ({ ...one, shapes: one.shapes.slice(0, 4) }));
    case "panel":
      return [{ ...line(0.5, 0, 6.5, 0), stroke: { colour: "ink", widthMm: 1.2 } }];
    case "way":
      return inLine({ ...at, devices: at.devices.slice(0, 1) }, 0, deviceMm - 1);
    case "box":
      return [
        { kind: "circle", cx: 3.5, cy: 0, r: 1.8, fill: "paper", stroke: { colour: "ink", widthMm: 0.4 } },
      ];
    case "converter":
      return [converterSymbol(0, 0, "=", "=")];
    default:
      return endSymbol(spot, role);
  }
}

/** Fuse, breaker and switch in the order current passes them, then the line on to its end. */
function inLine({ devices }: Pick<AtSpot, "devices">, start: number, end: number): Shape[] {
  const symbols = devices.map(({ kind }, index) => {
    const x = start + index * deviceMm;
    return kind === "switch"
      ? switchSymbol(x, 0)
      : kind === "breaker"
        ? breakerSymbol(x, 0)
        : fuseSymbol(x, 0);
  });
  const from = start + devices.length * deviceMm;
  return from < end ? [...symbols, line(from, 0, end, 0)] : symbols;
}

function Ratings({ at, start, down }: { at: AtSpot; start: number; down: number }) {
  return at.devices.map(({ id, ratingA }, index) =>
    ratingA === undefined ? null : (
      <text
        key={id}
        className="map-small"
        x={start + (index + 0.5) * deviceMm}
        y={down}
        fontSize={points(9)}
        textAnchor="middle"
      >
        {marked(ratingA, "A")}
      </text>
    ),
  );
}

function Words({ x, y, name = "", small = "" }: { x: number; y: number; name?: string; small?: string }) {
  if (name !== "")
    return (
      <text className="map-name" x={x} y={y} fontSize={nameMm}>
        {name}
      </text>
    );
  return small === "" ? null : (
    <text className="map-small" x={x} y={y} fontSize={smallMm}>
      {small}
    </text>
  );
}

function Sign({ level, x, y }: { level: Level | undefined; x: number; y: number }) {
  return level === undefined ? null : (
    <g transform={`translate(${x} ${y})`}>
      <LevelMark level={level} size={4.5} />
    </g>
  );
}
