/** The day of a moment where the page is, as file names have it: '2026-11-21'. Milliseconds since 1970. */
export function localDay(at: number): string {
  const date = new Date(at);
  return [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part, which) => String(part).padStart(which === 0 ? 4 : 2, "0"))
    .join("-");
}
