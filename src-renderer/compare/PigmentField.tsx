import { useState } from 'react';
import { Input, Label, NumberField, TextField } from 'react-aria-components';
import type { Piece } from '../../src-core/job';
import styles from './PigmentField.module.css';

interface Props {
  readonly colour: Piece['colour'];
  readonly onChange: (colour: Piece['colour']) => void;
}

/** A usual dose where a pigment is first named. Common practice, no source. */
const USUAL_RATIO = 0.03;
const MOST_RATIO = 0.2;
const STEP_RATIO = 0.005;
const LONGEST_NAME = 120;

/** Name of the pigment, empty for none, and its share of the cement by weight. */
export function PigmentField({ colour, onChange }: Props) {
  const given = colour?.pigment ?? '';
  const [typed, setTyped] = useState<string | null>(null);
  // Taken on leaving the field or on Enter: each letter would be another version to check.
  const take = () => {
    if (typed === null) return;
    const pigment = typed.trim();
    setTyped(null);
    onChange(pigment === '' ? null : { pigment, pigmentRatio: colour?.pigmentRatio ?? USUAL_RATIO });
  };
  return (
    <>
      <TextField
        className={styles.field!}
        value={typed ?? given}
        maxLength={LONGEST_NAME}
        onChange={setTyped}
        onBlur={take}
        onKeyDown={({ key }) => {
          if (key === 'Enter') take();
        }}
      >
        <Label className={styles.label!}>Pigment</Label>
        <Input className={styles.input!} placeholder="none" autoComplete="off" />
      </TextField>
      {colour !== null && (
        <NumberField
          className={styles.field!}
          value={colour.pigmentRatio}
          minValue={0}
          maxValue={MOST_RATIO}
          step={STEP_RATIO}
          formatOptions={{ style: 'percent', maximumFractionDigits: 1 }}
          onChange={(pigmentRatio) => {
            if (Number.isFinite(pigmentRatio)) onChange({ ...colour, pigmentRatio });
          }}
        >
          <Label className={styles.label!}>Share of the cement</Label>
          <Input className={styles.input!} />
        </NumberField>
      )}
    </>
  );
}
