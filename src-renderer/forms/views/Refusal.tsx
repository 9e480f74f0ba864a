import row from '../fields/FieldRow.module.css';

interface Props {
  /** null where nothing was refused. */
  readonly sentence: string | null;
}

/** Why a button did nothing; read out when it appears. */
export function Refusal({ sentence }: Props) {
  if (sentence === null) return null;
  return (
    <p role="alert" className={row.sentence}>
      {sentence}
    </p>
  );
}
