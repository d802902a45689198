/**
 * The fault-diagnosis core, for other tools: draw a rig, keep a log, derive everything else from it. Pure: no browser, no clock, no
 * chance of its own. DEVELOPERS.md has a worked example that a test runs.
 */
export { catalogue as earChecks, earCheck } from "#core/checks/catalogue.ts";
export type { EarCheck, EarCheckName, Question } from "#core/checks/check.ts";
export { type Complaint, complaints } from "#core/checks/complaints.ts";
export type { Answered, Asked, Bent, Finding, Measured, Reading } from "#core/checks/finding.ts";
export type { Look } from "#core/checks/look.ts";
export { type Advice, type Standing, shownIn } from "#core/diagnosis/advice.ts";
export type { Choice, Chosen } from "#core/diagnosis/choice.ts";
export type { Group } from "#core/diagnosis/groups.ts";
export type { Doing } from "#core/diagnosis/offers.ts";
export type { Suspect } from "#core/diagnosis/suspects.ts";
export { type Turning, turning } from "#core/diagnosis/turning.ts";
export { type Reason, reasonsFor } from "#core/diagnosis/why.ts";
export { type Advice as KnobAdvice, adviceFor, withKnobs } from "#core/level/advice.ts";
export { type AtEars, atEars, type Ear, type Place } from "#core/level/at-ears.ts";
export { type OneMore, waysForOneMore } from "#core/level/one-more.ts";
export { type Between, spreadOf, unknownsOf } from "#core/level/spread.ts";
export { type Feed, feedTo, type Programme, usualProgramme } from "#core/level/stages.ts";
export { type ToneChange, toneChangeAt } from "#core/level/tone-change.ts";
export type { Capture } from "#core/measurement/capture.ts";
export { gainsAt } from "#core/measurement/gains-at.ts";
export { measureReturn } from "#core/measurement/measured.ts";
export {
  type Entry as MeasuredEntry,
  type Estimate,
  type Gain,
  type NotMeasured,
  type Refusal,
  type Response,
  type ReturnMeasurement,
  refusals,
} from "#core/measurement/return.ts";
export { createScan, type Region } from "#core/measurement/scan.ts";
export { catalogue as partCatalogue, type PartKind } from "#core/parts/catalogue.ts";
export { contactsJoined } from "#core/parts/contacts-joined.ts";
export type { Fault, Part } from "#core/parts/part.ts";
export type { Ends, Patch } from "#core/patching/patch.ts";
export { type Prediction, predictionAt } from "#core/patching/prediction.ts";
export { type Recommendation, recommended } from "#core/patching/recommend.ts";
export { type Want, wants } from "#core/patching/wants.ts";
export { type Candidate, type Unknown, whatThisIs } from "#core/proving/candidates.ts";
export { type LeadChoice, type Method, methods } from "#core/proving/choice.ts";
export { kindsWith, type LeadEnd, leadEnds, provable, sidesOf } from "#core/proving/ends.ts";
export { leadId, leadRig, provedAt } from "#core/proving/lead-rig.ts";
export type { NextReading } from "#core/proving/next-reading.ts";
export { type Next, type Proof, proofOf } from "#core/proving/proof.ts";
export { type MeasuredOhms, returnOhms } from "#core/proving/return-ohms.ts";
export { type Unseen, unseenBy } from "#core/proving/unseen.ts";
export { type Wire, type WireState, wiringOf } from "#core/proving/wiring.ts";
export { earMatrix } from "#core/rig/ear-matrix.ts";
export type { Move } from "#core/rig/moves.ts";
export {
  build,
  type Connection,
  type Position,
  type Rig,
  type RigPart,
  type WantedFeed,
  wantedFeeds,
} from "#core/rig/rig.ts";
export { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
export { builtInRigs, fromHeadphoneSocket, fromMainPair, straightIn } from "#core/rig/rigs.ts";
export { type Derived, derive } from "#core/session/derive.ts";
export {
  add,
  type Entry,
  type Log,
  lastToTake,
  type Said,
  titleOf,
} from "#core/session/log.ts";
export { type Where, whereNext } from "#core/session/where.ts";
export { english } from "#core/words/english.ts";
export { faultText, mendText } from "#core/words/fault-text.ts";
export { german } from "#core/words/german.ts";
export { movedText, moveText } from "#core/words/move-text.ts";
