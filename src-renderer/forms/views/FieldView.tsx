import type { Field } from '../specs/field';
import type { Target } from '../target';
import { BoundsView } from './BoundsView';
import { GroupView } from './GroupView';
import { KindsView } from './KindsView';
import { ListView } from './ListView';
import { PartsView } from './PartsView';
import { PartView } from './PartView';
import { PickView } from './PickView';
import { PointView } from './PointView';
import { ValueView } from './ValueView';

interface Props {
  readonly field: Field;
  readonly target: Target;
}

/** One field of a form, whatever its kind. */
export function FieldView({ field, target }: Props) {
  switch (field.kind) {
    case 'point':
      return <PointView field={field} target={target} />;
    case 'bounds':
      return <BoundsView field={field} target={target} />;
    case 'part':
      return <PartView field={field} target={target} />;
    case 'kinds':
      return <KindsView field={field} target={target} />;
    case 'list':
      return <ListView field={field} target={target} />;
    case 'parts':
      return <PartsView field={field} target={target} />;
    case 'pick':
      return <PickView field={field} target={target} />;
    case 'group':
      return <GroupView field={field} target={target} />;
    default:
      return <ValueView field={field} target={target} />;
  }
}
