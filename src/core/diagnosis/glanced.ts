import type { Reading, Results } from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { lookSlip, meant } from "#core/checks/slips.ts";
import { predictTwist, twistAnswers } from "#core/checks/twist.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { chanceOfReading } from "./continuity.ts";
import { dot } from "./dot.ts";
import type { Era } from "./era.ts";
import type { Glimpsed } from "./glimpses.ts";
import type { Grown } from "./grown.ts";
import type { Model } from "./model.ts";

/** The branch that has most of the faults something is about. */
function branchOf(era: Era, about: (fault: RigFault) => boolean): Grown | undefined {
  const counts = era.branches.map((branch) => ({
    branch,
    count: branch.faults.filter(about).length,
  }));
  const most = counts.reduce((best, one) => (one.count > best.count ? one : best), {
    branch: era.root,
    count: 0,
  });
  return most.count > 0 ? most.branch : undefined;
}

function glimpse(
  era: Era,
  epoch: number,
  about: Glimpsed["about"],
  chance: Glimpsed["chance"],
): Glimpsed | undefined {
  const branch = branchOf(era, about);
  return branch && { branch, epoch, about, chance };
}

/** A second look at what nobody touched shows the same, and takes the place of the first. */
export function glanced(
  model: Model,
  era: Era,
  epoch: number,
  place: string,
  [given]: Results,
): Glimpsed | undefined {
  const look = model.looks.find((one) => one.place === place);
  if (look === undefined) return undefined; // the drawing has changed since
  const said = given?.filter((one) => look.answers.includes(one)) ?? [];
  const weights = meant(look.answers, said.length > 0 ? said : look.answers, lookSlip);
  return glimpse(
    era,
    epoch,
    (fault) => fault.seen && fault.place === place,
    (faults) => dot(predictLook(look, sightsOf(look, faults)), weights),
  );
}

/** What twisting a plug told of its contacts. */
export function twisted(
  era: Era,
  epoch: number,
  part: string,
  plug: string,
  [given = twistAnswers]: Results,
): Glimpsed | undefined {
  const weights = meant(twistAnswers, given, lookSlip);
  return glimpse(
    era,
    epoch,
    (fault) => fault.part === part && (fault.at === plug || fault.at === "body"),
    (faults) => dot(predictTwist(faults), weights),
  );
}

/** What a meter read between two contacts of a part. */
export function read(
  model: Model,
  era: Era,
  epoch: number,
  reading: Reading,
): Glimpsed | undefined {
  const { part } = reading.asked;
  const chance = chanceOfReading(model.rig, reading);
  return chance && glimpse(era, epoch, (fault) => fault.part === part, chance);
}
