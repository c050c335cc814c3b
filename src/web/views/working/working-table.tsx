import type { Saying, WorkingTable as Table } from "../../../core/working/working.js";
import { pathWords } from "../../../words/path-words.js";
import { useShows } from "../../app/context.js";
import { useSlip } from "../../app/slip-state.js";
import { saidText, valueWords } from "../../parts/given-words.js";
import { useWordsOfWorking } from "../../words/working.js";

/** Rows that make up a figure, each leading to its own working where it has one. */
export function WorkingTable({ table, says }: { table: Table; says: Saying }) {
  const words = useWordsOfWorking().working;
  const shows = useShows();
  const { showWorking } = useSlip();
  // conditions of a device and parts of a branch are called by words of ours, all else by names of the plan
  const ours = says === "rating" || says === "branch drop";
  const nameOf = (name: string) => (ours ? saidText(name, words) : pathWords(name, words.path));
  return (
    <div className="wide">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.part}</th>
            {table.columns.map(({ term }) => (
              <th scope="col" className="number" key={term}>
                {words.terms[term]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(({ name, figure, cells }, index) => (
            // parts of a branch may have one name twice: two joints alike
            <tr key={`${name} ${table.rows.slice(0, index).filter((row) => row.name === name).length}`}>
              <th scope="row">
                {figure ? (
                  <button type="button" className="figure" onClick={() => showWorking(figure)}>
                    <bdi>{nameOf(name)}</bdi>
                  </button>
                ) : (
                  <bdi>{nameOf(name)}</bdi>
                )}
              </th>
              {table.columns.map(({ term, unit }, column) => (
                <td className="number" key={term}>
                  {cells[column] === undefined
                    ? ""
                    : valueWords(
                        term === "state" ? saidText(cells[column], words) : cells[column],
                        unit,
                        shows,
                      )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
