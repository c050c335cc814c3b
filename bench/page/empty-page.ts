// A page of the same framework with nothing on it but a thing to drag and one figure that follows: what a drag costs at the least.
import { createElement as make, useEffect, useState } from "react";
import { createRoot } from "react-dom/client";

function Empty() {
  const [at, setAt] = useState<readonly [number, number]>([300, 300]);
  useEffect(() => {
    let down = false;
    const start = () => {
      down = true;
    };
    const end = () => {
      down = false;
    };
    const move = (event: PointerEvent) => {
      if (down) setAt([event.clientX, event.clientY]);
    };
    addEventListener("pointerdown", start);
    addEventListener("pointerup", end);
    addEventListener("pointermove", move);
    return () => {
      removeEventListener("pointerdown", start);
      removeEventListener("pointerup", end);
      removeEventListener("pointermove", move);
    };
  }, []);
  return make(
    "svg",
    { width: 1200, height: 700 },
    make("circle", { cx: at[0], cy: at[1], r: 12, "data-thing": "thing", "data-view": "plan" }),
    make("text", { x: 20, y: 40, className: "figure-that-follows" }, `${at[0]} mm, ${at[1]} mm`),
  );
}

const place = document.getElementById("page");
if (place) createRoot(place).render(make(Empty));
