import { useProblemWords } from "../parts/use-problem-words.js";
import { ViewLink } from "../parts/view-link.js";
import { usePlan, useWords } from "./context.js";

const mostShown = 12;

/** Why the text can't be read as a plan, with the place of each problem. */
export function ReadProblems() {
  const words = useWords().shell;
  const { language, words: say } = useProblemWords();
  const reading = usePlan((state) => state.reading);
  if (reading.ok) return null;
  return (
    <section className="read-problems" aria-label={words.problemsInPlan}>
      <h2>{words.problemsInPlan}</h2>
      <ul lang={language}>
        {reading.problems.slice(0, mostShown).map((problem) => (
          <li key={`${problem.line} ${problem.column} ${problem.code} ${problem.path.join("/")}`}>
            <bdi>{say.line(problem)}</bdi>
          </li>
        ))}
      </ul>
      <ViewLink view="text">{words.toText}</ViewLink>
    </section>
  );
}
