import { describe, expect, test } from 'vitest';
import {
  dryingBand,
  evaporation,
  evaporationSi,
  fahrenheit,
  finishTime,
  KG_PER_M2_PER_LB_FT2,
  KMH_PER_MPH,
  pourPlan,
  pourWeather,
  settingRate,
} from '../../../src-core/pour';
import { slabJob } from './pour-jobs';

function within(value: number, wanted: number, share: number): void {
  expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(share);
}

describe('evaporation, against Uno 1998 worked by hand', () => {
  test.each([
    [80, 80, 0.5, 10, 0.1431, 'watch'],
    [87, 80, 0.5, 12, 0.2435, 'act'],
    [70, 70, 0.5, 0, 0.0205, 'slow'],
    [75, 95, 0.2, 15, 0.2178, 'act'],
  ])('concrete %d F, air %d F, humidity %d, wind %d mph: %d lb/ft2/h, %s', (Tc, Ta, r, V, wanted, band) => {
    const rate = evaporation.compute({ Tc, Ta, r, V });
    within(rate, wanted, 0.005);
    expect(dryingBand(rate)).toBe(band);
  });

  test('87 F, 80 F, 50 %, 12 mph lies within 4 % of the .25 that the chart of ACI 305R prints, from memory', () => {
    within(evaporation.compute({ Tc: 87, Ta: 80, r: 0.5, V: 12 }), 0.25, 0.04);
  });

  test.each([
    [25, 30, 0.4, 20, 0.689, 0.717],
    [30, 30, 0.5, 15, 0.758, 0.792],
  ])(
    'concrete %d C, air %d C, humidity %d, wind %d km/h: %d rounded and %d exact kg/m2/h',
    (Tc, Ta, r, V, rounded, exact) => {
      within(evaporationSi.compute({ Tc, Ta, r, V }), rounded, 0.005);
      const us = evaporation.compute({ Tc: fahrenheit(Tc), Ta: fahrenheit(Ta), r, V: V / KMH_PER_MPH });
      within(us * KG_PER_M2_PER_LB_FT2, exact, 0.005);
    },
  );

  test('.2 lb/ft2/h is .976 kg/m2/h', () => {
    within(0.2 * KG_PER_M2_PER_LB_FT2, 0.976, 0.001);
  });

  test('cool concrete under warm damp air dries not at all, and neither does it at -40', () => {
    expect(evaporation.compute({ Tc: 60, Ta: 90, r: 0.9, V: 5 })).toBe(0);
    expect(evaporation.compute({ Tc: -40, Ta: -40, r: 0.5, V: 5 })).toBe(0);
  });

  test('the bands part at .1 and .2', () => {
    expect([0.0999, 0.1, 0.2, 0.2001].map(dryingBand)).toEqual(['slow', 'watch', 'watch', 'act']);
  });
});

describe('the weather of a pour day', () => {
  const kinds = (weather: Record<string, unknown>, day = 0) =>
    pourWeather(slabJob({ site: { weather } }), day).findings.map(({ kind }) => kind);
  const mild = { airC: 15, concreteC: 15, humidity: 0.8, windMph: 0 };

  test('a mild day indoors asks for nothing', () => {
    expect(kinds(mild)).toEqual([]);
  });

  test('outdoors rain is thought of', () => {
    expect(kinds({ ...mild, outdoors: true })).toEqual(['rain']);
  });

  test('32 deg C is not too hot, 32.5 is, in air or concrete', () => {
    expect(kinds({ ...mild, airC: 32 })).not.toContain('hot');
    expect(kinds({ ...mild, airC: 32.5 })).toContain('hot');
    expect(kinds({ ...mild, concreteC: 32.5 })).toContain('hot');
  });

  test('5 deg C is not too cold, 4.5 is', () => {
    expect(kinds({ ...mild, airC: 5 })).not.toContain('cold');
    expect(kinds({ ...mild, airC: 4.5 })).toContain('cold');
  });

  test('the forecast of the day counts, and its last day goes on', () => {
    const weather = { ...mild, dailyC: [3, 20, 35] };
    expect(kinds(weather, 0)).toContain('cold');
    expect(kinds(weather, 1)).not.toContain('cold');
    expect(kinds(weather, 2)).toContain('hot');
    expect(kinds(weather, 9)).toContain('hot');
  });

  test('cold that comes two days after the pour is seen, three days after is not', () => {
    expect(kinds({ ...mild, dailyC: [15, 12, 2, 15] }, 0)).toContain('frost');
    expect(kinds({ ...mild, dailyC: [15, 15, 12, 2, 15] }, 0)).not.toContain('frost');
  });

  test('87 F, half humid, 12 mph: attention, windbreak and film', () => {
    const weather = pourWeather(
      slabJob({
        site: { weather: { concreteC: 30.56, airC: 26.67, humidity: 0.5, windMph: 12, outdoors: true } },
      }),
      0,
    );
    expect(weather.drying).toBe('act');
    const drying = weather.findings.find(({ kind }) => kind === 'drying')!;
    expect(drying.level).toBe('attention');
    expect(drying.words).toMatch(/windbreak/);
  });

  test('a metric job shows the rounded SI form beside it', () => {
    const { lines } = pourWeather(slabJob({ shownIn: 'metric' }), 0);
    expect(lines.map(({ unit }) => unit)).toEqual(['lb/ft2/h', 'kg/m2/h']);
  });
});

describe('the finishing clock', () => {
  const finishAt = (concreteC: number) =>
    pourPlan(slabJob({ site: { weather: { concreteC } } })).pours[0]!.clock!.finish;

  test('a 10 ft2 slab placed by 18.8 min, by hand', () => {
    // 60 x 24 in is 10 ft2 with 14 ft of edge: screed .3 x 10 = 3, fill .15 x 10 raised to 2, screed 2, vibrate .25 x 14 = 3.5;
    // float 1.5 x 45 = 67.5 after the first water, .5 x 10 = 5; trowel 3 x 45 = 135 after it, .75 x 10 = 7.5.
    const wanted = [
      ['screed', 18.8, 21.8],
      ['fill', 21.8, 23.8],
      ['screed-again', 23.8, 25.8],
      ['vibrate', 25.8, 29.3],
      ['bleed', 29.3, 67.5],
      ['float', 67.5, 72.5],
      ['trowel', 135, 142.5],
    ] as const;
    const steps = finishAt(20);
    expect(steps.map(({ kind }) => kind)).toEqual(wanted.map(([kind]) => kind));
    steps.forEach(({ fromMinutes, toMinutes }, k) => {
      expect(fromMinutes).toBeCloseTo(wanted[k]![1], 9);
      expect(toMinutes).toBeCloseTo(wanted[k]![2], 9);
    });
  });

  test('at 10 deg C waits are 1 / .5475 as long and at 30 deg C 1 / 1.755 (ASTM C1074), work is not', () => {
    within(settingRate(10).value, 0.5475, 0.003);
    within(settingRate(30).value, 1.755, 0.003);
    const from = (concreteC: number, kind: string) =>
      finishAt(concreteC).find((step) => step.kind === kind)!.fromMinutes;
    within(from(10, 'float'), 67.5 / 0.5475, 0.003);
    within(from(30, 'trowel'), 135 / 1.755, 0.003);
    expect(from(10, 'fill')).toBe(from(20, 'fill'));
    expect(finishTime.compute({ tb: 60, r: 1.5, k: 1 })).toBe(90);
  });
});
