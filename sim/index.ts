/** The only door: what the app and the command line may use. */
export { createAdvisor } from './advice.ts';
export { acceptHoles } from './ballast/accept.ts';
export type { Cure, WhatIfRow } from './ballast/advised.ts';
export type { Forgiveness, HungEffect } from './ballast/forgiveness.ts';
export type { OffMark } from './ballast/off-mark.ts';
export type { LinkPlan, Obstacle } from './ballast/plan.ts';
export type { SettledPlan } from './ballast/settle.ts';
export type { Aim, TargetCheck } from './ballast/target.ts';
export type { BallastPlan } from './ballast/whole.ts';
export { type Assembled, type Assembly, type JointRest, mostHeel } from './chain/assemble.ts';
export type { Folded, FoldPoint, FoldWay } from './chain/fold.ts';
export type { Pose as LinkPose } from './chain/pose.ts';
export type { Design, Hole } from './design/design.ts';
export { type ProposedEdit, withEdit } from './design/edit.ts';
export type { DesignFile } from './design/file.ts';
export { valueAt, withValueAt } from './design/place.ts';
export { readDesignText } from './design/read.ts';
export { nextDrill, type StockChoice, stockChoices } from './design/shop-defaults.ts';
export {
  fullShop,
  type ShopList,
  type StockUser,
  shopNameFault,
  stockUsers,
  withoutShopEntry,
  withShopEntry,
  withShopName,
} from './design/shop-edits.ts';
export { writeDesignText } from './design/write.ts';
export { type Issue, issueLine, type Outcome } from './flow/outcome.ts';
export { type Accuracy, type Digits, MOST_DIGITS } from './hydro/accuracy.ts';
export { type Attitudes, type Drop, dropCells, type OtherRest } from './hydro/attitudes.ts';
export type { Film } from './hydro/film.ts';
export type { Float } from './hydro/float.ts';
export { steadyFrom, stiffFrom } from './hydro/steadiness.ts';
export type { LinkSpec } from './links/cut.ts';
export type { KeepOut } from './mass/keep-out.ts';
export type { Ledger } from './mass/ledger.ts';
export type {
  Hardware,
  PlacedEye,
  PlacedFin,
  PlacedFitting,
  PlacedHole,
  PlacedHung,
  PlacedPin,
} from './mass/placed.ts';
export type { Wall } from './mass/wall.ts';
export { measureReach } from './mesh/measure.ts';
export type { Mesh, PatchKind, Topology } from './mesh/mesh.ts';
export type { Wetted, WettedSlot } from './mesh/wetted.ts';
export type { Vec3 } from './numerics/vec3.ts';
export { ballastJson } from './out/ballast/json.ts';
export { ballastReport } from './out/ballast/report.ts';
export {
  holeWords,
  hungWords,
  obstacleWords,
  pinWords,
  planWords,
  trimWords,
  whatIfWords,
} from './out/ballast/words.ts';
export { checkJson } from './out/check-json.ts';
export { checkReport } from './out/check-report.ts';
export type { CheckedBait } from './out/checked-bait.ts';
export { type ComparedBait, type Comparison, compareSetups, type HoleChange } from './out/compare/compare.ts';
export { compareJson } from './out/compare/json.ts';
export { compareReport } from './out/compare/report.ts';
export { benchWords, changeWords } from './out/compare/words.ts';
export { fileNamePart } from './out/file-name.ts';
export { foldedAt, foldFault } from './out/joints/folded-at.ts';
export { foldedWords, jointWords, looseWords } from './out/joints/words.ts';
export { dropWords, humpWords, restWords, wayUpWords } from './out/other-rest.ts';
export { meetingWords, playWords, spanWords, swingWords, touchWords, wholeLines } from './out/reach-words.ts';
export {
  baitOffCentreWords,
  leastLeadWords,
  linkOffCentreWords,
  rollWords,
  STEADINESS_MEANS,
  steadinessWords,
} from './out/roll/words.ts';
export {
  fallWords,
  firstFootWords,
  secondsWords,
  speedWords,
  timeBandWords,
  timedDropWords,
} from './out/sinking/words.ts';
export { linkSolids } from './out/solids.ts';
export { sumsPage } from './out/sums/page.ts';
export { aimAmount, bandWords, toleranceAmount } from './out/target-words.ts';
export { baitVerdict, linkVerdict } from './out/verdict.ts';
export { createPipeline } from './pipeline.ts';
export type { Swing } from './reach/joint.ts';
export type { JointReach, Reach } from './reach/reach.ts';
export type { Outline } from './reach/slice.ts';
export type { ArmAt, Arms, ArmsOver } from './roll/arms.ts';
export type { BaitRoll, LinkRoll, Roll } from './roll/roll.ts';
export type { Band } from './sinking/drag-law.ts';
export type { Sinking } from './sinking/sink.ts';
export type { AdvisedBaitAnswers, AdvisedLinkAnswers, Step, WallAnswer } from './steps.ts';
export type { WaterAnswer } from './tables/waters.ts';
export { type Amounts, amountsIn, restated, type UnitSystem } from './units/amounts.ts';
export type { Mm } from './units/brand.ts';
export {
  degreeFromRadian,
  gramFromOunce,
  inchFromMm,
  MM_PER_INCH,
  mmFromInch,
  ounceFromGram,
  radianFromDegree,
} from './units/convert.ts';
export {
  counted,
  formatAngle,
  formatDensity,
  formatLength,
  formatMass,
  formatNumber,
  formatPercent,
  type NumberStyle,
} from './units/format.ts';
export { formatDecimal } from './units/format-decimal.ts';
export { FINEST_RULER, rulerFraction } from './units/format-ruler.ts';
export { meant } from './units/meant.ts';
export { parseQuantity, type Quantity } from './units/parse.ts';
export type { QuantityKind } from './units/parse-units.ts';
