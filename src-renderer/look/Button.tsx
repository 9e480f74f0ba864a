import type { ButtonProps } from 'react-aria-components';
import { Button as AriaButton } from 'react-aria-components';
import styles from './Button.module.css';

interface Props extends ButtonProps {
  /** `main` is the one thing to do, `quiet` stands in a line of text. Plain where left out. */
  readonly weight?: 'main' | 'plain' | 'quiet';
  /** Holds an icon alone; give it an `aria-label`. */
  readonly isIcon?: boolean;
}

/** The one button of the window. */
export function Button({ weight = 'plain', isIcon = false, ...rest }: Props) {
  const names = [styles.button, weight === 'plain' ? '' : styles[weight], isIcon ? styles.icon : ''];
  return <AriaButton {...rest} className={names.join(' ')} />;
}
