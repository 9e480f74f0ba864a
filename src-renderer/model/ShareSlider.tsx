import { Label, Slider, SliderOutput, SliderThumb, SliderTrack } from 'react-aria-components';
import styles from './ShareSlider.module.css';

interface Props {
  readonly label: string;
  /** 0 to 1. */
  readonly share: number;
  readonly onChange: (share: number) => void;
}

/** A share set by sliding, printed in per cent. */
export function ShareSlider({ label, share, onChange }: Props) {
  return (
    <Slider
      className={styles.slider ?? ''}
      value={share}
      onChange={onChange}
      minValue={0}
      maxValue={1}
      step={0.01}
      formatOptions={{ style: 'percent' }}
    >
      <Label>{label}</Label>
      <SliderOutput className={styles.output ?? ''} />
      <SliderTrack className={styles.track ?? ''}>
        <SliderThumb className={styles.thumb ?? ''} />
      </SliderTrack>
    </Slider>
  );
}
