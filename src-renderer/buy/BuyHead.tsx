import { PanelHead } from '../look/PanelHead';
import { Prose } from '../look/Prose';

interface Props {
  readonly jobName: string;
  /** "47 things to buy, 3 ticked". */
  readonly title: string;
  /** What the list comes to; empty before the first answer. */
  readonly total: string;
  readonly state: string;
}

/** How much there is to buy, what it comes to as far as prices are known, and whether it is of the drawing as it is. */
export function BuyHead({ jobName, title, total, state }: Props) {
  return (
    <PanelHead about={jobName} state={state} title={title}>
      {total !== '' && (
        <p>
          <Prose text={total} />
        </p>
      )}
    </PanelHead>
  );
}
