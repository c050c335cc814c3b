import { readFileSync } from "node:fs";

/** The launch with her legs measured by the places they join, so that a drag changes lengths and all that follows from them. */
export function launchWithFreeLegs(): string {
  const text = readFileSync("examples/launch.yaml", "utf8");
  const [before = "", rest = ""] = text.split(/^legs:\n/m, 2);
  const lines = rest.split("\n");
  const end = lines.findIndex((line) => /^\S/.test(line));
  const legs = lines
    .slice(0, end)
    .map((line) => line.replace(/length: [^,}]+, /, "").replace(/, length: [^,}]+(?=[,}])/, ""));
  return `${before}legs:\n${[...legs, ...lines.slice(end)].join("\n")}`;
}
