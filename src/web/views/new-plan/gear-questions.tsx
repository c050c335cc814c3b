import { type GearRole, gearRoles } from "../../../core/plan/model/gear.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfAsking } from "../../words/asking.js";
import { BatteryFields } from "./battery-questions.js";
import { type QuestionProps, taken } from "./boat-questions.js";
import { blankGear, type DraftGear } from "./draft.js";

/** What is on board: usual pieces to tick, and any other. */
export function GearQuestions({ draft, change }: QuestionProps) {
  const words = useWordsOfAsking().asking;
  const { gear } = draft;
  const changePiece = (id: number, part: Partial<DraftGear>) =>
    change({ gear: gear.map((piece) => (piece.id === id ? { ...piece, ...part } : piece)) });
  return (
    <section className="questions gear-questions">
      <h2>{words.gear}</h2>
      <p className="hint">{words.gearLead}</p>
      <ul>
        {gear.map((piece) => (
          <GearRow key={piece.id} piece={piece} change={(part) => changePiece(piece.id, part)} />
        ))}
      </ul>
      <button type="button" onClick={() => change({ gear: [...gear, blankGear(draft)] })}>
        {words.add}
      </button>
    </section>
  );
}

function GearRow({ piece, change }: { piece: DraftGear; change: (part: Partial<DraftGear>) => void }) {
  const words = useWordsOfAsking().asking;
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
        <div className="gear-fields" {...groupOf(piece.name)}>
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
          {(piece.role === "propulsion" || piece.fed !== "panel") && (
            <FedField fed={piece.fed} onChoose={(fed) => change({ fed })} />
          )}
          <QuantityField
            label={piece.fed === "panel" ? words.cable : words.straightCable}
            kind="length"
            value={piece.cable}
            onTake={taken((cable) => change({ cable }))}
          />
        </div>
      )}
      {piece.taken && piece.fed === "own" && (
        <div className="gear-battery">
          <h3>{words.ownBattery(piece.name)}</h3>
          <BatteryFields battery={piece.own} change={(part) => change({ own: { ...piece.own, ...part } })} />
        </div>
      )}
    </li>
  );
}

/** Fields that ask alike of each piece: a screen reader says of which. */
const groupOf = (name: string) => ({ role: "group", "aria-label": name }) as const;

const feeds = ["panel", "battery", "own"] as const satisfies readonly DraftGear["fed"][];

function FedField({ fed, onChoose }: { fed: DraftGear["fed"]; onChoose: (fed: DraftGear["fed"]) => void }) {
  const words = useWordsOfAsking().asking;
  return (
    <label className="field" data-wide>
      <span>{words.fed}</span>
      <select
        value={fed}
        onChange={({ target }) => onChoose(feeds.find((each) => each === target.value) ?? fed)}
      >
        {feeds.map((each) => (
          <option key={each} value={each}>
            {words.feeds[each]}
          </option>
        ))}
      </select>
    </label>
  );
}

function RoleField({ role, onChoose }: { role: GearRole; onChoose: (role: GearRole) => void }) {
  const words = useWordsOfAsking().asking;
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
