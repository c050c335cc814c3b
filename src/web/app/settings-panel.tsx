import { useId } from "react";
import { languages, lights, textSizes } from "../state/preferences.js";
import { usePreferences, useWords } from "./context.js";

const languageNames = { en: "English", es: "Español" } as const;

/** Light, lengths, paper, text size, language: the person's, not the plan's. */
export function SettingsPanel() {
  const words = useWords().settings;
  const [preferences, set] = usePreferences();
  return (
    <div className="settings">
      <h2>{words.title}</h2>
      <Choice
        label={words.light}
        options={lights.map((light) => [light, words[light]])}
        chosen={preferences.light}
        onChoose={(light) => set({ light })}
      />
      <Choice
        label={words.textSize}
        options={textSizes.map((size) => [size, words.sizes[size]])}
        chosen={preferences.textSize}
        onChoose={(textSize) => set({ textSize })}
      />
      <Choice
        label={words.lengths}
        options={[
          ["as plan", words.asPlan],
          ["inches", words.inches],
          ["millimetres", words.millimetres],
        ]}
        chosen={preferences.lengths}
        onChoose={(lengths) => set({ lengths })}
      />
      <Choice
        label={words.paper}
        options={[
          ["as plan", words.asPlan],
          ["letter", words.letter],
          ["a4", words.a4],
        ]}
        chosen={preferences.paper}
        onChoose={(paper) => set({ paper })}
      />
      <Choice
        label={words.language}
        options={languages.map((language) => [language, languageNames[language]])}
        chosen={preferences.language}
        onChoose={(language) => set({ language })}
      />
      <p className="hint">{words.forYou}</p>
    </div>
  );
}

function Choice<T extends string>(props: {
  label: string;
  options: readonly (readonly [T, string])[];
  chosen: T;
  onChoose: (choice: T) => void;
}) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend>{props.label}</legend>
      <div className="choice-row">
        {props.options.map(([value, label]) => (
          <label key={value}>
            <input
              type="radio"
              name={name}
              value={value}
              checked={value === props.chosen}
              onChange={() => props.onChoose(value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
