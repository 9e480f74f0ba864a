/** The list of cross-checks: things that are each well formed but do not fit together. */
import type { JobInPlan } from '../in-plan';
import { jobInPlan } from '../in-plan';
import type { Job } from '../job';
import type { JobProblem } from '../problem';
import { buttedEdges } from './butted-edges';
import { cutoutsInSlab } from './cutouts-in-slab';
import { dates } from './dates';
import { edgeCount } from './edge-count';
import { edgeProfiles } from './edge-profiles';
import { falseworkSections } from './falsework-sections';
import { fixedLoads } from './fixed-loads';
import { fixings } from './fixings';
import { ids } from './ids';
import { joints } from './joints';
import { mixes } from './mixes';
import { outlines } from './outlines';
import { references } from './references';
import { sinkData } from './sink-data';
import { steelInSlab } from './steel-in-slab';
import { stiffnessBounds } from './stiffness-bounds';
import { supportsUnderSlab } from './supports-under-slab';

const CROSS_CHECKS: readonly ((plan: JobInPlan) => readonly JobProblem[])[] = [
  ids,
  references,
  outlines,
  edgeCount,
  edgeProfiles,
  buttedEdges,
  cutoutsInSlab,
  sinkData,
  joints,
  steelInSlab,
  supportsUnderSlab,
  stiffnessBounds,
  fixings,
  fixedLoads,
  mixes,
  dates,
  falseworkSections,
];

/** Everything in a well-formed job that does not fit together; empty where all does. */
export function crossCheck(job: Job): JobProblem[] {
  const plan = jobInPlan(job);
  return CROSS_CHECKS.flatMap((check) => check(plan));
}
