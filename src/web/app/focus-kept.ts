import { useEffect } from "react";

const reached = "a[href], button, input, select, textarea, summary, [tabindex]";

/** A panel that closes gives the focus back by itself: it comes first [ms]. */
const settleMs = 60;

/**
 * Keeps the focus where a person works with keys. What is focused may go (a view is left, a line removed) or be switched off (nothing
 * left to undo): the focus then comes to what is nearest to it, and never falls back to the top of the page.
 */
export function useFocusKept(): void {
  useEffect(() => {
    /** What has the focus, and all around it from the inside out. */
    let held: readonly Element[] = [];
    let timer: ReturnType<typeof setTimeout> | undefined;
    const remember = ({ target }: FocusEvent) => {
      held = target instanceof Element ? [target, ...around(target)] : [];
    };
    const look = () => {
      timer = undefined;
      const [last] = held;
      if (last === undefined) return;
      const { activeElement } = document;
      if (activeElement !== null && activeElement !== document.body && activeElement !== last) return;
      if (last.isConnected && !last.matches(":disabled")) return;
      const near = held.find(
        (each) => each !== last && each.isConnected && !isFrame(each) && each.clientHeight > 0,
      );
      const main = document.querySelector<HTMLElement>("main");
      // a view on its way: when it is there it is looked at again
      if (near === undefined && main === null) return;
      const to = last.isConnected ? (beside(last, near) ?? near) : near;
      receive(to instanceof HTMLElement ? (to === near ? (headingOf(to) ?? to) : to) : main);
    };
    const watcher = new MutationObserver(() => {
      timer ??= setTimeout(look, settleMs);
    });
    watcher.observe(document.body, {
      childList: true,
      subtree: true,
      attributes: true,
      attributeFilter: ["disabled"],
    });
    document.addEventListener("focusin", remember);
    return () => {
      watcher.disconnect();
      clearTimeout(timer);
      document.removeEventListener("focusin", remember);
    };
  }, []);
}

function around(element: Element): Element[] {
  const parent = element.parentElement;
  return parent === null ? [] : [parent, ...around(parent)];
}

/** Of the page itself, and of no part of it. */
const isFrame = (element: Element) => element.matches("html, body, #page, .desk, .start");

/** Another thing one can use in the same group. */
function beside(last: Element, group: Element | undefined): Element | undefined {
  return [...(group?.querySelectorAll(reached) ?? [])].find(
    (each) => each !== last && !each.matches(":disabled, [tabindex='-1']"),
  );
}

/** Of a whole group a screen reader would read all that is in it: its heading says where one is. */
function headingOf(group: HTMLElement): HTMLElement | undefined {
  if (group.matches(reached)) return undefined;
  return [...group.querySelectorAll<HTMLElement>("h2, h3, h4")].find((each) => !each.matches(".away"));
}

function receive(element: HTMLElement | null): void {
  if (element === null) return;
  if (!element.matches(reached)) element.tabIndex = -1;
  element.focus({ preventScroll: true });
}
