import { useWordsOfTerms } from "../../words/terms.js";

/** All terms of the trade that the page uses, in plain words. */
export function View() {
  const { terms } = useWordsOfTerms();
  const all = Object.values(terms.of).toSorted((a, b) => a.name.localeCompare(b.name));
  return (
    <div className="stack terms">
      <h2>{terms.title}</h2>
      <p className="hint">{terms.lead}</p>
      <dl>
        {all.map(({ name, means }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{means}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
