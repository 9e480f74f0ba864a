import { describe, expect, test } from 'vitest';
import { designFalsework, sectionLetter } from '../../../src-core/falsework';
import { printLength } from '../../../src-core/units';
import { partRows, sizeRows } from '../../../src-renderer/falsework/cut-rows';
import { drawState } from '../../../src-renderer/falsework/draw-state';
import { fasteningGroups } from '../../../src-renderer/falsework/fastening-rows';
import { formPlan } from '../../../src-renderer/falsework/form-plan';
import { floorWords, worstWords } from '../../../src-renderer/falsework/head-words';
import { legGroups } from '../../../src-renderer/falsework/leg-rows';
import { exampleJob, pieceOf } from '../../core/edit/editing';

const galley = exampleJob('boathouse-galley');
const counter = pieceOf(galley, 'serving-counter');
const design = designFalsework(galley, 'serving-counter');
const allLegs = design.sections.flatMap(({ legs }) => legs);

describe('the falsework of the serving counter on screen', () => {
  test('sections are lettered past Z without a gap', () => {
    expect([0, 25, 26, 51, 52].map(sectionLetter)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA']);
  });

  test('each leg is listed once, with the length to which it is cut', () => {
    const groups = legGroups(design, 'imperial');
    expect(groups.map(({ letter }) => letter)).toEqual(design.sections.map((_, i) => sectionLetter(i)));
    const rows = groups.flatMap(({ rows: own }) => own);
    expect(rows.map(({ id }) => id)).toEqual(allLegs.map(({ id }) => id));
    expect(rows.map(({ cut }) => cut)).toEqual(
      allLegs.map(({ leg }) => printLength(leg.cutIn, { system: 'imperial' })),
    );
    expect(legGroups(design, 'metric')[0]!.rows[0]!.cut).toMatch(/^\d+ mm$/);
  });

  test('the plan draws every section and leg inside its frame, the front lowest', () => {
    const plan = formPlan(design, counter, 340)!;
    expect(plan.sections.flatMap(({ legs }) => legs)).toHaveLength(allLegs.length);
    for (const { legs } of plan.sections)
      for (const { at } of legs) {
        expect(at.x).toBeGreaterThanOrEqual(0);
        expect(at.x).toBeLessThanOrEqual(plan.widthPx);
        expect(at.y).toBeGreaterThanOrEqual(0);
        expect(at.y).toBeLessThanOrEqual(plan.heightPx);
      }
    const drawn = plan.sections.flatMap(({ legs }) => legs);
    const [front] = [...allLegs].sort((a, b) => a.at.yIn - b.at.yIn);
    expect(drawn.find(({ id }) => id === front!.id)!.at.y).toBe(Math.max(...drawn.map(({ at }) => at.y)));
    expect(formPlan(design, counter, 0)).toBeNull();
  });

  test('the part list counts every stick of the bills, and the stock is named by its size', () => {
    const counted = partRows(design, 'imperial').reduce((sum, { count }) => sum + count, 0);
    const billed = design.sections
      .flatMap(({ bill }) => bill.sticks)
      .reduce((sum, { count }) => sum + count, 0);
    expect(counted).toBe(billed);
    expect(sizeRows(design, 'imperial').map(({ size }) => size)).toEqual(
      design.cuts.bySize.map(({ size }) => size),
    );
  });

  test('screws that must come out stand first, and none is left out', () => {
    const groups = fasteningGroups(design);
    expect(groups[0]!.mustComeOut).toBe(true);
    const listed = groups.flatMap(({ rows }) => rows).reduce((sum, { total }) => sum + total, 0);
    expect(listed).toBe(design.fastenings.reduce((sum, { count }) => sum + count, 0));
  });

  test('the head names the check nearest its limit and the fall of the floor', () => {
    expect(worstWords(design)).toMatch(/^Nearest its limit: .+ of section [A-Z], 0\.\d\d\.$/);
    expect(floorWords(design, (valueIn) => printLength(valueIn, { system: 'imperial' }))).toContain(
      'a fall of',
    );
  });

  test('it can be drawn in place of the falsework of the example', () => {
    expect(drawState(galley, design)).toEqual({ kind: 'instead' });
    expect(drawState({ ...galley, pieces: galley.pieces.slice(1) }, design).kind).toBe('refused');
  });
});
