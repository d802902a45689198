/** What the page says to the copy: that it stands, or that it wants the newest version from now on. */
export type Said = "here" | "take";

/** What the copy tells the page: whether all files in use are put away, and those of a newer version too; or that it was taken. */
export type Told = { readonly kept: boolean; readonly newer: boolean } | { readonly taken: true };
