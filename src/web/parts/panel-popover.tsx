import type { ReactNode, RefObject } from "react";
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
      <Dialog aria-label={props.label}>{props.children}</Dialog>
    </Popover>
  );
}
