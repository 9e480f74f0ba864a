import type { Ref, RefObject } from 'react';
import { useMemo } from 'react';
import { Plane, Vector3 } from 'three';
import { useJob, usePiece, useWindow } from '../state/store-context';
import type { CameraHandle } from './CameraRig';
import { CameraRig } from './CameraRig';
import { Daylight } from './Daylight';
import { FrameReport } from './FrameReport';
import { Ground } from './Ground';
import { grainTiles } from './grain-tiles';
import { Person } from './Person';
import { PieceModel } from './PieceModel';
import { personBounds, placeForPerson } from './person';
import { ballRound, cornerBounds, cutAtIn, jobBounds, pieceBounds } from './scene-bounds';
import { SceneLookProvider } from './scene-look';
import { useDisposal } from './use-disposal';
import { useTokens } from './use-tokens';

interface Props {
  readonly stage: RefObject<HTMLElement | null>;
  readonly camera: Ref<CameraHandle>;
}

/** Everything that stands in the model. */
export function ModelScene({ stage, camera }: Props) {
  const job = useJob();
  const chosen = usePiece();
  const day = useWindow((state) => state.day);
  const options = useWindow(({ model }) => model);
  const isDark = useWindow(({ theme }) => theme === 'dark');
  const tokens = useTokens();
  const all = useMemo(() => jobBounds(job), [job]);
  const ball = useMemo(() => ballRound(all), [all]);
  const person = useMemo(() => {
    return placeForPerson(pieceBounds(chosen), job.pieces.map(pieceBounds));
  }, [job, chosen]);
  const corners = useMemo(() => job.pieces.flatMap(cornerBounds), [job]);
  const others = useMemo(
    () => job.pieces.filter(({ id }) => id !== chosen.id).map(pieceBounds),
    [job, chosen.id],
  );
  const selected = useMemo(() => {
    const own = cornerBounds(chosen);
    return options.showsPerson ? [...own, personBounds(person)] : own;
  }, [chosen, person, options.showsPerson]);
  const tiles = useMemo(grainTiles, []);
  useDisposal(tiles);
  const look = useMemo(() => {
    const cut = options.cutShare === null ? null : cutAtIn(all, options.cutShare);
    const cutPlanes = cut === null ? [] : [new Plane(new Vector3(-1, 0, 0), cut)];
    return { ...tokens, isDark, grainTiles: tiles, cutPlanes, cutAtIn: cut };
  }, [tokens, isDark, tiles, all, options.cutShare]);

  const { isSeeThrough, explodeShare, map, cutShare } = options;
  return (
    <SceneLookProvider value={look}>
      <CameraRig ref={camera} all={corners} selected={selected} others={others} />
      <Daylight
        middle={ball.middle}
        radiusIn={ball.radiusIn}
        job={job}
        shadowsOf={`${chosen.id} ${isSeeThrough} ${explodeShare} ${cutShare} ${map} ${day}`}
      />
      <Ground middle={ball.middle} radiusIn={ball.radiusIn} />
      {job.pieces.map((piece) => (
        <PieceModel key={piece.id} piece={piece} isChosen={piece.id === chosen.id} />
      ))}
      {options.showsPerson && <Person at={person} />}
      <FrameReport stage={stage} />
    </SceneLookProvider>
  );
}
