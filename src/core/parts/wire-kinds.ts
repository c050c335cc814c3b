import type { CablePiece, RunCable } from "../circuit/conductor/run-cable.js";
import type { ConductorSize, Endpoint } from "../plan/model/common.js";
import type { RunRoute } from "../route/plan-routes.js";
import type { LabelledPiece } from "./cuts/labels.js";

/** Wire that can be cut from one another: one size, as many cores, and of single conductors one colour. */
export interface WireKind {
  /** `16 AWG, 2 cores`; `8 AWG, red`. */
  readonly kind: string;
  readonly size: ConductorSize;
  readonly cores: number;
  readonly colour?: string;
  readonly pieces: readonly LabelledPiece[];
}

/**
 * All pieces to cut, by kind. Pairs in a sheath are bought in whatever colours they come and marked at their ends; single
 * conductors are bought by colour.
 */
export function wireKinds(cables: readonly RunCable[], routes: readonly RunRoute[]): WireKind[] {
  const kinds = new Map<string, Omit<WireKind, "pieces"> & { readonly pieces: LabelledPiece[] }>();
  for (const [index, { run, pieces }] of cables.entries()) {
    for (const piece of pieces) {
      const lengthMm = routes[index]?.cutMm.get(piece.id);
      if (lengthMm === undefined || !(lengthMm > 0)) continue;
      const colour = piece.sheathed ? undefined : piece.colours[0];
      const kind = nameOf(piece, colour);
      const known = kinds.get(kind) ?? {
        kind,
        size: piece.size,
        cores: piece.cores,
        ...(colour === undefined ? {} : { colour }),
        pieces: [],
      };
      known.pieces.push({
        piece: piece.id,
        run: run.name,
        from: spelt(run.from),
        to: spelt(run.to),
        kind,
        colours: piece.colours,
        lengthMm,
      });
      kinds.set(kind, known);
    }
  }
  return [...kinds.values()];
}

function nameOf({ size, cores, sheathed }: CablePiece, colour: string | undefined): string {
  if (sheathed) return `${size.key}, ${cores} ${cores === 1 ? "core in a sheath" : "cores"}`;
  return colour === undefined ? `${size.key}, single` : `${size.key}, ${colour}`;
}

const spelt = ({ place, port }: Endpoint): string => (port === undefined ? place : `${place} / ${port}`);
