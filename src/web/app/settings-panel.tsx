import { ChoiceRow } from "../parts/choice-row.js";
import { languages, lights, textSizes } from "../state/preferences.js";
import { useWordsOfSettings } from "../words/settings.js";
import { usePreferences } from "./context.js";

const languageNames = { en: "English", es: "Español" } as const;

/** Light, lengths, paper, text size, language: the person's, not the plan's. */
export function SettingsPanel() {
  const words = useWordsOfSettings().settings;
  const [preferences, set] = usePreferences();
  return (
    <div className="settings">
      <h2>{words.title}</h2>
      <ChoiceRow
        label={words.light}
        options={lights.map((light) => [light, words[light]])}
        chosen={preferences.light}
        onChoose={(light) => set({ light })}
      />
      <ChoiceRow
        label={words.textSize}
        options={textSizes.map((size) => [size, words.sizes[size]])}
        chosen={preferences.textSize}
        onChoose={(textSize) => set({ textSize })}
      />
      <ChoiceRow
        label={words.lengths}
        options={[
          ["as plan", words.asPlan],
          ["inches", words.inches],
          ["millimetres", words.millimetres],
        ]}
        chosen={preferences.lengths}
        onChoose={(lengths) => set({ lengths })}
      />
      <ChoiceRow
        label={words.paper}
        options={[
          ["as plan", words.asPlan],
          ["letter", words.letter],
          ["a4", words.a4],
        ]}
        chosen={preferences.paper}
        onChoose={(paper) => set({ paper })}
      />
      <ChoiceRow
        label={words.language}
        options={languages.map((language) => [language, languageNames[language]])}
        chosen={preferences.language}
        onChoose={(language) => set({ language })}
      />
      <p className="hint">{words.forYou}</p>
    </div>
  );
}
