import { useCallback, useEffect, useState } from "react";

interface Said {
  readonly text: string;
  readonly times: number;
}

/** So long it stands to be read out [ms]: what stays would be read out again whenever a panel over the page closes. */
const standsMs = 5000;

/** Something for a screen reader to say once it is quiet; the same words again are said again. */
export function useReadOut(): readonly [Said, (text: string) => void] {
  const [said, setSaid] = useState<Said>({ text: "", times: 0 });
  const say = useCallback((text: string) => setSaid(({ times }) => ({ text, times: times + 1 })), []);
  useEffect(() => {
    if (said.text === "") return;
    const timer = setTimeout(() => setSaid(({ times }) => ({ text: "", times })), standsMs);
    return () => clearTimeout(timer);
  }, [said]);
  return [said, say];
}

export function ReadOut({ said: { text, times } }: { said: Said }) {
  return (
    <div className="away" role="status">
      <span key={times}>{text}</span>
    </div>
  );
}
