import { lazy, type ReactNode, Suspense, useRef, useState } from "react";
import { Icon, type IconName } from "./icon.js";

const PanelPopover = lazy(() => import("./panel-popover.js"));

/** A button with a sign that opens a small panel over the page. */
export function PanelButton(props: {
  icon: IconName;
  label: string;
  children: (close: () => void) => ReactNode;
}) {
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const close = () => setOpen(false);
  return (
    <>
      <button
        ref={button}
        type="button"
        className="icon-button"
        aria-label={props.label}
        aria-haspopup="dialog"
        aria-expanded={open}
        onClick={() => setOpen(true)}
      >
        <Icon name={props.icon} />
      </button>
      {open && (
        <Suspense fallback={null}>
          <PanelPopover trigger={button} label={props.label} close={close}>
            {props.children(close)}
          </PanelPopover>
        </Suspense>
      )}
    </>
  );
}
