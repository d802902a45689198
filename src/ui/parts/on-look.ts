/** Calls back whenever the page looks otherwise: its theme changed, or the system's contrast. What it gives ends that. */
export function onLook(changed: () => void): () => void {
  const root = new MutationObserver(changed);
  root.observe(document.documentElement, { attributeFilter: ["data-theme"] });
  const systems = ["(prefers-contrast: more)", "(forced-colors: active)"].map((one) =>
    matchMedia(one),
  );
  for (const system of systems) system.addEventListener("change", changed);
  return () => {
    root.disconnect();
    for (const system of systems) system.removeEventListener("change", changed);
  };
}
