import { useWordsOfBoat } from "../../../words/boat.js";
import type { DrawnForm } from "../model/drawn-form.js";

/** Says plainly where the hull on the sheet is an outline, and what was assumed for it. */
export function FormNote({ outline }: { outline: NonNullable<DrawnForm["outline"]> }) {
  const words = useWordsOfBoat().boat;
  const { shape, assumed, broken } = outline;
  const names = assumed.map((measure) => words.measures[measure]);
  const last = names.at(-1);
  const listed = names.length > 1 ? `${names.slice(0, -1).join(", ")} ${words.and} ${last}` : last;
  return (
    <p className="boat-note" data-outline={shape}>
      <b>{words.outline}.</b> {broken ? words.brokenWhy : words.outlineWhy(shape)}{" "}
      {listed !== undefined && words.outlineAssumed(listed)}
    </p>
  );
}
