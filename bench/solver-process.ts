/**
 * The whole of what a process does for one network, to be timed against another simulator doing the same: read the network
 * named on the command line (a structured clone, `node:v8`), solve it, print the voltage of every node.
 */
import { readFileSync, writeSync } from "node:fs";
import { deserialize } from "node:v8";
import { solveNetwork } from "../src/core/circuit/solve/solve.js";

const [, , file = ""] = process.argv;
const { nodeV } = solveNetwork(deserialize(readFileSync(file)));
const lines: string[] = [];
nodeV.forEach((v, node) => {
  lines.push(`n${node} ${v}\n`);
});
const bytes = Buffer.from(lines.join(""));
for (let sent = 0; sent < bytes.length; ) sent += writeSync(1, bytes, sent);
