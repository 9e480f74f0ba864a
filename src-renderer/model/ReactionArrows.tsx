import { useMemo } from 'react';
import type { DeflectedShape } from '../../src-core/field-map';
import { printForce } from '../../src-core/units';
import { useJob } from '../state/store-context';
import { Arrow } from './Arrow';
import { reactionMarks } from './reaction-marks';
import { SceneLabel } from './SceneLabel';
import { useSceneLook } from './scene-look';

interface Props {
  readonly shape: DeflectedShape;
  /** Underside of the slab above the floor, and its top, in. */
  readonly soffitIn: number;
  readonly topIn: number;
}

/**
 * What each contact point gives back, longer for more; rings where the slab has come off. They show through the supports, in which
 * most of them stand.
 */
export function ReactionArrows({ shape, soffitIn, topIn }: Props) {
  const { chalk, change } = useSceneLook();
  const { shownIn } = useJob();
  const { arrows, off, offLabels, biggest } = useMemo(() => reactionMarks(shape.contacts), [shape]);
  return (
    <>
      {arrows.map(({ xIn, yIn, lengthIn, isPush }) => (
        <Arrow
          key={`${xIn} ${yIn} ${isPush}`}
          at={[xIn, yIn, isPush ? soffitIn : topIn]}
          lengthIn={lengthIn}
          isUp={isPush}
          color={isPush ? chalk : change}
          headIn={0.7}
          isOnTop
        />
      ))}
      {off.map(({ xIn, yIn }) => (
        <mesh key={`off ${xIn} ${yIn}`} position={[xIn, yIn, soffitIn - 0.1]} renderOrder={10}>
          <torusGeometry args={[0.9, 0.14, 6, 20]} />
          <meshBasicMaterial color={change} depthTest={false} transparent />
        </mesh>
      ))}
      {offLabels.map(({ xIn, yIn }) => (
        <SceneLabel key={`word ${xIn} ${yIn}`} at={[xIn, yIn, soffitIn - 2]} words="lifts off" tone="off" />
      ))}
      {biggest !== null && (
        <SceneLabel
          at={[biggest.xIn, biggest.yIn, biggest.totalLbf > 0 ? soffitIn - 16 : topIn + 16]}
          words={`${printForce(Math.abs(biggest.totalLbf), { system: shownIn, digits: 3 })} in all`}
        />
      )}
    </>
  );
}
