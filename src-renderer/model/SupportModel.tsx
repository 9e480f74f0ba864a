import { BoldLines } from './BoldLines';
import { CutFaces } from './CutFaces';
import { InkLines } from './InkLines';
import { SolidFaces } from './SolidFaces';
import { useSceneLook } from './scene-look';
import type { SupportGroup } from './support-groups';
import { MATERIAL_LOOKS } from './support-look';

interface Props {
  readonly group: SupportGroup;
  readonly isHovered: boolean;
  readonly isSelected: boolean;
  /** Whether it stands only for a time: drawn faint, since the finished slab does without it. */
  readonly isTemporary: boolean;
}

/** One support in one of its materials. */
export function SupportModel({ group, isHovered, isSelected, isTemporary }: Props) {
  const { ink, chalk, isDark } = useSceneLook();
  const { rgb, roughness, metalness, grain } = MATERIAL_LOOKS[group.material];
  return (
    <>
      <SolidFaces
        solid={group.merged}
        rgb={rgb}
        roughness={roughness}
        metalness={metalness}
        grain={grain}
        opacity={isTemporary ? 0.3 : 1}
      />
      <InkLines
        lines={group.merged.inkLines}
        color={isHovered ? chalk : ink}
        opacity={isTemporary ? 0.3 : isDark ? 0.45 : 0.7}
      />
      {isSelected && <BoldLines lines={group.merged.inkLines} color={chalk} widthPx={2} />}
      {!isTemporary && <CutFaces solids={group.solids} rgb={rgb} />}
    </>
  );
}
