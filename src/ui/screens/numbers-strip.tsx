import { type Ears, numbersAt } from "#core/report/numbers.ts";
import type { Derived } from "#core/session/derive.ts";
import { MatrixPicture } from "#ui/parts/matrix-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Told } from "./numbers-checks.tsx";
import { Row, type Shown } from "./numbers-row.tsx";
import { faultSaid, type SheetSayer } from "./sheet-words.ts";

interface Props {
  readonly derived: Derived;
  readonly position: string;
}

/** The numbers behind a position, in small type: for those who want them. */
export function NumbersStrip({ derived, position }: Props) {
  const words = useWords();
  const sayer = { words, rig: derived.model.rig };
  const shown = { sayer, derived, numbers: numbersAt(derived, position) };
  return (
    <section class="numbers" aria-label={words.numbers.title}>
      <Believed {...shown} />
      <AtEars {...shown} />
      <Told {...shown} />
    </section>
  );
}

const hundredth = ({ fixed }: Words["figures"], share: number): string =>
  share < 0.0005 ? `< ${fixed(0.1, 1)} %` : `${fixed(share * 100, 1)} %`;

/** Every suspect with how likely it is. */
function Believed({ sayer, numbers: { trouble, suspects, others } }: Shown) {
  const { words } = sayer;
  const { figures } = words;
  const rows = suspects.flatMap(({ group: { faults }, probability }) => {
    const [fault] = faults;
    const alike = faults.length > 1 ? `, ${words.numbers.more(faults.length - 1)}` : "";
    return fault ? [{ id: fault.id, said: `${faultSaid(sayer, fault)}${alike}`, probability }] : [];
  });
  return (
    <table>
      <caption>{words.numbers.beliefs}</caption>
      <tbody>
        <Row name={words.numbers.trouble} figures={[hundredth(figures, trouble)]} />
        {rows.map(({ id, said, probability }) => (
          <Row key={id} name={said} figures={[hundredth(figures, probability)]} />
        ))}
        {others.count > 0 && (
          <Row
            name={words.numbers.others(others.count, hundredth(figures, others.most))}
            figures={[""]}
          />
        )}
      </tbody>
    </table>
  );
}

/** The four ways to two ears, sound and under the leading suspect. */
function AtEars({ sayer, numbers: { sound, suspected } }: Shown) {
  const { numbers } = sayer.words;
  return (
    <div>
      <p class="numbers-of">{numbers.ears}</p>
      <div class="both-ears">
        <OneMatrix sayer={sayer} ears={sound} name={numbers.sound} />
        {suspected && (
          <OneMatrix
            sayer={sayer}
            ears={suspected.ears}
            name={numbers.under(faultSaid(sayer, suspected.fault))}
          />
        )}
      </div>
    </div>
  );
}

interface MatrixProps {
  readonly sayer: SheetSayer;
  readonly ears: Ears;
  readonly name: string;
}

function OneMatrix({ sayer: { words }, ears, name }: MatrixProps) {
  const { numbers } = words;
  const [ll, lr, rl, rr] = ears.map((one) => gainSaid(numbers.nothing, words.figures, one));
  return (
    <div class="one-matrix">
      <MatrixPicture ears={ears} />
      <table>
        <caption>{name}</caption>
        <thead>
          <tr>
            <th scope="col">{numbers.ear}</th>
            <th scope="col">{numbers.ofLeft}</th>
            <th scope="col">{numbers.ofRight}</th>
          </tr>
        </thead>
        <tbody>
          <Row name={numbers.left} figures={[ll ?? "", lr ?? ""]} />
          <Row name={numbers.right} figures={[rl ?? "", rr ?? ""]} />
        </tbody>
      </table>
    </div>
  );
}

/** Under this there is nothing. */
const silent = -90;

/** A level and how far it is turned: at 180° it comes upside down. */
function gainSaid(
  nothing: string,
  { decibels, fixed }: Words["figures"],
  { level, degrees }: Ears[0],
): string {
  return level < silent ? nothing : `${decibels(level)}, ${fixed(Math.abs(degrees), 0)}°`;
}
