import { type Complaint, complaints } from "#core/checks/complaints.ts";
import { type Finding, isAnswered, isNoticed, type Noticed } from "#core/checks/finding.ts";
import { answersTo, type Noise, noises } from "#core/checks/noise.ts";
import { type Hunt, huntAt } from "#core/noises/hunt.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import type { Derived } from "./derive.ts";

/**
 * What was noticed of a noise at a position since a hand last changed something on the way to it. What was noticed before such a move says nothing any more,
 * wherever on the way it was.
 */
export function noticedAt(derived: Derived, position: string, noise: Noise): readonly Noticed[] {
  const { evidence } = derived;
  const now = evidence.nowAt(position);
  return findingsIn(derived).flatMap(({ finding, epoch }) =>
    isNoticed(finding) &&
    finding.asked.position === position &&
    finding.asked.noise === noise &&
    evidence.era.channelAt(position, epoch) === now
      ? [finding]
      : [],
  );
}

/** Whether it tells anything: it could be tried, and was not answered 'can't tell'. */
export function tellsSomething({ asked, results }: Noticed): boolean {
  const [given = []] = results;
  return given.length > 0 && given.length < answersTo(asked.trial.try).length;
}

/** A noise that somebody asked after at a position. */
export interface AskedNoise {
  readonly position: string;
  readonly noise: Noise;
}

/** Every noise that somebody asked after and noticed something of, on the way to its position as it is now. */
export const askedIn = (derived: Derived): readonly AskedNoise[] =>
  derived.rig.positions.flatMap(({ id: position }) =>
    noises
      .filter((noise) => noticedAt(derived, position, noise).some(tellsSomething))
      .map((noise) => ({ position, noise })),
  );

/** Every finding, and how many moves were made before it. */
function findingsIn({ happenings }: Derived) {
  const found: { readonly finding: Finding; readonly epoch: number }[] = [];
  let epoch = 0;
  for (const happening of happenings)
    if (happening.kind === "move") epoch++;
    else if (happening.kind === "finding") found.push({ finding: happening.finding, epoch });
  return found;
}

const known = new WeakMap<Derived, Map<string, Hunt | undefined>>();

/** Where a noise at a position comes in, from a log, of the rig as moves have left it; nothing where nobody listens or nothing feeds it. */
export function huntIn(derived: Derived, position: string, noise: Noise): Hunt | undefined {
  const hunts = known.get(derived) ?? new Map<string, Hunt | undefined>();
  known.set(derived, hunts);
  const key = `${noise} / ${position}`;
  if (!hunts.has(key)) {
    const found = noticedAt(derived, position, noise);
    hunts.set(key, huntAt(rigNow(derived), position, noise, found));
  }
  return hunts.get(key);
}

const built = new WeakMap<Rig, BuiltRig>();

/** The rig as moves have left it, looked up once. */
export function rigNow({ evidence }: Pick<Derived, "evidence">): BuiltRig {
  const { rig } = evidence.era.course.state;
  const now = built.get(rig) ?? build(rig);
  built.set(rig, now);
  return now;
}

const complained: Readonly<Partial<Record<Complaint, Noise>>> = {
  hiss: "hiss",
  hum: "hum",
  "crackle, or it comes and goes": "crackle",
};

/** The noises that a complaint is of; none where it may be of something that the ear matrix tells. */
export function noisesIn(said: readonly Complaint[]): readonly Noise[] {
  const sure = said.every((one) => one in complained || one === "something else");
  return sure ? noises.filter((noise) => said.some((one) => complained[one] === noise)) : [];
}

/** The noises that a log speaks of at a position, by a complaint of nothing else or by what was noticed, in the order of the list. */
export function noisesAt(derived: Derived, position: string): readonly Noise[] {
  const spoken = new Set(
    findingsIn(derived).flatMap(({ finding }) =>
      "position" in finding.asked && finding.asked.position === position ? spokenOf(finding) : [],
    ),
  );
  return noises.filter((noise) => spoken.has(noise));
}

/** The noises that a finding speaks of. */
export function spokenOf(finding: Finding): readonly Noise[] {
  if (isNoticed(finding)) return [finding.asked.noise];
  if (!isAnswered(finding) || finding.asked.check !== "complaint") return [];
  const [said = []] = finding.results;
  return noisesIn(complaints.filter((one) => said.includes(one)));
}
