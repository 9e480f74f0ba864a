/** What can be said of the job, its site and its concrete. */
import { newId } from '../../../src-core/edit';
import type { Site } from '../../../src-core/job';
import type { Field, ListField, Surroundings } from './field';
import { choice, choices, length, quantity, yesNo } from './write-fields';

export const JOB_FIELDS: readonly Field[] = [
  { kind: 'name', at: 'name', label: 'Name' },
  choice('shownIn', 'Shown in', { imperial: 'Inches and pounds', metric: 'Metric' }),
  { kind: 'note', at: 'note', label: 'Note' },
];

const MIX_LIST: ListField = {
  kind: 'list',
  at: 'mixes',
  label: 'Mixes',
  one: 'mix',
  look: 'blocks',
  least: 1,
  next: (items, { job }) => ({ id: newId(job, 'mix'), name: `Mix ${items.length + 1}` }),
  summary: (mix) => String(mix.name),
  item: [
    { kind: 'name', at: 'name', label: 'Name' },
    quantity('stress', 'strengthPsi', 'Strength at 28 days', { emptyWords: 'untested, 3000 psi' }),
    choice('strengthFrom', 'Strength is', {
      tested: 'Tested',
      bag: 'What the bag says',
      assumed: 'Assumed',
    }),
    quantity('density', 'densityPcf', 'Density'),
    quantity('plain', 'lambda', 'Lightweight factor', {
      help: '1 for normal weight, 0.75 for all-lightweight.',
    }),
    choice('cement', 'Cement', { ordinary: 'Ordinary', rapid: 'Rapid' }),
    quantity('minutes', 'workingMinutes', 'Working time'),
    {
      kind: 'part',
      at: 'bag',
      label: 'Comes in bags',
      start: () => ({ weightLb: 80, yieldFt3: 0.6, cementLb: null, waterLeastLb: 6, waterMostLb: 7.5 }),
      fields: [
        quantity('mass', 'weightLb', 'Weight of a bag'),
        quantity('bagYield', 'yieldFt3', 'Makes'),
        quantity('mass', 'cementLb', 'Cement in it', { emptyWords: 'not stated' }),
        quantity('mass', 'waterLeastLb', 'Least water'),
        quantity('mass', 'waterMostLb', 'Most water'),
        quantity('mass', 'waterLb', 'Water every bag gets', { emptyWords: 'midway' }),
      ],
    },
    {
      kind: 'list',
      at: 'cylinders',
      label: 'Cylinder tests',
      help: 'Your own results stand in place of the strength curve.',
      one: 'cylinder test',
      look: 'table',
      least: 0,
      item: [quantity('day', 'ageDays', 'Age, days'), quantity('stress', 'strengthPsi', 'Strength')],
      next: (tests) => tests.at(-1) ?? { ageDays: 28, strengthPsi: 3000 },
    },
  ],
};

export const MIX_FIELDS: readonly Field[] = [MIX_LIST];

const WEEK = choices({
  mon: 'Monday',
  tue: 'Tuesday',
  wed: 'Wednesday',
  thu: 'Thursday',
  fri: 'Friday',
  sat: 'Saturday',
  sun: 'Sunday',
});

const GROUND: readonly Field[] = [
  choice('standsOn.kind', 'Stands on', {
    'slab-on-ground': 'Concrete slab on the ground',
    ground: 'The ground',
    'timber-floor': 'Timber floor',
    'timber-deck': 'Timber deck',
    'suspended-concrete': 'Suspended concrete floor',
    unknown: 'Not known',
  }),
  quantity('spreadLoad', 'standsOn.allowancePsf', 'It may carry', { emptyWords: 'not known' }),
  { kind: 'note', at: 'standsOn.allowanceFrom', label: 'Where that figure is from' },
  length('combustiblesAtIn', 'Nearest thing that burns', { emptyWords: 'no fire' }),
  yesNo('actsAsGuard', 'A piece guards a drop of more than 30 in'),
  yesNo('seismicAnchorage', 'Local rules ask for seismic anchorage'),
  yesNo('permitBound', 'The work needs a permit'),
];

const LEVELS: readonly Field[] = [
  choice(
    'levels.convention',
    'Readings are',
    { height: 'Heights', rod: 'Rod readings' },
    {
      help: 'A rod reading grows as the floor falls; a height grows as it rises.',
    },
  ),
  {
    kind: 'list',
    at: 'levels.readings',
    label: 'Readings',
    one: 'reading',
    look: 'table',
    least: 0,
    item: [length('xIn', 'Left'), length('yIn', 'Front'), length('valueIn', 'Reading')],
    next: nextReading,
  },
];

/** A reading a foot to the right of the last, at its height. */
function nextReading(readings: readonly unknown[], { job }: Surroundings): unknown {
  const last = readings.at(-1) as Site['levels']['readings'][number] | undefined;
  const id = newId(job, 'level');
  return last === undefined ? { id, xIn: 0, yIn: 0, valueIn: 0 } : { ...last, id, xIn: last.xIn + 12 };
}

const WEATHER: readonly Field[] = [
  quantity('temperature', 'weather.airC', 'Air'),
  quantity('temperature', 'weather.concreteC', 'Concrete as mixed'),
  quantity('percent', 'weather.humidity', 'Humidity'),
  quantity('windSpeed', 'weather.windMph', 'Wind'),
  yesNo('weather.outdoors', 'Poured and cured outdoors'),
  {
    kind: 'list',
    at: 'weather.dailyC',
    label: 'Mean temperature, day by day',
    help: 'From day 0 on; the last one goes on.',
    one: 'day',
    look: 'table',
    numbered: { by: 'Day', from: 0 },
    least: 0,
    item: [quantity('temperature', '', 'Mean')],
    next: (days, { job }) => days.at(-1) ?? job.site.weather.airC,
  },
];

const CALENDAR: readonly Field[] = [
  { kind: 'date', at: 'calendar.startsOn', label: 'Date of day 0', emptyWords: 'days as numbers' },
  { kind: 'many', at: 'calendar.restDays', label: 'No work on', choices: WEEK },
  quantity('day', 'calendar.handOverDay', 'Handed over on day', { emptyWords: 'not set' }),
];

export const SITE_FIELDS: readonly Field[] = [
  ...GROUND,
  { kind: 'group', label: 'Levels of the floor', fields: LEVELS },
  { kind: 'group', label: 'Weather', fields: WEATHER },
  { kind: 'group', label: 'Calendar', fields: CALENDAR },
];
