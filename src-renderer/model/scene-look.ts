/** Colours of the theme and the plane of the cut, for every part of the scene. */
import { createContext, use } from 'react';
import type { Plane } from 'three';
import type { GrainTiles } from './grain-tiles';

export interface SceneLook {
  readonly ink: string;
  readonly soft: string;
  readonly chalk: string;
  readonly change: string;
  readonly paper: string;
  readonly isDark: boolean;
  readonly grainTiles: GrainTiles;
  /** Empty where nothing is cut. */
  readonly cutPlanes: Plane[];
  /** Place of the cut along x, in; null where nothing is cut. What lies beyond it is taken away. */
  readonly cutAtIn: number | null;
}

const Look = createContext<SceneLook | null>(null);

export const SceneLookProvider = Look.Provider;

/** The look of the scene that this part stands in. */
export function useSceneLook(): SceneLook {
  const look = use(Look);
  if (look === null) throw new Error('a part of the model was drawn outside its scene');
  return look;
}
