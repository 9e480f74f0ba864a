/** Parts of the supports put together, so that one support in one material is drawn at one go. */
import type { Solid, SolidMaterial, SupportSolid } from '../../src-core/solid';
import { mergedSolid } from './solid-arrays';

export interface SupportGroup {
  readonly key: string;
  readonly supportId: string | null;
  readonly material: SolidMaterial;
  readonly solids: readonly Solid[];
  readonly merged: Solid;
}

/** One group a support and material, in the order in which they first come. */
export function supportGroups(parts: readonly SupportSolid[]): SupportGroup[] {
  const groups = new Map<string, SupportSolid[]>();
  for (const part of parts) {
    const key = `${part.supportId ?? ''} ${part.material}`;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups].map(([key, members]) => {
    const solids = members.map(({ solid }) => solid);
    const { supportId, material } = members[0]!;
    return { key, supportId, material, solids, merged: mergedSolid(solids) };
  });
}
