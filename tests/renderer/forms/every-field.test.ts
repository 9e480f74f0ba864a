import { describe, expect, it } from 'vitest';
import { jobSchema } from '../../../src-core/job';
import type { Field } from '../../../src-renderer/forms/specs/field';
import { JOB_FORMS } from '../../../src-renderer/forms/specs/job-forms';
import { PIECE_FIELDS } from '../../../src-renderer/forms/specs/piece-fields';
import type { Leaf } from './schema-places';
import { fieldLeaves, schemaLeaves } from './schema-places';

const IN_FILE = schemaLeaves(jobSchema);
const IN_FORMS = [
  ...fieldLeaves(PIECE_FIELDS, 'pieces[]'),
  ...JOB_FORMS.flatMap(({ at, fields }) => fieldLeaves(fields, at)),
];

/** Left out on purpose, and why. */
const LEFT_OUT: readonly { readonly place: RegExp; readonly why: string }[] = [
  { place: /^format$/, why: 'says that the file is a job' },
  { place: /^version$/, why: 'belongs to the file, and is raised by migration' },
  { place: /(^|[.\]>])id$/, why: 'a handle for the tool; people go by names' },
];

/** Support fields that every kind has are written once for all kinds, so their place names no kind. */
function inForms(place: string): (Leaf & { readonly field: Field }) | undefined {
  const everyKind = place.replace(/^(pieces\[\]\.(?:supports|reinforcement)\[\])<[^>]+>/, '$1');
  return IN_FORMS.find((leaf) => leaf.place === place || leaf.place === everyKind);
}

const isLeftOut = ({ place }: Leaf) => LEFT_OUT.some((one) => one.place.test(place));

describe('the forms', () => {
  it('walk a schema of more than 250 places', () => {
    expect(IN_FILE.length).toBeGreaterThan(250);
  });

  it('reach every place of the job file but those left out for a reason', () => {
    const missing = IN_FILE.filter((leaf) => !isLeftOut(leaf) && inForms(leaf.place) === undefined);
    expect(missing.map(({ place }) => place)).toEqual([]);
  });

  it('hold no field that the job file has not', () => {
    const known = new Set(IN_FILE.map(({ place }) => place));
    const everyKind = IN_FILE.map(({ place }) =>
      place.replace(/^(pieces\[\]\.(?:supports|reinforcement)\[\])<[^>]+>/, '$1'),
    );
    const unknown = IN_FORMS.filter(({ place }) => !known.has(place) && !everyKind.includes(place));
    expect(unknown.map(({ place }) => place)).toEqual([]);
  });

  it('leave out nothing that the file no longer has', () => {
    for (const { place } of LEFT_OUT) expect(IN_FILE.some((leaf) => place.test(leaf.place))).toBe(true);
  });

  it('offer the very choices of the schema, and take numbers for numbers', () => {
    const astray = IN_FILE.filter((leaf) => {
      if (isLeftOut(leaf)) return false;
      const form = inForms(leaf.place);
      if (form === undefined) return false;
      const isSame = form.type === leaf.type || (form.type === 'number' && leaf.type === 'int');
      return !isSame || form.options.join() !== leaf.options.join();
    });
    expect(astray.map(({ place }) => place)).toEqual([]);
  });

  it('let exactly those fields stay empty that may be empty in the file', () => {
    const astray = IN_FILE.filter((leaf) => {
      const form = inForms(leaf.place);
      return form !== undefined && !isLeftOut(leaf) && form.mayBeEmpty !== leaf.mayBeEmpty;
    });
    expect(astray.map(({ place }) => place)).toEqual([]);
  });

  it('read each figure in the unit that its name in the file ends in', () => {
    const astray = IN_FORMS.flatMap(({ place, field }) => {
      const name = place.split('.').at(-1)!;
      const wanted = ENDINGS.find(([ending]) => ending.test(name))?.[1];
      const of = field.kind === 'quantity' ? field.of : null;
      return wanted === undefined || of === null || of === wanted ? [] : [`${place}: ${of}`];
    });
    expect(astray).toEqual([]);
  });
});

/** Ends of names, longest first, and the quantity that each stands for. */
const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/AnHour$/, 'placingRate'],
  [/In2$/, 'area'],
  [/Ft3$/, 'bagYield'],
  [/inPerFt$/, 'fall'],
  [/In$/, 'length'],
  [/Lbf$/, 'force'],
  [/Lb$/, 'mass'],
  [/Psf$/, 'spreadLoad'],
  [/Psi$/, 'stress'],
  [/Pcf$/, 'density'],
  [/Pcy$/, 'dose'],
  [/Deg$/, 'angle'],
  [/C(\[\])?$/, 'temperature'],
  [/Mph$/, 'windSpeed'],
  [/Gal$/, 'bucket'],
  [/Ratio$/, 'percent'],
  [/[dD]ay(Days)?$/, 'day'],
  [/Days$/, 'day'],
  [/Minutes$/, 'minutes'],
  [/[cC]ount$/, 'count'],
];
