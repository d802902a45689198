import { SheetScreen } from "./sheet-screen.tsx";
import type { Session } from "./use-session.ts";

/** What is read rather than answered, in a file that is fetched when it is opened. */
export const PaperScreens = ({ held }: { readonly held: Session }) => <SheetScreen held={held} />;
