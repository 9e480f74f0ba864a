import { useMemo } from 'react';
import { stands } from '../../src-core/analysis';
import type { Piece } from '../../src-core/job';
import { supportSolids } from '../../src-core/solid';
import { useDays } from '../state/day-store';
import type { Selection } from '../state/selection';
import { useJob, useWindow } from '../state/store-context';
import { useVerdict, useVerdicts } from '../state/verdict-store';
import { BendingMap } from './BendingMap';
import { CutSteel } from './CutSteel';
import { isCarriedThere } from './carried-there';
import { Formwork } from './Formwork';
import { MAP_LIFT_IN } from './map-geometry';
import { Pickable } from './Pickable';
import { liftIn } from './pulled-apart';
import { ReactionArrows } from './ReactionArrows';
import { RovingLoad } from './RovingLoad';
import { SagShape } from './SagShape';
import { SlabModel } from './SlabModel';
import { SteelInside } from './SteelInside';
import { SupportModel } from './SupportModel';
import { exaggerationOf, isSameMesh } from './sag';
import { supportGroups } from './support-groups';
import { useStanding } from './use-standing';

interface Props {
  readonly piece: Piece;
  /** Whether this is the piece that is looked at; it alone carries map, load and reactions. */
  readonly isChosen: boolean;
}

/** One piece with what it stands on, and what is known of it. */
export function PieceModel({ piece, isChosen }: Props) {
  const job = useJob();
  const options = useWindow(({ model }) => model);
  const hovered = useWindow(({ hover }) => keyWithin(hover, piece.id));
  const selected = useWindow(({ selection }) => keyWithin(selection, piece.id));
  const verdict = useVerdict(piece.id);
  const deflected = useVerdicts(({ deflected: shape }) => shape);
  const onDay = useStanding(job, piece);
  const governingOnDay = useDays(({ day, pieces }) =>
    day === onDay?.day ? (pieces[piece.id]?.governing ?? null) : null,
  );
  const allGroups = useMemo(() => supportGroups(supportSolids(piece)), [piece]);
  const temporary = useMemo(
    () => new Set(piece.supports.filter((support) => !stands(support, null)).map(({ id }) => id)),
    [piece],
  );

  const isHard = onDay === null || onDay.state === 'hard';
  const cast = isHard ? 'hard' : onDay.state === 'wet' ? 'wet' : 'not-yet';
  const groups = allGroups.filter(({ supportId }) =>
    supportId === null ? isCarriedThere(onDay) : onDay === null || onDay.supports.includes(supportId),
  );
  // map, bent shape and reactions are those of the finished job
  const map = isChosen && onDay === null ? (verdict?.map ?? null) : null;
  const shape = map !== null && deflected !== null && isSameMesh(map, deflected) ? deflected : null;
  const isBent = options.map === 'deflected' && map !== null && shape !== null;
  const governing = onDay === null ? (verdict?.result.governing ?? null) : isHard ? governingOnDay : null;
  const loadAt = isChosen ? (governing?.loadAt ?? null) : null;
  const slabLift = liftIn('slab', options.explodeShare);
  const top = piece.topElevationIn;
  const soffit = top - piece.thicknessIn;
  // seen through, the map goes to the soffit, where the steel above it can be seen
  const hasMapInside = options.isSeeThrough && options.map === 'bending' && map !== null;
  return (
    <>
      <Pickable selection={{ pieceId: piece.id, part: { kind: 'piece' } }} liftIn={slabLift}>
        <SlabModel
          piece={piece}
          isHovered={hovered === 'slab'}
          isSelected={selected !== null && !selected.startsWith('support ')}
          isSeeThrough={options.isSeeThrough}
          isGhost={isBent}
          cast={cast}
          hasMapInside={hasMapInside}
        />
      </Pickable>
      <group position-z={slabLift}>
        {(options.isSeeThrough || onDay?.state === 'formed') && (
          <SteelInside piece={piece} standoffSpacingIn={job.forms.standoffSpacingIn} />
        )}
        {options.cutShare !== null && cast !== 'not-yet' && <CutSteel piece={piece} />}
        {map !== null && options.map === 'bending' && (
          <BendingMap map={map} levelIn={hasMapInside ? soffit : top} />
        )}
        {isBent && <SagShape map={map} shape={shape} topIn={top} exaggeration={exaggerationOf(map, shape)} />}
        {shape !== null && options.showsReactions && (
          <ReactionArrows shape={shape} soffitIn={soffit} topIn={top} />
        )}
        {loadAt !== null && !isBent && <RovingLoad piece={piece} at={loadAt} topIn={top + MAP_LIFT_IN} />}
      </group>
      {onDay !== null && (
        <group position-z={slabLift}>
          <Formwork piece={piece} hasEdgeForms={onDay.formsStand} sections={onDay.sections} />
        </group>
      )}
      {groups.map((group) => (
        <Pickable
          key={group.key}
          selection={selectionOf(piece.id, group.supportId)}
          liftIn={liftIn(group.supportId === null ? 'bowl' : 'support', options.explodeShare)}
        >
          <SupportModel
            group={group}
            isHovered={group.supportId !== null && hovered === `support ${group.supportId}`}
            isSelected={group.supportId !== null && selected === `support ${group.supportId}`}
            isTemporary={onDay === null && group.supportId !== null && temporary.has(group.supportId)}
          />
        </Pickable>
      ))}
    </>
  );
}

/** What of a piece a selection means, as a word that can be compared: null for another piece. */
function keyWithin(selection: Selection | null, pieceId: string): string | null {
  if (selection === null || selection.pieceId !== pieceId) return null;
  return selection.part.kind === 'support' ? `support ${selection.part.id}` : 'slab';
}

function selectionOf(pieceId: string, supportId: string | null): Selection {
  return { pieceId, part: supportId === null ? { kind: 'piece' } : { kind: 'support', id: supportId } };
}
