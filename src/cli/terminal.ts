import type { Level } from "../core/findings/finding.js";

/** What the output goes to: its width, and whether it shows colour. */
export interface Terminal {
  readonly width: number;
  readonly colour: boolean;
}

const usualWidth = 100;

/** Colour only on a terminal, and never where NO_COLOR is set; width from the terminal, else 100. */
export function terminal(): Terminal {
  const isTerminal = process.stdout.isTTY === true;
  const width = isTerminal ? (process.stdout.columns ?? usualWidth) : usualWidth;
  return { width: Math.max(40, Math.min(width, 140)), colour: isTerminal && !process.env.NO_COLOR };
}

const codes: Readonly<Record<Level | "strong" | "quiet", string>> = {
  stop: "\u001b[1;31m",
  mend: "\u001b[33m",
  mind: "\u001b[36m",
  unchecked: "\u001b[35m",
  strong: "\u001b[1m",
  quiet: "\u001b[2m",
};

export function paint(text: string, how: Level | "strong" | "quiet", { colour }: Terminal): string {
  return colour ? `${codes[how]}${text}\u001b[0m` : text;
}

/** Control characters of a plan's own text never reach the terminal. */
export function harmless(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, " ");
}

const ownColours = new RegExp(
  `(${[...new Set([...Object.values(codes), "\u001b[0m"])].map((code) => code.replace("[", "\\[")).join("|")})`,
  "g",
);

/** As `harmless`, for a line that may hold colours of ours, and line ends. */
export function harmlessPainted(line: string): string {
  return line
    .split(ownColours)
    .map((part, at) => (at % 2 === 1 ? part : part.split("\n").map(harmless).join("\n")))
    .join("");
}

/** A line that may hold colours of ours, broken at its spaces where it is too long; what goes over is set in two further than it began. */
export function broken(line: string, width: number): string[] {
  const shown = (text: string) => text.replace(ownColours, "").length;
  if (shown(line) <= width) return [line];
  const indent = " ".repeat((line.match(/^ */)?.[0].length ?? 0) + 2);
  const lines: string[] = [];
  let now = "";
  for (const word of line.split(/(?<=\S)(?= )/)) {
    if (now !== "" && shown(now) + shown(word) > width) {
      lines.push(now);
      now = indent + word.trimStart();
    } else now += word;
  }
  return [...lines, now];
}

/** Breaks a text at spaces to a width; lines after the first are set in by `indent`, or as the first is where that is more. */
export function wrap(text: string, width: number, indent = 0): string[] {
  const plain = harmless(text);
  const lead = (/^ +(?=\S)/.exec(plain)?.[0] ?? "").length;
  if (lead > 0)
    return wrap(plain.slice(lead), width - lead, Math.max(0, indent - lead)).map(
      (line) => " ".repeat(lead) + line,
    );
  const lines: string[] = [];
  let line = "";
  for (const word of plain.split(/ +/)) {
    const room = width - (lines.length > 0 ? indent : 0);
    if (line !== "" && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.map((each, index) => (index === 0 ? each : " ".repeat(indent) + each));
}
