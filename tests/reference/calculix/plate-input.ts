/** A node of the plan mesh. */
export type PlanNode = { readonly xIn: number; readonly yIn: number };

/** Node numbers of a triangle, anticlockwise. */
export type Triangle = readonly [number, number, number];

/** A vertical force at a node; down is positive. */
export type NodeLoad = { readonly node: number; readonly forceLbf: number };

/**
 * A spring under a node. `push` bears once the slab has come down by `gapIn`, `pull` holds once it has risen by
 * `gapIn`, `both` is a plain spring whose top stands `gapIn` below the slab. A negative gap is a raised support.
 */
export type NodeSpring = {
  readonly node: number;
  readonly stiffnessLbfPerIn: number;
  readonly gapIn: number;
  readonly kind: 'push' | 'pull' | 'both';
};

/**
 * A node whose motion is prescribed. `raiseIn` holds its height (0 for a fixed support, up positive); `flatAlongX`
 * holds the slope dw/dx at zero and `flatAlongY` the slope dw/dy. A boundary edge with both ends held is held whole.
 */
export type NodeHold = {
  readonly node: number;
  readonly raiseIn?: number;
  readonly flatAlongX?: boolean;
  readonly flatAlongY?: boolean;
};

/**
 * A bracket's arm under the slab, held at `root` and reaching out along `directionRad` (from the x axis). The slab stands on
 * it by `contacts`, each over the arm's middle line. The fixing turns `fixingTurnPerLbfIn` radians for each lbf-in; 0 is rigid.
 */
export type Cantilever = {
  readonly root: PlanNode;
  readonly directionRad: number;
  readonly flexuralRigidityLbfIn2: number;
  readonly fixingTurnPerLbfIn: number;
  readonly contacts: readonly NodeSpring[];
};

/** A plain slab of one thickness, its loads and what carries it. */
export type PlateInput = {
  readonly nodes: readonly PlanNode[];
  readonly triangles: readonly Triangle[];
  readonly thicknessIn: number;
  readonly modulusPsi: number;
  readonly poissonRatio: number;
  readonly loads: readonly NodeLoad[];
  readonly pressurePsi?: number;
  readonly supports: readonly NodeSpring[];
  readonly arms?: readonly Cantilever[];
  readonly holds: readonly NodeHold[];
  /**
   * Divides the thickness by this ratio and multiplies the modulus by its cube: bending stiffness stays, shear
   * flexibility falls with its square. 1 is the true slab; about 10 comes close to thin-plate theory.
   */
  readonly thinningRatio?: number;
};

/** Bending moments per inch of width, tension at the bottom positive; Mxy = -D (1 - nu) d2w/dxdy with w down. */
export type Moments = {
  readonly mxLbfInPerIn: number;
  readonly myLbfInPerIn: number;
  readonly mxyLbfInPerIn: number;
};
