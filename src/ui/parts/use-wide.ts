import { useEffect, useState } from "preact/hooks";

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
