/** What the page says to the copy: that it stands, or that it wants the newest version from now on. */
export type Said = "here" | "take";

/** What the copy tells the page: all files are put away, and whether among them are those of a newer version; or that it was taken. */
export type Told = { readonly newer: boolean } | { readonly taken: true };
