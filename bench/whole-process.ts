import { spawn, spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";

/**
 * Processor time of one whole process, all its threads, from start to exit [ms], its output thrown away: unlike the wall clock it can be
 * compared on a machine that does other things beside. Asked of the shell, which has waited for it.
 */
export function processorMs(command: string, args: readonly string[]): number {
  const script = '"$@" > /dev/null 2>&1 || exit 1; times';
  const { status, stdout } = spawnSync("bash", ["-c", script, "bash", command, ...args], {
    encoding: "utf8",
  });
  const [user, system] = stdout.trim().split("\n").at(-1)?.split(" ") ?? [];
  const tookMs = clockMs(user) + clockMs(system);
  if (status !== 0 || Number.isNaN(tookMs)) throw new Error(`${command} failed: exit ${status}`);
  return tookMs;
}

/** `1m2.345s` in milliseconds. */
function clockMs(text = ""): number {
  const [, minutes, seconds] = /^(\d+)m([\d.]+)s$/.exec(text) ?? [];
  return minutes === undefined ? Number.NaN : 60_000 * Number(minutes) + 1000 * Number(seconds);
}

/** Clock ticks of `/proc` in a second. */
const ticksPerS = 100;

/**
 * One run with its highest resident memory [MB], as the kernel counts it: the process's own high-water mark, looked at every
 * millisecond until it ends; and its processor time to the last look, to a hundredth of a second. The looking costs little, but is kept out
 * of the timed runs of short processes.
 */
export function watchedRun(
  command: string,
  args: readonly string[],
): Promise<{ peakMb: number; tookMs: number }> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { stdio: "ignore" });
    let peakKb = 0;
    let ticks = 0;
    let ended = false;
    child.on("error", reject);
    child.on("exit", (status, signal) => {
      ended = true;
      if (status === 0) resolve({ peakMb: peakKb / 1024, tookMs: (1000 * ticks) / ticksPerS });
      else reject(new Error(`${command} failed: ${signal ?? `exit ${status}`}`));
    });
    const look = (): void => {
      if (ended) return;
      try {
        const kb = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, "latin1"))?.[1];
        peakKb = Math.max(peakKb, Number(kb ?? 0));
        const stat = readFileSync(`/proc/${child.pid}/stat`, "latin1");
        // behind the name in brackets: state, then ten numbers, then user and system time
        const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
        ticks = Math.max(ticks, Number(fields[11]) + Number(fields[12]));
      } catch {
        return; // it is gone; `exit` follows
      }
      setTimeout(look, 1);
    };
    look();
  });
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}
