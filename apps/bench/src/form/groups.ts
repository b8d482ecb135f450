import * as z from 'zod/mini';
import { toolField } from '@seatwright/core/handwork';
import { bearingPartField, sealPartField, workshopFileField } from '@seatwright/core/job';
import { materialNames } from '@seatwright/core/material';
import { boreField, obstacleField, requirementSetField, runningField, sealShape, shaftField, situationShape, wearTrackField } from '@seatwright/core/seal';
import type { Choice } from '@seatwright/elements/seat-choice-field.js';
import { words } from '../words/index.js';
import { inLanguage } from '../words/sentences.js';
import { entryOf, wordOf, type Entry } from './entry.js';

export type GroupName = 'seal' | 'place' | 'shaft' | 'bore' | 'bearing' | 'running' | 'tools' | 'machine';

/** A part of the form: what is asked first, and what can be added. */
export interface Group {
  readonly name: GroupName;
  readonly entries: readonly Entry[];
  readonly more: readonly Entry[];
}

/** A list whose items are filled in field by field. */
export interface ItemForm {
  readonly scope: Entry['scope'];
  readonly path: string;
  readonly fields: readonly { readonly key: string; readonly entry: Omit<Entry, 'scope' | 'path' | 'name'> }[];
  readonly fresh: Readonly<Record<string, string>>;
}

const seatSchema = z.enum(['flush', 'shoulder', 'depth']).check(z.meta({ label: 'where the new seal ends', unit: '' }));
const seatKind = () => entryOf('position', 'seat.kind', seatSchema, { choices: seatSchema.options.map((value) => ({ value, word: words.seats[value] })) });

const bearingShape = bearingPartField.shape;
const depthOption = z.optional(situationShape.clearBehindMm);

const metals = inLanguage((): readonly Choice[] => materialNames().map(({ id, name, family }) => ({ value: id, word: wordOf(name), group: wordOf(family) })));
const toolMaterials = (): readonly Choice[] => ['steel', 'pvc-u', 'copper', 'brass', 'aluminium', 'pe', 'pp', 'abs'].map((value) => ({ value, word: wordOf(value) }));

// Elsewhere "both" are sides, and "turned" is a piece to push with.
const rotation = () => entryOf('position', 'rotation', situationShape.rotation, { says: { both: 'either way' } });
const seatFinish = () => entryOf('bearing', 'seatFinish', bearingShape.seatFinish, { says: { turned: 'turned, not ground' } });

const bearing = (path: Exclude<keyof typeof bearingShape, 'kind' | 'name' | 'note' | 'shaftReadings' | 'housingReadings'>) => entryOf('bearing', path, bearingShape[path]);
const seal = (path: keyof typeof sealShape, isRequired = false) => entryOf('seal', path, sealShape[path], { isRequired });
const bore = (path: Exclude<keyof typeof boreField.shape, 'readings' | 'leadIn'>, choices?: readonly Choice[]) => entryOf('position', `bore.${path}`, boreField.shape[path], choices === undefined ? {} : { choices });
const shaft = (path: Exclude<keyof typeof shaftField.shape, 'readings' | 'leadIn' | 'obstacles'>, choices?: readonly Choice[]) => entryOf('position', `shaft.${path}`, shaftField.shape[path], choices === undefined ? {} : { choices });
const running = (path: keyof typeof runningField.shape) => entryOf('position', `running.${path}`, runningField.shape[path]);
const place = (path: 'lipFacing' | 'fluidSide' | 'clearBehindMm' | 'behind' | 'retainedBy' | 'reachableFrom') => entryOf('position', path, situationShape[path]);
const track = (path: keyof typeof wearTrackField.shape, label?: string) => entryOf('position', `wearTrack.${path}`, wearTrackField.shape[path], label === undefined ? {} : { label });
const boreChamfer = innerShape(boreField.shape.leadIn);
const shaftEnd = innerShape(shaftField.shape.leadIn);
const machine = machineShape();

/** The depth that `seat` takes when its kind is `depth`. */
export const seatDepth = inLanguage((): Entry => entryOf('position', 'seat.depthMm', depthOption, { label: 'depth of its outer face below the housing face' }));

/** What tells one of several seals from the others. */
export const sealName = inLanguage((): Entry => entryOf('seal', 'name', sealPartField.shape.name));

export const groups = inLanguage((): readonly Group[] => [
  {
    name: 'seal',
    entries: [seal('shaftMm', true), seal('outsideMm', true), seal('widthMm', true), seal('construction', true), seal('lipMaterial', true), seal('hasDustLip')],
    more: [seal('turns'), seal('caseThicknessMm'), seal('faceThicknessMm'), seal('edgeRadiusMm'), seal('caseYieldMpa'), seal('ratedPressureMpa'), seal('marking')],
  },
  {
    name: 'place',
    entries: [seatKind(), place('lipFacing'), place('fluidSide'), place('behind'), place('clearBehindMm'), place('retainedBy'), place('reachableFrom'), track('catchesNail', 'a fingernail catches in the old lip track')],
    more: [track('fromFaceMm'), track('widthMm'), track('depthMm')],
  },
  {
    name: 'shaft',
    entries: [shaft('protrusionMm'), entryOf('position', 'shaft.leadIn.kind', field(shaftEnd, 'kind'))],
    more: [
      entryOf('position', 'shaft.leadIn.diameterReductionMm', field(shaftEnd, 'diameterReductionMm')),
      entryOf('position', 'shaft.leadIn.angleDeg', field(shaftEnd, 'angleDeg')),
      entryOf('position', 'shaft.leadIn.radiusMm', field(shaftEnd, 'radiusMm')),
      shaft('roughnessRaUm'),
      shaft('hardnessHrc'),
      shaft('runoutMm'),
      shaft('offsetMm'),
      shaft('leadAngleDeg'),
      shaft('diameterMm'),
      shaft('material', metals()),
    ],
  },
  {
    name: 'bore',
    entries: [bore('material', metals()), bore('depthMm'), bore('innerEnd')],
    more: [
      bore('shoulderInsideMm'),
      entryOf('position', 'bore.leadIn.lengthMm', field(boreChamfer, 'lengthMm')),
      entryOf('position', 'bore.leadIn.angleDeg', field(boreChamfer, 'angleDeg')),
      bore('faceDiameterMm'),
      bore('housingOutsideMm'),
      bore('roughnessRaUm'),
      bore('isSplit'),
      bore('diameterMm'),
    ],
  },
  {
    name: 'bearing',
    entries: [bearing('designation'), bearing('shaftClass'), bearing('housingClass'), bearing('innerRingLoad'), bearing('outerRingLoad'), bearing('outerRingHeldBy'), bearing('radialLoadN')],
    more: [
      bearing('boreMm'), bearing('outsideMm'), bearing('widthMm'), bearing('bearingKind'), bearing('clearanceGroup'), bearing('bearingToleranceClass'), seatFinish(), bearing('isSealedOrGreased'), bearing('hasPolymerCage'), bearing('housingOutsideMm'), bearing('shaftBoreMm'),
      bearing('caseLimitC'), bearing('coldestPartC'), bearing('bearingSpacingMm'), bearing('basicDynamicLoadRatingN'), bearing('basicStaticLoadRatingN'), bearing('isBlindBore'), bearing('mustBeReused'),
    ],
  },
  {
    name: 'running',
    entries: [running('speedRpm'), running('fluid'), running('fluidTemperatureC'), running('housingTemperatureC'), rotation()],
    more: [running('pressureMpa'), running('pressureLowMpa'), running('pressureHighMpa'), running('coldestC'), running('hoursPerYear')],
  },
  { name: 'tools', entries: [], more: [] },
  {
    name: 'machine',
    entries: [
      entryOf('machine', 'name', field(machine, 'name'), { isRequired: true }),
      entryOf('position', 'name', positionName(), { isRequired: true }),
      entryOf('position', 'onShaft', field(innerShape(field(machine, 'positions')), 'onShaft')),
      entryOf('machine', 'kind', field(machine, 'kind')),
      entryOf('machine', 'hourMeterHours', field(machine, 'hourMeterHours')),
      entryOf('machine', 'serviceIntervalHours', field(machine, 'serviceIntervalHours')),
    ],
    more: [
      entryOf('machine', 'serviceIntervalDays', field(machine, 'serviceIntervalDays')),
      entryOf('position', 'serviceIntervalHours', field(innerShape(field(machine, 'positions')), 'serviceIntervalHours')),
      entryOf('position', 'serviceIntervalDays', field(innerShape(field(machine, 'positions')), 'serviceIntervalDays')),
      entryOf('file', 'requirementSet', requirementSetField),
      entryOf('file', 'lengthUnit', field(workshopFileField.shape, 'lengthUnit')),
    ],
  },
]);

/** What a bearing asks of its place; all else there is about the lip of a seal. */
const asksOfPlace: ReadonlySet<string> = new Set(['shaft.material', 'bore.material', 'running.speedRpm', 'running.fluidTemperatureC', 'running.housingTemperatureC', 'running.coldestC', 'running.hoursPerYear']);

/** The group where a bearing stands without a seal: what is about the lip goes behind the rest. */
export function withoutLip(group: Group): Group {
  if (!['shaft', 'bore', 'running'].includes(group.name)) return group;
  const all = [...group.entries, ...group.more];
  return { ...group, entries: all.filter(({ path }) => asksOfPlace.has(path)), more: all.filter(({ path }) => !asksOfPlace.has(path)) };
}

export const obstacleForm = inLanguage((): ItemForm => ({ scope: 'position', path: 'shaft.obstacles', fields: itemFields(obstacleField.shape), fresh: {} }));
export const toolForm = inLanguage((): ItemForm => ({
  scope: 'file',
  path: 'toolsAtHand',
  fields: itemFields(toolField.shape, ['name', 'kind', 'outsideMm', 'wallMm', 'insideMm', 'lengthMm', 'material'], { material: toolMaterials() }),
  fresh: { kind: 'tube' },
}));

type Shape = Readonly<Record<string, z.core.$ZodType>>;

function itemFields(shape: Shape, keys: readonly string[] = Object.keys(shape), choices: Readonly<Record<string, readonly Choice[]>> = {}): ItemForm['fields'] {
  return keys.map((key) => {
    const chosen = choices[key];
    const { label, help, entry, isRequired } = entryOf('file', key, field(shape, key), chosen === undefined ? {} : { choices: chosen });
    return { key, entry: { label, help, entry, isRequired } };
  });
}

function field(shape: Shape, key: string): z.core.$ZodType {
  const found = shape[key];
  if (found === undefined) throw new Error(`no field ${key}`);
  return found;
}

/** The fields of an object that may be left out, or of a list's entries. */
function innerShape(schema: z.core.$ZodType): Shape {
  const { def } = schema._zod;
  if (def.type === 'optional') return innerShape((def as z.core.$ZodOptionalDef).innerType);
  if (def.type === 'array') return innerShape((def as z.core.$ZodArrayDef).element);
  return (def as z.core.$ZodObjectDef).shape;
}

function machineShape(): Shape {
  return innerShape(workshopFileField.shape.machines);
}

function positionName(): z.core.$ZodType {
  return field(innerShape(field(machineShape(), 'positions')), 'name');
}
