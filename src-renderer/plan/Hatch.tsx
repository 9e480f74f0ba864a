import { memo } from 'react';
import styles from './Hatch.module.css';

interface Props {
  readonly pxPerIn: number;
}

/** The hatch that shapes of the plan are filled with, as wide on screen at every scale. */
export const Hatch = memo(function Hatch({ pxPerIn }: Props) {
  return (
    <defs>
      <pattern
        id="plan-hatch"
        width={7}
        height={7}
        patternUnits="userSpaceOnUse"
        patternTransform={`scale(${1 / pxPerIn}) rotate(45)`}
      >
        <path d="M0 0V7" className={styles.hatch} />
      </pattern>
    </defs>
  );
});
