import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { FormTable } from '../falsework/FormTable';
import { bucketRows } from './bucket-rows';
import { PieceLink } from './PieceLink';

interface Props {
  readonly pour: Pour;
  readonly startMinutes: number;
  readonly system: UnitSystem;
}

/** Every bucket with its batch, its time, its form and its weight. */
export function BucketTable({ pour, startMinutes, system }: Props) {
  return (
    <FormTable caption="Batch and bucket, when it is tipped, and into which form">
      <thead>
        <tr>
          <th scope="col">Bucket</th>
          <th scope="col">At</th>
          <th scope="col">Form</th>
          <th scope="col">Weight</th>
        </tr>
      </thead>
      <tbody>
        {bucketRows(pour, startMinutes, system).map(({ id, number, time, pieceId, name, weight }) => (
          <tr key={id}>
            <th scope="row">{number}</th>
            <td>{time}</td>
            <td>
              <PieceLink pieceId={pieceId} name={name} />
            </td>
            <td>{weight}</td>
          </tr>
        ))}
      </tbody>
    </FormTable>
  );
}
