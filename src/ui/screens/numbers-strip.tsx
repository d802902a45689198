import type { Choice } from "#core/diagnosis/choice.ts";
import { askedWords } from "#core/report/asked-words.ts";
import { doText } from "#core/report/do-text.ts";
import { type Ears, type Numbers, numbersAt } from "#core/report/numbers.ts";
import { capital } from "#core/report/phrases.ts";
import type { Derived } from "#core/session/derive.ts";
import { MatrixPicture } from "#ui/parts/matrix-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { type Figures, figuresIn } from "./figures.ts";
import { faultSaid, type SheetSayer } from "./sheet-words.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly derived: Derived;
  readonly position: string;
}

/** What is said of the numbers, with the rig as it was drawn. */
interface Shown {
  readonly sayer: SheetSayer;
  readonly derived: Derived;
  readonly numbers: Numbers;
}

/** The numbers behind a position, in small type: for those who want them. */
export function NumbersStrip({ held, derived, position }: Props) {
  const words = useWords();
  const figures = figuresIn(held.page.settings.tongue);
  const sayer = { words, figures, rig: derived.model.rig };
  const shown = { sayer, derived, numbers: numbersAt(derived, position) };
  return (
    <section class="numbers" aria-label={words.numbers.title}>
      <Believed {...shown} />
      <AtEars {...shown} />
      <Told {...shown} />
    </section>
  );
}

const hundredth = ({ number }: Figures, share: number): string => `${number(share * 100, 1)} %`;

/** Every suspect with how likely it is. */
function Believed({ sayer, numbers: { trouble, suspects, others } }: Shown) {
  const { words, figures } = sayer;
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

interface RowProps {
  readonly name: string;
  readonly figures: readonly string[];
}

const Row = ({ name, figures }: RowProps) => (
  <tr>
    <th scope="row">{name}</th>
    {figures.map((text, at) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: columns have their places
      <td key={at}>{text}</td>
    ))}
  </tr>
);

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

function OneMatrix({ sayer: { words, figures }, ears, name }: MatrixProps) {
  const { numbers } = words;
  const [ll, lr, rl, rr] = ears.map((one) => gainSaid(numbers.nothing, figures, one));
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

/** A level with its sign, and its phase where it is neither upright nor upside down. */
function gainSaid(
  nothing: string,
  { decibels, number }: Figures,
  { level, degrees }: Ears[0],
): string {
  if (level < silent) return nothing;
  const sign = Math.abs(degrees) > 90 ? "−" : "+";
  const aside = Math.min(Math.abs(degrees), 180 - Math.abs(degrees));
  return `${sign} ${decibels(level)}${aside < 1 ? "" : `, ${number(degrees, 0)}°`}`;
}

/** What each check would tell for its seconds; and where something is wrong what each step would take in all. */
function Told({
  sayer: { words, figures },
  derived: { model },
  numbers: { options, choice },
}: Shown) {
  const { numbers } = words;
  const steps = choice?.best
    ? [choice.best, ...choice.others.filter((one) => one !== choice.best)]
    : [];
  const stepSaid = ({ doing }: Choice) =>
    capital(doing.do === "ask" ? askedWords(model, doing.asked) : doText(model, doing.move));
  return (
    <div>
      <table>
        <caption>{numbers.checks}</caption>
        <thead>
          <tr>
            <th scope="col">{numbers.check}</th>
            <th scope="col">{numbers.bits}</th>
            <th scope="col">{numbers.seconds}</th>
            <th scope="col">{numbers.perMinute}</th>
          </tr>
        </thead>
        <tbody>
          {options.map(({ asked, bits, seconds }) => (
            <Row
              key={JSON.stringify(asked)}
              name={askedWords(model, asked)}
              figures={[
                figures.number(bits, 3),
                figures.number(seconds, 0),
                figures.number((60 * bits) / seconds, 2),
              ]}
            />
          ))}
        </tbody>
      </table>
      {steps.length > 0 && (
        <table>
          <caption>{numbers.steps}</caption>
          <tbody>
            {steps.map((one) => (
              <Row
                key={JSON.stringify(one.doing)}
                name={stepSaid(one)}
                figures={[figures.number(one.seconds, 0)]}
              />
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}
