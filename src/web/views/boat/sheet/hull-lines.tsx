import { memo, useMemo } from "react";
import { lineAt, reaches } from "../../../../core/hull/form/line.js";
import { sectionAt } from "../../../../core/hull/form/section.js";
import type { Point } from "../../../../core/hull/vector.js";
import type { DrawnForm } from "../model/drawn-form.js";
import { stationWithin } from "../model/hull-at.js";
import { type Paper, project } from "../model/paper.js";
import { pathOf, unspoken } from "./path.js";

/** Straight pieces a line of the hull is drawn with. */
const pieces = 60;

/** The hull in one view: its lines, the closed end, stations, centreline or base line. */
export const HullLines = memo(function HullLines(props: {
  drawn: DrawnForm;
  paper: Paper;
  view: "profile" | "plan";
  stationsM: readonly number[];
}) {
  const { drawn, paper, view, stationsM } = props;
  const { fromM, toM } = paper.reach;
  const sides: readonly (1 | -1)[] = view === "plan" ? [1, -1] : [1];
  const base: readonly Point[] = [
    [fromM, 0, 0],
    [toM, 0, 0],
  ];
  return (
    <g className="hull" {...unspoken}>
      <path className="hull-skin" d={skinPath(drawn, view)} />
      <path className="hull-centre" d={pathOf(view, base)} />
      {stationsM.map((x) => (
        <path key={x} className="hull-station" d={stationPath(drawn, view, x)} />
      ))}
      {drawn.form.lines.map((line, i) =>
        // a keel on the centreline is the centreline, seen from above
        view === "plan" && onCentreline(line)
          ? null
          : sides.map((side) => (
              <path
                key={`${line.name} ${side}`}
                className={
                  i === drawn.form.lines.length - 1 ? "hull-line hull-sheer" : "hull-line hull-inner"
                }
                d={pathOf(view, alongLine(line, side))}
              />
            )),
      )}
      <path className="hull-line" d={endPath(drawn, view, fromM)} />
      <path className="hull-line" d={endPath(drawn, view, toM)} />
    </g>
  );
});

/** The section at a station, both sides, looking forward; behind it all stations, those abaft the middle to port, those before it to starboard. */
export const SectionLines = memo(function SectionLines(props: {
  drawn: DrawnForm;
  xM: number;
  stationsM: readonly number[];
}) {
  const { drawn, stationsM } = props;
  const x = stationWithin(drawn, props.xM);
  const half = sectionAt(drawn.form, x, 8);
  const whole = half
    .toReversed()
    .map(([y, z]): Point => [x, y, z])
    .concat(half.map(([y, z]): Point => [x, -y, z]));
  const [, top] = [half[0], half.at(-1)];
  const behind = useMemo(() => bodyPlan(drawn, stationsM), [drawn, stationsM]);
  return (
    <g className="hull" {...unspoken}>
      <path className="hull-skin" d={pathOf("section", whole, true)} />
      {behind.map((d) => (
        <path key={d} className="hull-station" d={d} />
      ))}
      <path
        className="hull-centre"
        d={pathOf("section", [
          [x, 0, (half[0]?.[1] ?? 0) - 0.03],
          [x, 0, (top?.[1] ?? 0) + 0.03],
        ])}
      />
      <path className="hull-line hull-sheer" d={pathOf("section", whole)} />
      {!drawn.open && top && (
        <path
          className="hull-line"
          d={pathOf("section", [
            [x, top[0], top[1]],
            [x, -top[0], top[1]],
          ])}
        />
      )}
      {drawn.form.lines.map((line) => {
        if (!reaches(line, x)) return null;
        const [, y, z] = lineAt(line, x);
        return [1, -1].map((side) => {
          const [right, down] = project("section", [x, side * y, z]);
          return <circle key={`${line.name}${side}`} className="hull-corner" cx={right} cy={down} r={6} />;
        });
      })}
    </g>
  );
});

/** Points of a line of the hull, on one side. */
function alongLine(line: DrawnForm["form"]["lines"][number], side: 1 | -1): Point[] {
  return Array.from({ length: pieces + 1 }, (_, k): Point => {
    const [x, y, z] = lineAt(line, line.fromM + ((line.toM - line.fromM) * k) / pieces);
    return [x, side * y, z];
  });
}

function onCentreline(line: DrawnForm["form"]["lines"][number]): boolean {
  return alongLine(line, 1).every(([, y]) => Math.abs(y) < 1e-6);
}

/** All that the hull covers in a view. */
function skinPath({ form }: DrawnForm, view: "profile" | "plan"): string {
  const [keel, sheer] = [form.lines[0], form.lines.at(-1)];
  if (!keel || !sheer) return "";
  const near = alongLine(sheer, 1);
  const far = view === "plan" ? alongLine(sheer, -1) : alongLine(keel, 1);
  return pathOf(view, [...near, ...far.toReversed()], true);
}

function bodyPlan(drawn: DrawnForm, stationsM: readonly number[]): string[] {
  const { form } = drawn;
  const middle = (form.fromM + form.toM) / 2;
  return stationsM.map((at) => {
    const x = stationWithin(drawn, at);
    const side = at < middle ? 1 : -1;
    return pathOf(
      "section",
      sectionAt(form, x, 8).map(([y, z]): Point => [x, side * y, z]),
    );
  });
}

function stationPath(drawn: DrawnForm, view: "profile" | "plan", x: number): string {
  const half = sectionAt(drawn.form, stationWithin(drawn, x), 6);
  const wide = Math.max(...half.map(([y]) => y));
  const [low, high] = [Math.min(...half.map(([, z]) => z)), half.at(-1)?.[1] ?? 0];
  return view === "plan"
    ? pathOf(view, [
        [x, wide, 0],
        [x, -wide, 0],
      ])
    : pathOf(view, [
        [x, 0, low],
        [x, 0, high],
      ]);
}

/** Aft and fore end of the hull: a transom, or nothing where it runs to a point. */
function endPath(drawn: DrawnForm, view: "profile" | "plan", x: number): string {
  const half = sectionAt(drawn.form, x, 6);
  const port = half.map(([y, z]): Point => [x, y, z]);
  return pathOf(
    view,
    view === "plan" ? [...port.toReversed(), ...port.map(([, y, z]): Point => [x, -y, z])] : port,
  );
}
