import { spotNear } from "../../../../core/hull/faces/near.js";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { lengthWords } from "../../../../words/numbers.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { Drag } from "../drag.js";
import type { Hand } from "../hand.js";
import { measuresOf } from "../model/measures.js";
import { alongAndOff, onFace } from "../model/on-face.js";
import type { BoatScene } from "../model/scene.js";
import { snapWords } from "../sheet/place-words.js";
import { useInHand } from "../use-drag.js";
import { useStillWater } from "../use-still-water.js";

/** Where a thing is while it is dragged: what a tape would show. */
export function MeasuresLine({ hand, ...around }: { scene: BoatScene; hand: Hand; shows: Shows }) {
  const drag = useInHand(hand);
  return drag && <Measured drag={drag} {...around} />;
}

function Measured({ scene, drag, shows }: { scene: BoatScene; drag: Drag; shows: Shows }) {
  const words = useWordsOfBoat().boat;
  const { lead, at, moves, snaps } = drag;
  const water = useStillWater();
  const measured = measuresOf(scene, lead.name, at, moves, water);
  const middleM = (scene.drawn.form.fromM + scene.drawn.form.toM) / 2;
  const length = (lengthM: number) => lengthWords(lengthM, shows);
  const seat = lead.face && onFace(scene.hull, lead.name);
  const onIt = seat && alongAndOff(seat.side.face, seat.placed.edge, spotNear(seat.side.face, at).spot);
  const rows: readonly (readonly [string, string])[] = [
    ...(onIt
      ? ([
          [words.along, length(onIt.alongM)],
          [words.off, length(onIt.offM)],
        ] as const)
      : []),
    [words.dragged.forward, length(measured.forwardM)],
    [words.dragged.off, offWords(measured.toPortM)],
    [words.dragged.up, length(measured.upM)],
    [words.dragged.overBottom, length(measured.overBottomM)],
    [words.dragged.underSheer, length(measured.underSheerM)],
    ...(measured.overWaterM === undefined
      ? []
      : [[words.dragged.overWater, length(measured.overWaterM)] as const]),
    ...(measured.nearest
      ? [[words.dragged.nearest(measured.nearest.name), length(measured.nearest.distanceM)] as const]
      : []),
  ];
  function offWords(toPortM: number): string {
    if (Math.abs(toPortM) < 0.0005) return words.centreline;
    return toPortM > 0 ? words.port(length(toPortM)) : words.starboard(length(-toPortM));
  }
  return (
    <div className="boat-measures" data-dragging={lead.name} data-aft={at[0] < middleM || undefined}>
      <p className="boat-measures-name">
        <bdi>{lead.name}</bdi>
        {snaps.length > 0 && ` – ${snaps.map((snap) => snapWords(snap, words)).join(", ")}`}
      </p>
      <dl>
        {rows.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
