import { askedWords } from "#core/report/asked-words.ts";
import { Row, type Shown } from "./numbers-row.tsx";
import { stepWords } from "./why-next.tsx";

/** What tells less than this is not worth a line. */
const leastTold = 0.001;

/** What each check would tell for its seconds; and where something is wrong what each step would take in all. */
export function Told({
  sayer: { words },
  derived: { model },
  numbers: { options, choice },
}: Shown) {
  const { figures, numbers, language } = words;
  const steps = choice?.best
    ? [choice.best, ...choice.others.filter((one) => one !== choice.best)]
    : [];
  const telling = options.filter(({ bits }) => bits >= leastTold);
  const less = options.length - telling.length;
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
                figures.fixed(bits, 3),
                figures.fixed(seconds, 0),
                figures.fixed((60 * bits) / seconds, 2),
              ]}
            />
          ))}
          {less > 0 && <Row name={numbers.less(less, figures.fixed(leastTold, 3))} figures={[]} />}
        </tbody>
      </table>
      {steps.length > 0 && (
        <table>
          <caption>{numbers.steps}</caption>
          <tbody>
            {steps.map((one) => (
              <Row
                key={JSON.stringify(one.doing)}
                name={stepWords(language, model, one)}
                figures={[figures.fixed(one.seconds, 0)]}
              />
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}
