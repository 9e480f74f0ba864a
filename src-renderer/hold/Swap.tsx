import type { Job, Piece } from '../../src-core/job';
import type { ProposedOrder } from '../../src-core/sequence';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import type { HeldUp } from '../state/day-store';
import { useStore } from '../state/store-context';
import { tapeEndRatio } from '../verdict/tape';
import { Finding } from './Finding';
import styles from './Swap.module.css';
import { SwapStepItem } from './SwapStepItem';
import { offerWords, orderWords, stepRows, wholeFindings } from './step-rows';
import { useSwapOrder as useSwapOrderCommand } from './use-swap-order';

interface Props {
  readonly job: Job;
  readonly piece: Piece;
  /** undefined while it is being worked out. */
  readonly held: HeldUp | undefined;
}

/** The swap from falsework to what stays, step by step; a proposed order can be put into the job. */
export function Swap({ job, piece, held }: Props) {
  const store = useStore();
  const swap = held?.swap ?? null;
  const use = ({ steps, props }: ProposedOrder) => {
    const problems = store
      .getState()
      .run(useSwapOrderCommand, { pieceId: piece.id, steps, props: props.map(({ support }) => support) });
    store.getState().say(
      problems.length === 0
        ? { tone: 'plain', sentence: 'The order of the swap is in the job. Undo takes it out again.' }
        : {
            tone: 'trouble',
            sentence: `The order does not fit the drawing any more: ${problems[0]!.sentence}`,
            details: problems.slice(1).map(({ sentence }) => sentence),
          },
    );
  };
  return (
    <section aria-labelledby="swap-heading" aria-busy={held === undefined}>
      <Heading id="swap-heading">The swap</Heading>
      {held === undefined && (
        <p className={styles.wait} role="status">
          Working out the steps, each with the concrete of its day.
        </p>
      )}
      {held !== undefined && swap === null && <p className={styles.wait}>{held.swapWords}</p>}
      {swap !== null && (
        <>
          <p className={styles.order}>{orderWords(swap)}</p>
          {swap.proposal !== null && <OrderToUse order={swap.proposal} use={use} label="Use this order" />}
          {swap.offer !== null && (
            <>
              <p className={styles.order}>
                <Prose text={offerWords(piece, swap.offer)} />
              </p>
              <OrderToUse order={swap.offer} use={use} label="Use that order" />
            </>
          )}
          <ol className={styles.steps}>
            {stepRows(job, piece, swap).map((row) => (
              <SwapStepItem
                key={row.id}
                row={row}
                endRatio={tapeEndRatio(swap.steps.map(({ worst }) => worst.ratio))}
              />
            ))}
          </ol>
          <ul>
            {wholeFindings(swap).map((finding) => (
              <Finding key={`${finding.id} ${finding.title}`} finding={finding} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

interface OrderProps {
  readonly order: ProposedOrder;
  readonly use: (order: ProposedOrder) => void;
  readonly label: string;
}

/** The props that an order needs, and the button that puts both into the job. */
function OrderToUse({ order, use, label }: OrderProps) {
  return (
    <>
      {order.props.length > 0 && (
        <ul className={styles.props} aria-label="Props that it needs">
          {order.props.map(({ id, words }) => (
            <li key={id}>
              <Prose text={words} />
            </li>
          ))}
        </ul>
      )}
      <Button weight="main" onPress={() => use(order)}>
        {label}
      </Button>
    </>
  );
}
