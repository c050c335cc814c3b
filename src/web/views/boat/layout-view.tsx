import { BoatView } from "./boat-view.js";

/** The boat at this stage of the job. */
export function View() {
  return <BoatView stage="layout" />;
}
