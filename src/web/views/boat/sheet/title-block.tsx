import { memo } from "react";
import type { Paper } from "../model/paper.js";
import { unspoken } from "./path.js";

/** Whose drawing it is, in the lower right corner of the sheet; its words keep their size on screen. */
export const TitleBlock = memo(function TitleBlock(props: {
  paper: Paper;
  name: string;
  lines: readonly string[];
}) {
  const { paper, name, lines } = props;
  if (!paper.beside) return null;
  const top = -8 - lines.length * lineHeight;
  return (
    <g
      className="title-block"
      transform={`translate(${paper.widthMm - paper.gapMm / 2} ${paper.heightMm - paper.gapMm / 2})`}
      {...unspoken}
    >
      <g className="still">
        <path d={`M${-width} ${top - 24}H0M${-width} ${top + 6}H0`} />
        <text className="title-name" x={0} y={top - 4} textAnchor="end">
          {shortened(name)}
        </text>
        {lines.map((line, at) => (
          <text key={line} x={0} y={top + 22 + at * lineHeight} textAnchor="end">
            {line}
          </text>
        ))}
      </g>
    </g>
  );
});

const lineHeight = 17;
const width = 172;
const mostLetters = 28;
const shortened = (name: string) => (name.length > mostLetters ? `${name.slice(0, mostLetters - 1)}…` : name);
