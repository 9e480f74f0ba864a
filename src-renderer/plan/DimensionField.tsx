import { useRef, useState } from 'react';
import { FieldError, Form, Input, TextField } from 'react-aria-components';
import type { UnitSystem } from '../../src-core/units';
import { parseLength, printLength } from '../../src-core/units';
import { useStore } from '../state/store-context';
import styles from './DimensionField.module.css';
import type { PlacedDimension } from './place-dimensions';
import { setDimension } from './plan-edits';

interface Props {
  readonly pieceId: string;
  readonly placed: PlacedDimension;
  readonly system: UnitSystem;
  readonly onClose: () => void;
}

/** Takes a typed length for a dimension. What cannot be read or built is said below it, and the old length stays. */
export function DimensionField({ pieceId, placed, system, onClose }: Props) {
  const store = useStore();
  const { dimension, at } = placed;
  const before = printLength(dimension.lengthIn, { system });
  const [text, setText] = useState(before);
  const [sentence, setSentence] = useState<string | null>(null);
  const isClosed = useRef(false);

  const close = () => {
    if (isClosed.current) return;
    isClosed.current = true;
    onClose();
  };
  /** Why the text cannot be taken, or null once it has been. */
  const take = (): string | null => {
    if (text.trim() === before) return null;
    const length = parseLength(text, system);
    if (!length.ok) return length.problem.sentence;
    const [problem] = setDimension(pieceId, dimension, length.valueIn)?.(store.getState().run) ?? [];
    return problem?.sentence ?? null;
  };

  return (
    <Form
      className={styles.form ?? ''}
      style={{ transform: `translate(${at.xPx}px, ${at.yPx}px) translate(-50%, -16px)` }}
      onSubmit={(event) => {
        event.preventDefault();
        const trouble = take();
        setSentence(trouble);
        if (trouble === null) close();
      }}
    >
      <TextField
        aria-label={dimension.words}
        value={text}
        onChange={(next) => {
          setText(next);
          setSentence(null);
        }}
        isInvalid={sentence !== null}
        validationBehavior="aria"
        autoFocus
        onKeyDown={(event) => {
          if (event.key === 'Escape') close();
        }}
        onBlur={() => {
          if (isClosed.current) return;
          take();
          close();
        }}
      >
        <Input className={styles.input ?? ''} onFocus={(event) => event.currentTarget.select()} />
        <FieldError className={styles.trouble ?? ''}>{sentence}</FieldError>
      </TextField>
    </Form>
  );
}
