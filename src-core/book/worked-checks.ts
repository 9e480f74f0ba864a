/** Which checks are worked out in the book, and with which lines. */
import type { Check } from '../checks';
import { stands } from '../checks';
import type { FormCheck, FormFloorLoad, JobFalsework } from '../falsework';
import type { Line } from '../workings';
import { TRIVIAL_RATIO } from './practice';

/** A check with the lines that an earlier one of the same list has not shown yet. */
export interface WorkedCheck<Checked extends Check = Check> {
  readonly check: Checked;
  readonly lines: readonly Line[];
  /** Whether lines were left out as they stand above. */
  readonly isShortened: boolean;
}

/** Whether a check is worth a reader's time: it fails, or it uses a tenth of its limit and more. */
export function isWorked({ ratio, level }: Pick<Check, 'ratio' | 'level'>): boolean {
  return ratio >= TRIVIAL_RATIO || !stands(level);
}

/** Leaves out lines that it was given before: the same number from the same numbers. */
export function freshLines(): (lines: readonly Line[]) => Line[] {
  const shown = new Set<string>();
  return (lines) =>
    lines.filter((line) => {
      const key = JSON.stringify([line.label, line.symbol, line.substituted, line.result, line.source]);
      if (shown.has(key)) return false;
      shown.add(key);
      return true;
    });
}

/** Those of some checks that are worked out, no line twice. */
export function workedChecks<Checked extends Check>(checks: readonly Checked[]): WorkedCheck<Checked>[] {
  const fresh = freshLines();
  return checks.filter(isWorked).map((check) => {
    const lines = fresh(check.workings);
    return { check, lines, isShortened: lines.length < check.workings.length };
  });
}

export interface WorstFormCheck extends WorkedCheck<FormCheck> {
  /** The section in which it comes nearest its limit, and in how many it is looked at. */
  readonly sectionName: string;
  readonly sections: number;
}

/** Of every kind of check of the falsework the one that comes nearest its limit in the whole job. */
export function worstFormChecks({ designs }: JobFalsework): WorstFormCheck[] {
  const worst = new Map<string, Omit<WorstFormCheck, 'lines' | 'isShortened'>>();
  for (const { section, checks } of designs.flatMap(({ sections }) => sections)) {
    for (const check of checks) {
      const known = worst.get(check.id);
      const isWorse = known === undefined || check.ratio > known.check.ratio;
      worst.set(check.id, {
        ...(isWorse ? { check, sectionName: section.name } : known),
        sections: (known?.sections ?? 0) + 1,
      });
    }
  }
  const found = [...worst.values()];
  return workedChecks(found.map(({ check }) => check)).map((worked) => ({
    ...found.find(({ check }) => check === worked.check)!,
    ...worked,
  }));
}

/** The load of falsework on its floor where it is largest; null without falsework. */
export function worstFloorLoad({ designs }: JobFalsework): FormFloorLoad | null {
  return designs
    .flatMap(({ floorLoad }) => floorLoad ?? [])
    .reduce<FormFloorLoad | null>(
      (most, load) => (most === null || load.perAreaPsf > most.perAreaPsf ? load : most),
      null,
    );
}
