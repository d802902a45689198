import { noises } from "#core/checks/noise.ts";
import type { AskedNoise } from "#core/session/noises.ts";
import type { Language } from "#core/words/language.ts";

/** What was not tested at some positions, whatever was answered: what no check can tell, and the noises that nobody asked after there. */
export function neverTestedAt(
  { neverTested, noises: words }: Language,
  seats: readonly { readonly id: string; readonly name: string }[],
  asked: readonly AskedNoise[],
): readonly string[] {
  const at = noises.map((noise) => ({
    named: words.named[noise],
    seats: seats.filter(({ id }) =>
      asked.some((one) => one.noise === noise && one.position === id),
    ),
  }));
  const nowhere = at.filter((one) => one.seats.length === 0).map(({ named }) => named);
  const somewhere = at
    .filter((one) => one.seats.length > 0 && one.seats.length < seats.length)
    .map((one) => words.askedOnlyAt(one.named, one.seats.map(({ name }) => name).join(", ")));
  const said = [...(nowhere.length > 0 ? [words.unasked(nowhere)] : []), ...somewhere];
  return [...neverTested, ...(said.length > 0 ? [said.join("; ")] : [])];
}
