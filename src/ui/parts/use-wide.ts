import { useEffect, useState } from "preact/hooks";

/** By how much letters are larger than the drawings were made for: somebody set the browser so. */
export const letterScale = (): number =>
  Math.max(1, Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 17);

/** Whether the window is at least so wide, in rem. */
export function useWide(rem: number): boolean {
  const [query] = useState(() => matchMedia(`(min-width: ${rem}rem)`));
  const [wide, setWide] = useState(query.matches);
  useEffect(() => {
    const follow = () => setWide(query.matches);
    query.addEventListener("change", follow);
    return () => query.removeEventListener("change", follow);
  }, [query]);
  return wide;
}
