import { useEffect, useState } from "react";
import { usePlan } from "../../app/context.js";
import { keptPhoto } from "../../garage/photos.js";
import { useWordsOfBuild } from "../../words/build.js";

/** Photos by their file names: shown where this browser has them, named where it has not. */
export function StepPhotos({ files }: { files: readonly string[] }) {
  if (files.length === 0) return null;
  return (
    <ul className="step-photos">
      {files.map((file) => (
        <li key={file}>
          <Photo file={file} />
        </li>
      ))}
    </ul>
  );
}

function Photo({ file }: { file: string }) {
  const words = useWordsOfBuild().build;
  const plan = usePlan(({ record }) => record.id);
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let wanted = true;
    const load = async () => {
      const picture = await keptPhoto(plan, file).catch(() => undefined);
      if (!wanted || picture === undefined) return;
      made = URL.createObjectURL(picture);
      setAddress(made);
    };
    void load();
    return () => {
      wanted = false;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [plan, file]);
  return address === undefined ? (
    <bdi className="hint">{words.photoElsewhere(file)}</bdi>
  ) : (
    <img src={address} alt={words.photoOf(file)} />
  );
}
