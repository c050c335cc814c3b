import { useEffect, useState } from "react";
import { useWords } from "./context.js";

/** Whether the browser has agreed to keep what is kept in it. Nothing where it does not say. */
export function StorageAnswer() {
  const { keeping } = useWords();
  const [persisted, setPersisted] = useState<boolean>();
  useEffect(() => {
    let wanted = true;
    navigator.storage?.persisted?.().then(
      (answer) => wanted && setPersisted(answer),
      // one that keeps nothing says nothing either
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, []);
  if (persisted === undefined) return null;
  return (
    <span className="storage-answer" data-persisted={persisted}>
      {persisted ? keeping.persisted : keeping.notPersisted}
    </span>
  );
}
