import {
  closeSync,
  existsSync,
  fchmodSync,
  fchownSync,
  fsyncSync,
  lstatSync,
  openSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { nearestOf } from "../core/quantity/nearest.js";
import type { TerminalWords } from "../words/terminal/english.js";
import { codeOf, InputProblem, reason } from "./problem.js";

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
    if (stat.isDirectory()) throw new InputProblem(({ common }) => common.files.folderNotPlan(path));
    if (stat.size > mostBytes) throw new InputProblem(({ common }) => common.files.tooLarge(path, stat.size));
    return readFileSync(path);
  } catch (error) {
    if (error instanceof InputProblem) throw error;
    throw new InputProblem((say) =>
      say.common.files.unread(path, codeOf(error) === "ENOENT" ? thereIsNo(path, say) : reason(error, say)),
    );
  }
}

/** A file that is not there, and the plan beside it that was probably meant. */
function thereIsNo(path: string, { common: { files } }: TerminalWords): string {
  const folder = dirname(resolve(path));
  if (!existsSync(folder)) return files.noFolder(dirname(path));
  const name = basename(path);
  const others = readdirSync(folder).filter((one) => /\.(ya?ml|json)$/i.test(one));
  const meant = nearestOf(name, others) ?? nearestOf(`${name}.yaml`, others);
  return `${files.noFile}${meant === undefined ? "" : files.meant(join(dirname(path), meant))}`;
}

/**
 * Writes a file whole or not at all: beside it first, then moved into place. A link stays, and what it leads to is written; mode and
 * owner of a file that is there stay. A device or a pipe takes the content as it comes.
 * @param over `true` writes over a file that is there; bytes do so only while it still holds them.
 * @throws InputProblem if a file is there and must not be written over, or the disk refuses.
 */
export function writeWhole(path: string, content: string | Uint8Array, over: boolean | Uint8Array): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isDirectory()) throw new InputProblem(({ common }) => common.files.folder(path));
  if (there?.isFile() && over === false) throw new InputProblem(({ common }) => common.files.there(path));
  try {
    if (there && !there.isFile()) writeFileSync(path, content);
    else {
      const target = targetOf(path);
      moveIntoPlace(target, content, there, () => typeof over === "boolean" || same(target, over));
    }
  } catch (error) {
    if (error instanceof InputProblem) throw error;
    throw new InputProblem((say) => say.common.files.unwritten(path, reason(error, say)));
  }
}

/** The file itself, where the path is a link. */
function targetOf(path: string): string {
  const target = resolve(path);
  if (!lstatSync(target, { throwIfNoEntry: false })?.isSymbolicLink()) return target;
  try {
    return realpathSync(target);
  } catch {
    // a link whose file is not there yet
    return resolve(dirname(target), readlinkSync(target));
  }
}

function moveIntoPlace(
  target: string,
  content: string | Uint8Array,
  there: Stats | undefined,
  unchanged: () => boolean,
): void {
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  try {
    const file = openSync(beside, "wx");
    try {
      const bytes = typeof content === "string" ? Buffer.from(content, "utf8") : content;
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
      if (there) keepRights(file, there);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    if (!unchanged()) throw new InputProblem(({ common }) => common.files.changed(target));
    renameSync(beside, target);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

function keepRights(file: number, { mode, uid, gid }: Stats): void {
  try {
    fchownSync(file, uid, gid);
  } catch {
    // only the system's administrator may give files away
  }
  fchmodSync(file, mode & 0o7777);
}

const same = (path: string, was: Uint8Array) => Buffer.compare(readFileSync(path), was) === 0;
