import { csvOf } from "#core/report/csv.ts";
import type { Sheet } from "#core/report/session-sheet.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { saveText } from "./save-text.ts";
import { Paper } from "./sheet-paper.tsx";
import { rowsOf } from "./sheet-rows.ts";
import { type SheetSayer, sayerOf } from "./sheet-words.ts";
import type { Session } from "./use-session.ts";
import { useSheet } from "./use-sheet.ts";

/** The session as it is handed over: as it will print, and as a file for a spreadsheet. */
export function SheetScreen({ held }: { readonly held: Session }) {
  const { page, enter } = held;
  const words = useWords();
  const sheet = useSheet(page.log);
  const sayer = sheet && sayerOf(sheet, words);
  return (
    <div class="sheet-screen">
      <div class="over-sheet">
        <Heading>{words.sheet.title}</Heading>
        <p class="sub">{words.sheet.lead}</p>
        {sheet && sayer ? (
          <TakeIt sheet={sheet} sayer={sayer} />
        ) : (
          <p role="status">{words.sheet.making}</p>
        )}
      </div>
      {sheet && sayer && (
        <Paper
          sheet={sheet}
          sayer={sayer}
          noGear={page.seed !== undefined}
          onTitle={(title) => enter({ entry: "titled", ...title })}
        />
      )}
    </div>
  );
}

/** On paper, or as a file. */
function TakeIt({ sheet, sayer }: { readonly sheet: Sheet; readonly sayer: SheetSayer }) {
  const { sheet: words } = sayer.words;
  const save = () => {
    const day = new Date(sheet.ended).toISOString().slice(0, 10);
    saveText(`${words.file}-${day}.csv`, "text/csv;charset=utf-8", csvOf(rowsOf(sheet, sayer)));
  };
  return (
    <div class="foot">
      <button type="button" class="main" onClick={() => window.print()}>
        {words.print}
      </button>
      <button type="button" class="say" onClick={save}>
        {words.csv}
      </button>
    </div>
  );
}
