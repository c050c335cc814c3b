import { type ReactNode, type RefObject, useLayoutEffect, useRef } from "react";
import { Dialog, Popover } from "react-aria-components";

/** What a panel button opens. Apart, since the component library is large and not needed until then. */
export default function PanelPopover(props: {
  trigger: RefObject<HTMLElement | null>;
  label: string;
  close: () => void;
  children: ReactNode;
}) {
  return (
    <Popover
      isOpen
      className="panel"
      placement="bottom end"
      triggerRef={props.trigger}
      onOpenChange={(open) => !open && props.close()}
    >
      <Dialog aria-label={props.label}>
        <Content>{props.children}</Content>
      </Dialog>
    </Popover>
  );
}

/** The focus comes to the first thing one can use: on the panel itself a screen reader would read all of it as one sentence. */
function Content({ children }: { children: ReactNode }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    box.current
      ?.querySelector<HTMLElement>("a[href], button, input:checked, input:not([type=radio])")
      ?.focus();
  }, []);
  return <div ref={box}>{children}</div>;
}
