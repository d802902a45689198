/** What stands on sockets, plugs and contacts. The catalogue calls them in English. */
export const marks = {
  socket: (name: string): string => name,
  plug: (name: string): string => name,
  contact: (name: string): string => name,
  /** Several, as they are said in a row. */
  and: (names: readonly string[]): string => names.join(" and "),
};
