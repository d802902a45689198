import { FlexScreen } from "./flex-screen.tsx";
import { MeasureScreen } from "./measure-screen.tsx";
import type { Held } from "./use-page.ts";

/** The screens that measure, in a file that is fetched when one of them is opened. */
export const MeasuringScreens = ({ held }: { readonly held: Held }) =>
  held.page.view.screen === "flex" ? <FlexScreen held={held} /> : <MeasureScreen held={held} />;
