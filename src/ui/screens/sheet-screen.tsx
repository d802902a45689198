import { useLayoutEffect } from "preact/hooks";
import { csvOf } from "#core/report/csv.ts";
import type { Sheet } from "#core/report/session-sheet.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { localDay } from "./local-day.ts";
import { saveText } from "./save-text.ts";
import { Paper } from "./sheet-paper.tsx";
import { rowsOf } from "./sheet-rows.ts";
import { type SheetView, titled } from "./sheet-view.ts";
import { type SheetSayer, sayerOf } from "./sheet-words.ts";
import type { Session } from "./use-session.ts";
import { useSheet } from "./use-sheet.ts";

type Take = NonNullable<SheetView["take"]>;

interface Props {
  readonly held: Session;
  readonly view: SheetView;
}

/** The session as it is handed over: as it will print, and as a file for a spreadsheet. */
export function SheetScreen({ held, view: { take } }: Props) {
  const { page, change, edges } = held;
  const words = useWords();
  const { sheet, isNew } = useSheet(page.log);
  const sayer = sheet && sayerOf(sheet, words);
  const wish = (view: SheetView) =>
    change((one) => (one.view.screen === "sheet" ? { ...one, view } : one));
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each wish, and not before the sheet stands
  useLayoutEffect(() => {
    if (take === undefined || !isNew) return;
    wish({ screen: "sheet" });
    if (sheet && sayer) taken[take](sheet, sayer);
  }, [take, isNew]);
  return (
    <div class="sheet-screen">
      <div class="over-sheet">
        <Heading>{words.sheet.title}</Heading>
        <p class="sub">{words.sheet.lead}</p>
        {sheet && <TakeIt onTake={(how) => wish({ screen: "sheet", take: how })} />}
        {(!sheet || (take && !isNew)) && <p role="status">{words.sheet.making}</p>}
      </div>
      {sheet && sayer && (
        <Paper
          sheet={sheet}
          sayer={sayer}
          noGear={page.seed !== undefined}
          onTitle={(title) => change((one) => titled(one, title, edges.now()))}
        />
      )}
    </div>
  );
}

const taken: Readonly<Record<Take, (sheet: Sheet, sayer: SheetSayer) => void>> = {
  paper: () => window.print(),
  table: (sheet, sayer) => {
    const name = `${sayer.words.sheet.file}-${localDay(sheet.ended)}.csv`;
    saveText(name, "text/csv;charset=utf-8", csvOf(rowsOf(sheet, sayer)));
  },
};

/** On paper, or as a file. Not every browser takes the hand off a field where a button is pressed: that says what was typed there. */
function TakeIt({ onTake }: { readonly onTake: (how: Take) => void }) {
  const { sheet: words } = useWords();
  const take = (how: Take, button: HTMLButtonElement) => {
    button.focus();
    onTake(how);
  };
  return (
    <div class="foot">
      <button
        type="button"
        class="main"
        onClick={({ currentTarget }) => take("paper", currentTarget)}
      >
        {words.print}
      </button>
      <button
        type="button"
        class="say"
        onClick={({ currentTarget }) => take("table", currentTarget)}
      >
        {words.csv}
      </button>
    </div>
  );
}
