import type { RunCable } from "../core/circuit/conductor/run-cable.js";
import { type LayoutWords, layoutInEnglish } from "./layout/english.js";

/** A piece of wire as one calls it: what a label may shorten, and what it must not. */
export interface PieceName {
  /** The run; its circuit too, where the run has several conductors each way. */
  readonly head: string;
  /** `, out` or `, return` of a single conductor; empty for a cable. */
  readonly leg: string;
}

/** Names of all pieces by their ids: `battery feed / house / feed / out` is called `battery feed, out`. */
export function pieceNames(
  cables: readonly Pick<RunCable, "run" | "pieces">[],
  { leg: said }: LayoutWords = layoutInEnglish,
): Map<string, PieceName> {
  return new Map(
    cables.flatMap(({ run, pieces }) => {
      const parts = pieces.map(({ id }) => id.slice(run.name.length + 3).split(" / "));
      return pieces.map(({ id }, index): [string, PieceName] => {
        const own = parts[index] ?? [];
        const leg = own.at(-1) ?? "";
        if (leg === "") return [id, { head: run.name, leg: "" }];
        const alone = parts.filter((other) => other.at(-1) === leg).length === 1;
        const circuit = own.slice(0, -1).join(" / ");
        return [
          id,
          { head: alone || circuit === "" ? run.name : `${run.name}, ${circuit}`, leg: `, ${said(leg)}` },
        ];
      });
    }),
  );
}

/** A piece's name in full; what is no piece of wire is called by its id. */
export function pieceName(names: ReadonlyMap<string, PieceName>, id: string): string {
  const name = names.get(id);
  return name === undefined ? id : `${name.head}${name.leg}`;
}
