/** Letters of a name that somebody types, for a session, a part or a seat; what comes with a longer one keeps it. */
export const longestName = 80;
