import { type GearRole, gearRoles } from "../../../core/plan/model/gear.js";
import { useWords } from "../../app/context.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { WrittenField } from "../../parts/written-field.js";
import { taken } from "./boat-questions.js";
import type { DraftGear } from "./draft.js";

interface GearProps {
  readonly gear: readonly DraftGear[];
  readonly onChange: (gear: readonly DraftGear[]) => void;
}

/** What is on board: usual pieces to tick, and any other. */
export function GearQuestions({ gear, onChange }: GearProps) {
  const words = useWords().asking;
  const change = (id: number, part: Partial<DraftGear>) =>
    onChange(gear.map((piece) => (piece.id === id ? { ...piece, ...part } : piece)));
  const add = () => {
    const cable = gear[0]?.cable ?? "2 m";
    const fresh = {
      id: gear.length,
      taken: true,
      name: "",
      role: "lighting",
      draws: "1 W",
      count: "1",
      cable,
    } as const;
    onChange([...gear, fresh]);
  };
  return (
    <section className="questions gear-questions">
      <h2>{words.gear}</h2>
      <p className="hint">{words.gearLead}</p>
      <ul>
        {gear.map((piece) => (
          <GearRow key={piece.id} piece={piece} change={(part) => change(piece.id, part)} />
        ))}
      </ul>
      <button type="button" onClick={add}>
        {words.add}
      </button>
    </section>
  );
}

function GearRow({ piece, change }: { piece: DraftGear; change: (part: Partial<DraftGear>) => void }) {
  const words = useWords().asking;
  return (
    <li className="gear-row" data-taken={piece.taken}>
      <label className="tick">
        <input
          type="checkbox"
          checked={piece.taken}
          aria-label={words.take(piece.name)}
          onChange={({ target }) => change({ taken: target.checked })}
        />
        <bdi>{piece.name}</bdi>
      </label>
      {piece.taken && (
        <div className="gear-fields">
          <WrittenField
            label={words.gearName}
            value={piece.name}
            onTake={taken((name) => change({ name }))}
          />
          <RoleField role={piece.role} onChoose={(role) => change({ role })} />
          <QuantityField
            label={words.draws}
            kind="draw"
            value={piece.draws}
            onTake={taken((draws) => change({ draws }))}
          />
          <WrittenField
            label={words.count}
            value={piece.count}
            check={(text) => (/^[1-9]\d{0,3}$/.test(text) ? undefined : { sentence: words.wholeNumber })}
            onTake={taken((count) => change({ count }))}
          />
          <QuantityField
            label={words.cable}
            kind="length"
            value={piece.cable}
            onTake={taken((cable) => change({ cable }))}
          />
        </div>
      )}
    </li>
  );
}

function RoleField({ role, onChoose }: { role: GearRole; onChoose: (role: GearRole) => void }) {
  const words = useWords().asking;
  return (
    <label className="field">
      <span>{words.role}</span>
      <select
        value={role}
        onChange={({ target }) => onChoose(gearRoles.find((each) => each === target.value) ?? role)}
      >
        {gearRoles.map((each) => (
          <option key={each} value={each}>
            {words.roles[each]}
          </option>
        ))}
      </select>
    </label>
  );
}
