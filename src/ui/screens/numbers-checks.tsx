import type { Choice } from "#core/diagnosis/choice.ts";
import { askedWords } from "#core/report/asked-words.ts";
import { doText } from "#core/report/do-text.ts";
import { capital } from "#core/report/phrases.ts";
import { Row, type Shown } from "./numbers-row.tsx";

/** What tells less than this is not worth a line. */
const leastTold = 0.001;

/** What each check would tell for its seconds; and where something is wrong what each step would take in all. */
export function Told({
  sayer: { words, figures },
  derived: { model },
  numbers: { options, choice },
}: Shown) {
  const { numbers, language } = words;
  const steps = choice?.best
    ? [choice.best, ...choice.others.filter((one) => one !== choice.best)]
    : [];
  const telling = options.filter(({ bits }) => bits >= leastTold);
  const less = options.length - telling.length;
  const stepSaid = ({ doing }: Choice) =>
    capital(
      doing.do === "ask"
        ? askedWords(language, model, doing.asked)
        : doText(language, model, doing.move),
    );
  return (
    <div>
      <table class="checks">
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
          {telling.map(({ asked, bits, seconds }) => (
            <Row
              key={JSON.stringify(asked)}
              name={askedWords(language, model, asked)}
              figures={[
                figures.number(bits, 3),
                figures.number(seconds, 0),
                figures.number((60 * bits) / seconds, 2),
              ]}
            />
          ))}
          {less > 0 && <Row name={numbers.less(less, figures.number(leastTold, 3))} figures={[]} />}
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
