import { TriangleAlert } from 'lucide-react';
import styles from './Trouble.module.css';

interface Props {
  readonly sentence: string;
  readonly details?: readonly string[];
}

/** A sentence about what went wrong, read out at once. */
export function Trouble({ sentence, details = [] }: Props) {
  return (
    <div className={styles.trouble} role="alert">
      <TriangleAlert size={16} aria-hidden />
      <div>
        <p>{sentence}</p>
        {details.length > 0 && (
          <ul className={styles.details}>
            {details.map((detail) => (
              <li key={detail}>{detail}</li>
            ))}
          </ul>
        )}
      </div>
    </div>
  );
}
