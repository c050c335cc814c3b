import { Icon } from "../../parts/icon.js";
import { useWordsOfLists } from "../../words/lists.js";
import { columnTitle } from "./column-title.js";
import type { Grid } from "./use-grid.js";
import type { List } from "./use-list.js";

/** Headings of a list. A tap sorts by a column, another turns the order round, a third gives the plan's again. */
export function GridHead({ list, grid }: { list: List; grid: Grid }) {
  const words = useWordsOfLists();
  const { sorted } = list;
  const all = list.rows.length > 0 && list.rows.every(({ key }) => grid.picked.has(key));
  return (
    <thead>
      <tr aria-rowindex={1}>
        <th scope="col" className="list-pick" aria-colindex={1}>
          <input
            type="checkbox"
            tabIndex={-1}
            aria-label={words.lists.pickAll}
            checked={all}
            onChange={(event) => grid.pickAll(event.target.checked)}
          />
        </th>
        {list.spec.columns.map((column, number) => {
          const title = columnTitle(column.key, words);
          const direction = sorted?.column === column.key ? sorted.direction : undefined;
          const next = () => {
            if (direction === "descending") list.sort(undefined, "ascending");
            else list.sort(column, direction === "ascending" ? "descending" : "ascending");
          };
          return (
            <th
              key={column.key}
              scope="col"
              aria-colindex={number + 2}
              aria-sort={direction ?? "none"}
              data-as={column.takes.as}
            >
              <button type="button" className="list-sort" tabIndex={-1} onClick={next}>
                {title}
                {direction && <Icon name={direction === "ascending" ? "up" : "down"} />}
              </button>
            </th>
          );
        })}
      </tr>
    </thead>
  );
}
