import { Icon } from "../../parts/icon.js";
import { useWordsOfLists } from "../../words/lists.js";
import type { GridLine, GridSource } from "./grid-source.js";
import type { Grid } from "./use-grid.js";

/** Headings of a list. A tap sorts by a column, another turns the order round, a third gives the plan's again. */
export function GridHead<L extends GridLine>({ list, grid }: { list: GridSource<L>; grid: Grid<L> }) {
  const words = useWordsOfLists();
  const { order } = list;
  const rows = list.views.filter(({ row }) => row !== undefined);
  const all = rows.length > 0 && rows.every(({ key }) => grid.picked.has(key));
  return (
    <thead>
      <tr aria-rowindex={1}>
        <th scope="col" className="list-pick" aria-colindex={1}>
          <label>
            <input
              type="checkbox"
              tabIndex={-1}
              aria-label={words.lists.pickAll}
              checked={all}
              onChange={(event) => grid.pickAll(event.target.checked)}
            />
          </label>
        </th>
        {list.columns.map((column, number) => {
          const title = list.titleOf(column);
          const direction = order?.by?.column === column.key ? order.by.direction : undefined;
          const next = () => {
            if (direction === "descending") order?.sort(undefined, "ascending");
            else order?.sort(column, direction === "ascending" ? "descending" : "ascending");
          };
          return (
            <th
              key={column.key}
              scope="col"
              aria-colindex={number + 2}
              aria-sort={order && (direction ?? "none")}
              data-as={column.takes.as}
            >
              {order ? (
                <button type="button" className="list-sort" tabIndex={-1} onClick={next}>
                  {title}
                  {direction && <Icon name={direction === "ascending" ? "up" : "down"} />}
                </button>
              ) : (
                <bdi className="list-title">{title}</bdi>
              )}
            </th>
          );
        })}
      </tr>
    </thead>
  );
}
