import { useCallback, useEffect, useRef, useState } from "react";
import type { FileList, FileWanted } from "../../../packet/files/make-file.js";
import { usePlan, usePreferences, useShows } from "../../app/context.js";
import { Press } from "../../print/press.js";
import { download, fileNameOf } from "../../state/files.js";

export type Making =
  | { readonly is: "idle" }
  | { readonly is: "making"; readonly what: string }
  | { readonly is: "made"; readonly file: string }
  | { readonly is: "failed"; readonly detail: string };

/** What there is to print of the plan as it stands, and how to have it made. */
export function usePress(): {
  readonly list: FileList | undefined;
  readonly making: Making;
  readonly make: (wanted: FileWanted, what: string) => void;
} {
  const text = usePlan((state) => state.text);
  const name = usePlan(({ record }) => record.name);
  const shows = useShows();
  const [{ language }] = usePreferences();
  const press = useRef<Press>(undefined);
  const [list, setList] = useState<FileList>();
  const [making, setMaking] = useState<Making>({ is: "idle" });
  const ask = useCallback((question: Parameters<Press["ask"]>[0]) => {
    press.current ??= new Press();
    return press.current.ask(question);
  }, []);
  useEffect(
    () => () => {
      press.current?.close();
      press.current = undefined;
    },
    [],
  );
  const { lengths, conductors, paper } = shows;
  useEffect(() => {
    let wanted = true;
    const load = async () => {
      const outcome = await ask({
        text,
        shows: { lengths, conductors, paper },
        paper,
        language,
        wanted: { file: "list" },
      });
      if (!wanted) return;
      setList(outcome.is === "list" ? outcome.list : undefined);
      if (outcome.is === "fault") setMaking({ is: "failed", detail: outcome.detail });
    };
    void load();
    return () => {
      wanted = false;
    };
  }, [ask, text, lengths, conductors, paper, language]);
  const make = async (wanted: FileWanted, what: string) => {
    setMaking({ is: "making", what });
    const outcome = await ask({ text, shows, paper, language, wanted });
    if (outcome.is === "file") {
      const { ending, type, content } = outcome.made;
      const [stem = "", extension = ""] = ending.split(/\.(?=[^.]*$)/);
      const file = `${fileNameOf(`${name}${stem}`)}.${extension}`;
      download(new Blob([content as BlobPart], { type }), file);
      setMaking({ is: "made", file });
    } else setMaking({ is: "failed", detail: outcome.is === "fault" ? outcome.detail : "" });
  };
  return { list, making, make: (wanted, what) => void make(wanted, what) };
}
