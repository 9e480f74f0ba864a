import { describe, expect, test } from 'vitest';
import { useFalsework as useFalseworkCommand } from '../../../src-core/falsework';
import { drawState, drawWords } from '../../../src-renderer/falsework/draw-state';
import { sectionRows } from '../../../src-renderer/falsework/section-rows';
import { wallCounter } from './form-designs';

const { job, design } = wallCounter();
const [plain, withSink] = sectionRows(job, design);
const words = (row: typeof plain, term: string) => row!.facts.find((fact) => fact.term === term)?.words;

describe('a section as it is told', () => {
  test('has its size and days, its framing, and what holds it sideways', () => {
    expect(words(plain, 'Size')).toMatch(/^36 in by 25-1\/2 in, days 1 to 30\.$/);
    expect(words(plain, 'Joists')).toMatch(/^\d+ of 2x[46] from front to back, .+ apart at the most\.$/);
    expect(words(plain, 'Below them')).toMatch(/2x4/);
    expect(words(plain, 'Sideways')).toMatch(/^A ledger at the back, screwed to \d studs\.$/);
    expect(words(plain, 'Way out')).toBe('Straight out by the front.');
  });

  test('tells of openings only where it has one, with its trimmers', () => {
    expect(words(plain, 'Openings')).toBeUndefined();
    expect(words(withSink, 'Openings')).toMatch(/2 trimmers, 2 headers and \d tails/);
  });

  test('says what stays and what comes out, layer by layer from the slab down', () => {
    expect(words(plain, 'Layers')).toMatch(/^From the slab down: .*deck panel 15\/32 in, comes out\.$/);
    const { sections } = design;
    const stays = sections[0]!.layers.layers.filter((layer) => layer.stays).length;
    expect(words(plain, 'Layers')!.split(', stays').length - 1).toBe(stays);
  });

  test('has its weight under 75 lb and the caution of two people beside it', () => {
    expect(words(plain, 'Weight')).toMatch(/^\d+(\.\d)? lb comes out in one go/);
    expect(plain!.cautions.join(' ')).toContain('Two people lift a section out');
  });

  test('has every check once, worst first, and the highest ratio in its head', () => {
    const ratios = plain!.checks.map(({ ratio }) => ratio);
    expect(ratios).toHaveLength(design.sections[0]!.checks.length);
    expect(ratios).toEqual([...ratios].sort((a, b) => b - a));
    expect(plain!.ratio).toBe(ratios[0]!.toFixed(2));
    expect(plain!.level).toBe('holds');
  });

  test('is marked where its cabinet does not come to the soffit, or where it is stuck', () => {
    const [first] = design.sections;
    const unmet = { ...first!, layers: { ...first!.layers, isMet: false, words: 'Short of the soffit.' } };
    const stuck = { ...first!, way: { ...first!.way, by: null, refusal: 'It cannot come out.' } };
    const rows = sectionRows(job, { ...design, sections: [unmet, stuck] });
    expect(rows.map(({ level }) => level)).toEqual(['change', 'change']);
    expect(rows[0]!.facts.find(({ term }) => term === 'Fit')!.level).toBe('change');
    expect(rows[1]!.facts.find(({ term }) => term === 'Way out')).toMatchObject({
      words: 'It cannot come out.',
      level: 'change',
    });
  });

  test('is told in millimetres and kilograms in a metric job', () => {
    const metric = wallCounter({ shownIn: 'metric' });
    const [row] = sectionRows(metric.job, metric.design);
    expect(words(row, 'Size')).toContain('914 mm by 648 mm');
    expect(words(row, 'Weight')).toMatch(/ kg /);
    expect(words(row, 'Deck')).toBe('32/16 panel, 15/32 in (11.9 mm).');
  });
});

describe('drawing it in the job', () => {
  test('is offered once, and said to be done where the job holds it', () => {
    expect(drawState(job, design).kind).toBe('new');
    const edited = useFalseworkCommand.perform(job, { design });
    if (!edited.ok) throw new Error(edited.problems[0]!.sentence);
    const drawn = drawState(edited.job, design);
    expect(drawn).toEqual({ kind: 'drawn' });
    expect(drawWords(drawn, design)).toBe('The job holds these sections, legs and ledgers.');
  });

  test('says that what is refused is left out', () => {
    expect(drawWords({ kind: 'new' }, design)).not.toContain('cannot be built');
    expect(drawWords({ kind: 'new' }, { ...design, refusals: ['"A" is stuck.'] })).toContain(
      'What cannot be built so is left as it is',
    );
  });
});
