import { useId, useState } from "react";
import type { FileList, FileWanted } from "../../../packet/files/make-file.js";
import { planTables } from "../../../packet/files/table-names.js";
import { type ShortScope, shortScopes } from "../../../packet/short-scopes.js";
import { usePlan, usePreferences, useShows } from "../../app/context.js";
import { ReadProblems } from "../../app/read-problems.js";
import { ownersMinutes } from "../../garage/use-foreman.js";
import { cornerName } from "../../parts/corner-name.js";
import { Icon } from "../../parts/icon.js";
import { download, fileNameOf } from "../../state/files.js";
import { useWordsOfPrint } from "../../words/print.js";
import { type Making, usePress } from "./use-press.js";

type Make = (wanted: FileWanted, what: string) => void;

/** Pages for the garage and files for other tools, made in this browser. */
export function View() {
  const words = useWordsOfPrint();
  const sound = usePlan(({ reading }) => reading.ok);
  return (
    <div className="print stack">
      <h2 className="away">{words.views.names.print}</h2>
      {sound ? <Everything /> : <ReadProblems />}
    </div>
  );
}

function Everything() {
  const words = useWordsOfPrint().print;
  const { list, making, make } = usePress();
  return (
    <>
      <section className="print-packet">
        <h3>{words.packet}</h3>
        <p>{words.packetHint}</p>
        <PaperChoice />
        <Get what={words.getPacket} wanted={{ file: "packet" }} make={make} making={making} main />
        <Outcome making={making} />
        <p className="hint">{words.english}</p>
      </section>
      {list && list.stepsLeft > 0 && (
        <section className="print-short">
          <h3>{words.short}</h3>
          <p className="hint">{words.shortHint}</p>
          <div className="row">
            {shortScopes.map((scope) => (
              <GetShort key={scope} scope={scope} make={make} making={making} />
            ))}
          </div>
        </section>
      )}
      {list ? <Rest list={list} make={make} making={making} /> : <p className="loading">{words.listing}</p>}
    </>
  );
}

function Rest({ list, make, making }: { list: FileList; make: Make; making: Making }) {
  const words = useWordsOfPrint().print;
  return (
    <>
      <section>
        <h3>{words.sheets}</h3>
        <p className="hint">{words.sheetHint}</p>
        <ul className="print-list">
          {list.sheets.map(({ title, pages }) => (
            <Sheet key={title} title={title} pages={pages} make={make} making={making} />
          ))}
        </ul>
      </section>
      <section>
        <h3>{words.tables}</h3>
        <div className="row">
          {planTables.map((table) => (
            <Get
              key={table}
              what={words.tableOf(words.tableNames[table])}
              wanted={{ file: "table", table }}
              make={make}
              making={making}
            />
          ))}
        </div>
      </section>
      {list.templates.length > 0 && (
        <section>
          <h3>{words.templates}</h3>
          <p className="hint">{words.templateHint}</p>
          <ul className="print-list">
            {list.templates.map((template) => (
              <Template key={`${template.box} ${template.face}`} of={template} make={make} making={making} />
            ))}
          </ul>
        </section>
      )}
      <Circuit corners={list.corners} make={make} making={making} />
      <PlanFile />
    </>
  );
}

function Sheet({ title, pages, make, making }: { title: string; pages: number; make: Make; making: Making }) {
  const words = useWordsOfPrint().print;
  const [chosen, setPage] = useState(1);
  const page = Math.min(chosen, pages);
  return (
    <li>
      <span>
        <bdi>{title}</bdi> <span className="hint">{words.pages(pages)}</span>
      </span>
      <span className="row">
        <Get
          what={words.sheetPdf(title)}
          short="PDF"
          wanted={{ file: "sheet", title }}
          make={make}
          making={making}
        />
        {pages > 1 && (
          <select
            aria-label={words.pageOf(title)}
            value={page}
            onChange={(event) => setPage(Number(event.target.value))}
          >
            {Array.from({ length: pages }, (_, index) => (
              <option key={words.pageNumber(index + 1)} value={index + 1}>
                {words.pageNumber(index + 1)}
              </option>
            ))}
          </select>
        )}
        <Get
          what={words.pageSvg(title, page, pages)}
          short="SVG"
          wanted={{ file: "page", title, page }}
          make={make}
          making={making}
        />
      </span>
    </li>
  );
}

function Template(props: { of: FileList["templates"][number]; make: Make; making: Making }) {
  const words = useWordsOfPrint();
  const { box, face } = props.of;
  const what = `${box}, ${words.boxes.faces[face]}`;
  const { make, making } = props;
  return (
    <li>
      <bdi>{what}</bdi>
      <span className="row">
        {(["dxf", "svg"] as const).map((form) => (
          <Get
            key={form}
            what={words.print.templateOf(what, form.toUpperCase())}
            short={form.toUpperCase()}
            wanted={{ file: "template", box, face, form }}
            make={make}
            making={making}
          />
        ))}
      </span>
    </li>
  );
}

function Circuit({ corners, make, making }: { corners: readonly string[]; make: Make; making: Making }) {
  const words = useWordsOfPrint();
  const id = useId();
  const [corner, setCorner] = useState("worst drop");
  const chosen = corners.includes(corner) ? corner : corners[0];
  if (chosen === undefined) return null;
  return (
    <section>
      <h3>{words.print.circuit}</h3>
      <p className="hint">{words.print.circuitHint}</p>
      <div className="row">
        <label htmlFor={id} className="print-label">
          {words.print.corner}
        </label>
        <select id={id} value={chosen} onChange={(event) => setCorner(event.target.value)}>
          {corners.map((name) => (
            <option key={name} value={name}>
              {cornerName(name, words)}
            </option>
          ))}
        </select>
        <Get
          what={words.print.getCircuit}
          wanted={{ file: "circuit", corner: chosen }}
          make={make}
          making={making}
        />
      </div>
    </section>
  );
}

function PlanFile() {
  const words = useWordsOfPrint().print;
  const text = usePlan((state) => state.text);
  const name = usePlan(({ record }) => record.name);
  return (
    <section>
      <h3>{words.planFile}</h3>
      <p className="hint">{words.planHint}</p>
      <button
        type="button"
        onClick={() => download(new Blob([text], { type: "application/yaml" }), `${fileNameOf(name)}.yaml`)}
      >
        <Icon name="save" /> {words.getPlan}
      </button>
    </section>
  );
}

/** A short packet is for the hours that come next: it is asked for with the time at which one asks. */
function GetShort({ scope, make, making }: { scope: ShortScope; make: Make; making: Making }) {
  const what = useWordsOfPrint().print.shortFor[scope];
  const wanted = () => ({ file: "short", scope, nowMin: ownersMinutes() }) as const;
  return <Get what={what} wanted={wanted} make={make} making={making} />;
}

function Get(props: {
  what: string;
  short?: string;
  wanted: FileWanted | (() => FileWanted);
  make: Make;
  making: Making;
  main?: boolean;
}) {
  const { what, short, wanted, make, making } = props;
  return (
    <button
      type="button"
      className={props.main === true ? "main get" : "get"}
      aria-label={short === undefined ? undefined : what}
      aria-busy={making.is === "making" && making.what === what}
      onClick={() => making.is !== "making" && make(typeof wanted === "function" ? wanted() : wanted, what)}
    >
      <Icon name="save" /> {short ?? what}
    </button>
  );
}

function Outcome({ making }: { making: Making }) {
  const words = useWordsOfPrint().print;
  return (
    <p role="status" className={making.is === "failed" ? "problem" : "print-outcome"}>
      {making.is === "making" && words.making}
      {making.is === "made" && words.made(making.file)}
      {making.is === "failed" && `${words.failed} ${making.detail.split("\n")[0] ?? ""}`}
    </p>
  );
}

function PaperChoice() {
  const words = useWordsOfPrint();
  const { paper } = useShows();
  const [, set] = usePreferences();
  return (
    <fieldset className="choice">
      <legend>{words.print.paper}</legend>
      <div className="choice-row">
        {(["letter", "a4"] as const).map((each) => (
          <label key={each}>
            <input type="radio" name="paper" checked={each === paper} onChange={() => set({ paper: each })} />
            {words.settings[each]}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
