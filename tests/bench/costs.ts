import { catalogue, earCheck } from "#core/checks/catalogue.ts";
import type { Asked } from "#core/checks/finding.ts";
import { twistSeconds } from "#core/checks/twist.ts";
import { walk } from "#core/diagnosis/asking.ts";
import type { Evidence } from "#core/diagnosis/evidence.ts";
import { mendsAt } from "#core/diagnosis/mends.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Seconds } from "#core/units/units.ts";

/** Somebody else has to see to it, as where a policy gives up. Common practice, no source. */
export const somebodyElse: Seconds = 600;

/** To hear whether a position works: each required check once. */
export const toHear: Seconds = catalogue
  .filter(({ required }) => required)
  .reduce((sum, { seconds }) => sum + seconds, 0);

/** What asking takes, for somebody who stands at a seat; a check at another seat takes the walk there. */
export function askingCost(model: Model, asked: Asked, seat: string): Seconds {
  if (asked.check === "look") {
    const look = model.looks.find(({ place }) => place === asked.place);
    return look?.seconds ?? 0;
  }
  if (asked.check === "twist") return twistSeconds;
  if (asked.check === "complaint") return 0;
  return earCheck(asked.check).seconds + (asked.position === seat ? 0 : walk);
}

/** To turn headphones round, to exchange them, and all else that is no repair. Handbook, section 8. */
const others: Partial<Record<Move["move"], Seconds>> = { "turned round": 8, exchanged: 30 };
const otherwise: Seconds = 20;

/** What a hand takes for a move at a position, by the rig's own costs of repair. */
export function movingCost({ era, seen }: Evidence, move: Move, position: string): Seconds {
  const key = JSON.stringify(move);
  const mend = mendsAt(era, position, seen).find((one) => JSON.stringify(one.move) === key);
  return mend?.seconds ?? others[move.move] ?? otherwise;
}
