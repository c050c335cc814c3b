import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { InputProblem, reason } from "./problem.js";

/** Most bytes read of any file; the plan's own limit is lower and says so itself. */
const mostBytes = 64 * 1024 * 1024;

/**
 * The bytes of a file, or of standard input for `-`.
 * @throws InputProblem if it can't be read.
 */
export function readBytes(path: string): Uint8Array {
  try {
    if (path === "-") return readFileSync(0);
    const stat = statSync(path);
    if (stat.isDirectory()) throw new InputProblem([`${path} is a folder; a plan file is wanted`]);
    if (stat.size > mostBytes)
      throw new InputProblem([`${path} is ${stat.size} bytes; a plan is far smaller`]);
    return readFileSync(path);
  } catch (error) {
    if (error instanceof InputProblem) throw error;
    throw new InputProblem([`${path} can't be read: ${reason(error)}`]);
  }
}

/**
 * Writes a file whole or not at all: beside it first, then moved into place.
 * @param force Write over a file that is there.
 * @throws InputProblem if a file is there and `force` is not given, or the disk refuses.
 */
export function writeWhole(path: string, content: string | Uint8Array, force: boolean): void {
  const target = resolve(path);
  if (existsSync(target)) {
    if (statSync(target).isDirectory())
      throw new InputProblem([`${path} is a folder; a file name is wanted`]);
    if (!force) throw new InputProblem([`${path} is there already; --force writes over it`]);
  }
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  try {
    const file = openSync(beside, "wx");
    try {
      const bytes = typeof content === "string" ? Buffer.from(content, "utf8") : content;
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, target);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new InputProblem([`${path} can't be written: ${reason(error)}`]);
  }
}
