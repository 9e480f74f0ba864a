import { useRef } from 'react';
import type { Job } from '../../src-core/job';
import type { Pour } from '../../src-core/pour';
import { useWidth } from '../days/use-width';
import { Heading } from '../look/Heading';
import { FillDrawing } from './FillDrawing';
import styles from './FillOrder.module.css';
import { fillRows } from './fill-rows';
import { PieceLink } from './PieceLink';

interface Props {
  readonly job: Job;
  readonly pour: Pour;
}

/** Which form is filled after which, where in each to begin, and the way its buckets go. */
export function FillOrder({ job, pour }: Props) {
  const list = useRef<HTMLOListElement>(null);
  const widthPx = useWidth(list);
  return (
    <section aria-labelledby="pour-order-heading">
      <Heading id="pour-order-heading">Where it goes</Heading>
      <ol ref={list} className={styles.list}>
        {fillRows(job, pour).map(({ piece, words, buckets }, k) => (
          <li key={piece.id} className={styles.item}>
            <p>
              <span className={styles.number}>{k + 1}</span>{' '}
              <PieceLink pieceId={piece.id} name={piece.name} />. {words}
            </p>
            <FillDrawing
              piece={piece}
              buckets={buckets}
              rails={pour.screed.find(({ pieceId }) => pieceId === piece.id)?.rails ?? []}
              widthPx={widthPx}
            />
          </li>
        ))}
      </ol>
      <p className={styles.key}>
        Front at the bottom. A dot is a bucket; a number is the batch that begins there. A dashed line is a
        rail for the straightedge.
      </p>
    </section>
  );
}
