import { Component, type ReactNode } from "react";
import { faultDetail } from "../fault.js";
import { useWords } from "./context.js";

interface GuardProps {
  /** Done before the view is tried again. */
  readonly again?: () => void;
  readonly children: ReactNode;
}

/** A fault of the program in one view leaves the rest of the page standing. */
export class FaultGuard extends Component<GuardProps, { readonly fault: string | undefined }> {
  override state = { fault: undefined };

  static getDerivedStateFromError(error: unknown): { fault: string } {
    return { fault: faultDetail(error) };
  }

  override render() {
    const { fault } = this.state;
    if (fault === undefined) return this.props.children;
    const again = () => {
      this.props.again?.();
      this.setState({ fault: undefined });
    };
    return <Fault detail={fault} again={again} />;
  }
}

function Fault({ detail, again }: { detail: string; again: () => void }) {
  const words = useWords().shell;
  return (
    <div className="page-note" role="alert">
      <p>{words.viewFailed}</p>
      <button type="button" onClick={again}>
        {words.tryAgain}
      </button>
      <details>
        <summary>{words.copyFault}</summary>
        <pre>{detail}</pre>
      </details>
    </div>
  );
}
