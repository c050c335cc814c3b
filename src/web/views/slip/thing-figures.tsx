import type { FigureRef } from "../../../core/working/figure-ref.js";
import { figuresOfThing } from "../../../core/working/figures-of-thing.js";
import { pathWords } from "../../../words/path-words.js";
import type { ScreenWords } from "../../../words/screen/en.js";
import { useOfFigures, useShows, useWords } from "../../app/context.js";
import { cornerName } from "../../parts/corner-name.js";
import { Figure } from "../../parts/figure.js";
import { saidText, valueWords } from "../../parts/given-words.js";

/** The figures of one thing, each leading to its working. */
export function ThingFigures({ name, kind }: { name: string; kind: string }) {
  const words = useWords();
  const shows = useShows();
  const lines = useOfFigures((figures) => figures && figuresOfThing(figures, name, kind));
  if (!lines) return <p className="hint">{words.shell.workingOut}</p>;
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{words.slip.figures}</h3>
      <dl className="given">
        {lines.map(({ figure, value, unit }) => (
          <div key={keyOf(figure)}>
            <dt>
              {words.working.names[figure.of]}
              <span className="hint"> {whereOf(figure, words)}</span>
            </dt>
            <dd>
              <Figure of={figure} label={words.working.names[figure.of]}>
                {valueWords(saidText(value, words.working), unit, shows)}
              </Figure>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

const keyOf = (figure: FigureRef) => JSON.stringify(figure);

function whereOf(figure: FigureRef, words: ScreenWords): string {
  const { path } = words.working;
  if ("corner" in figure) return cornerName(figure.corner, words);
  if ("outing" in figure) return figure.outing;
  if ("device" in figure) return pathWords(figure.device, path);
  return "choice" in figure ? pathWords(figure.choice, path) : "";
}
