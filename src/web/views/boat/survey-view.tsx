import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfSurvey } from "../../words/survey.js";
import { BoatView } from "./boat-view.js";
import type { BoatScene } from "./model/scene.js";
import { HerMeasures } from "./survey/her-measures.js";
import { PlacesToMark } from "./survey/places-to-mark.js";

/** The boat at this stage of the job. */
export function View() {
  return <BoatView stage="survey" beside={WhatToMeasure} />;
}

function WhatToMeasure({ scene }: { readonly scene: BoatScene }) {
  const words = useWordsOfSurvey().survey;
  return (
    <>
      <HerMeasures scene={scene}>
        <p>
          <ViewLink view="tape">{words.byStation}</ViewLink>
        </p>
      </HerMeasures>
      <PlacesToMark scene={scene} />
    </>
  );
}
