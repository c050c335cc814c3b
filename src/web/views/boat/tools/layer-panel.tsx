import { decimals, percent } from "../../../../words/numbers.js";
import { useOfFigures } from "../../../app/context.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import { type FigureLayer, layerSteps, runLayers, strengths } from "../model/layers.js";
import type { BoatScene } from "../model/scene.js";
import { cornerIn } from "../run-figures.js";
import type { LayerChoice } from "../use-layers.js";
import { useStillWater } from "../use-still-water.js";

/** What the runs are drawn by, the key to it, and what else is shown. */
export function LayerPanel(props: {
  choice: LayerChoice;
  scene: BoatScene;
  /** Runs are drawn at this stage. */
  ofRuns: boolean;
}) {
  const words = useWordsOfBoat().boat;
  const { choice, scene, ofRuns } = props;
  const { layer, setLayer, shown, toggle, setCorner } = choice;
  const { corners, corner, collapsed } = useCorners(choice.corner);
  const electric = ofRuns && (layer === "drop" || layer === "current" || layer === "heat");
  const water = useStillWater();
  return (
    <div className="boat-layers">
      {ofRuns && (
        <fieldset className="choice">
          <legend>{words.layers}</legend>
          <div className="choice-row">
            {runLayers.map((one) => (
              <label key={one}>
                <input
                  type="radio"
                  name="boat-layer"
                  checked={one === layer}
                  onChange={() => setLayer(one)}
                />
                {words.layerNames[one]}
              </label>
            ))}
          </div>
        </fieldset>
      )}
      <div className="choice-row">
        {(["water", "zones", "names"] as const).map((what) => (
          <label key={what}>
            <input type="checkbox" checked={shown[what]} onChange={() => toggle(what)} />
            {words[what]}
          </label>
        ))}
      </div>
      {electric && corners.length > 0 && (
        <label className="boat-corner">
          {words.corner}
          <select value={corner} onChange={(event) => setCorner(event.target.value)}>
            {corners.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </label>
      )}
      {ofRuns && <p className="hint">{words.layerMeans[layer]}</p>}
      {electric && collapsed && <p className="hint">{words.notSolved}</p>}
      {ofRuns && layer !== "colours" && <Key layer={layer} />}
      {shown.water && typeof water === "string" && (
        <p className="hint">
          {water === "no rest" ? words.noRest : scene.hull.form?.form ? words.noWeights : words.noWater}
        </p>
      )}
    </div>
  );
}

/** The corners there are, the one chosen, and whether it was solved: the same until one of these is another. */
function useCorners(name: string) {
  return useOfFigures((figures) => {
    const corner = figures && cornerIn(figures, name);
    return {
      corners: (figures?.corners ?? []).map((each) => each.name),
      corner: corner?.name ?? "",
      collapsed: corner?.status === "collapsed",
    };
  });
}

/** Each strength with its line, as it is on the sheet. */
function Key({ layer }: { layer: FigureLayer }) {
  const words = useWordsOfBoat().boat;
  const [low, middle, high] = layerSteps[layer].map((step) => stepWords(layer, step));
  if (low === undefined || middle === undefined || high === undefined) return null;
  const says = [words.atMost(low), words.fromTo(low, middle), words.fromTo(middle, high), words.over(high)];
  return (
    <ul className="boat-key">
      {strengths.map((strength) => (
        <li key={strength}>
          <Sample style={`strength-${strength}`} />
          {says[strength]}
        </li>
      ))}
      <li>
        <Sample style="strength-none" />
        {words.noRunFigure}
      </li>
    </ul>
  );
}

function Sample({ style }: { style: string }) {
  return (
    <svg className="boat-sample" viewBox="0 0 48 12" aria-hidden="true" focusable="false">
      <path className={`run-line ${style}`} d="M1 6H47" />
    </svg>
  );
}

function stepWords(layer: FigureLayer, step: number): string {
  const tie = "\u00a0";
  switch (layer) {
    case "drop":
      return percent(step, 0);
    case "current":
      return `${decimals(step, 0)}${tie}A`;
    case "heat":
      return `${step}${tie}W/m`;
    case "bundle":
      return decimals(step, 0);
    default:
      return layer satisfies never;
  }
}
