/** Slabs and what they stand on as one binary glTF. */
import type { Buffer as ByteStore, Material } from '@gltf-transform/core';
import { Document, WebIO } from '@gltf-transform/core';
import { stands } from '../analysis';
import type { Job, Piece } from '../job';
import type { Solid, SolidMaterial, SupportSolid } from '../solid';
import { slabSolid, supportSolids } from '../solid';
import { MM_PER_IN } from '../units';
import { supportWords } from './support-words';

const M_PER_IN = MM_PER_IN / 1000;

/** Plain colours, linear red, green and blue from 0 to 1, and how metallic and rough they look. Common practice, no source. */
const LOOKS: {
  readonly [K in SolidMaterial]: {
    readonly colour: readonly [number, number, number];
    readonly metallic: number;
    readonly rough: number;
  };
} = {
  concrete: { colour: [0.48, 0.47, 0.44], metallic: 0, rough: 0.9 },
  timber: { colour: [0.56, 0.37, 0.19], metallic: 0, rough: 0.8 },
  'painted-panel': { colour: [0.75, 0.74, 0.7], metallic: 0, rough: 0.6 },
  block: { colour: [0.36, 0.36, 0.35], metallic: 0, rough: 1 },
  brick: { colour: [0.37, 0.13, 0.08], metallic: 0, rough: 1 },
  steel: { colour: [0.2, 0.21, 0.23], metallic: 0.8, rough: 0.5 },
  stone: { colour: [0.3, 0.29, 0.27], metallic: 0, rough: 0.9 },
  mortar: { colour: [0.55, 0.54, 0.5], metallic: 0, rough: 1 },
  sink: { colour: [0.6, 0.61, 0.63], metallic: 0.8, rough: 0.3 },
  equipment: { colour: [0.06, 0.06, 0.07], metallic: 0.2, rough: 0.6 },
};

interface Part {
  readonly name: string;
  readonly material: SolidMaterial;
  readonly solid: Solid;
}

/**
 * The slabs of a job and what they stand on on a day, or when the job is finished, as a binary glTF 2.0: metres, y up, the front of
 * the plan towards the viewer. One mesh a part, named by piece and part. Each piece stands once and level, where it lies in plan.
 * The writing library gives its bytes as a promise. Source: Khronos glTF 2.0, 3.4 (axes and units).
 */
export async function jobGlb(job: Job, day: number | null = null): Promise<Uint8Array<ArrayBuffer>> {
  const document = new Document();
  document.getRoot().getAsset().generator = 'Ledgewright';
  // A scene without nodes would not be sound, so that the parts hang on one node even where there are none.
  const whole = document.createNode(job.name);
  document.getRoot().setDefaultScene(document.createScene(job.name).addChild(whole));
  const buffer = document.createBuffer();
  const materials = new Map<SolidMaterial, Material>();
  for (const part of job.pieces.flatMap((piece) => partsOf(piece, day))) {
    const material = materials.get(part.material) ?? addMaterial(document, part.material);
    materials.set(part.material, material);
    whole.addChild(addPart(document, buffer, part, material));
  }
  if (materials.size === 0) buffer.dispose();
  return new WebIO().writeBinary(document);
}

function partsOf(piece: Piece, day: number | null): Part[] {
  const slab: Part = { name: `${piece.name}, slab`, material: 'concrete', solid: slabSolid(piece) };
  const standing = piece.supports.filter((support) => stands(support, day)).map(({ id }) => id);
  const others = supportSolids(piece)
    .filter(({ supportId }) => supportId === null || standing.includes(supportId))
    .map((part): Part => ({ ...part, name: `${piece.name}, ${partWords(piece, part)}, ${part.material}` }));
  return [slab, ...others].filter(({ solid }) => solid.triangles.length > 0);
}

function partWords(piece: Piece, { supportId }: SupportSolid): string {
  const support = piece.supports.find(({ id }) => id === supportId);
  return support === undefined ? 'carried' : supportWords(support);
}

function addMaterial(document: Document, material: SolidMaterial): Material {
  const { colour, metallic, rough } = LOOKS[material];
  return document
    .createMaterial(material)
    .setBaseColorFactor([...colour, 1])
    .setMetallicFactor(metallic)
    .setRoughnessFactor(rough);
}

function addPart(document: Document, buffer: ByteStore, { name, solid }: Part, material: Material) {
  const vectors = (array: Float32Array<ArrayBuffer>) =>
    document.createAccessor().setType('VEC3').setArray(array).setBuffer(buffer);
  const indices = document.createAccessor().setType('SCALAR').setBuffer(buffer);
  const primitive = document
    .createPrimitive()
    .setAttribute('POSITION', vectors(upright(solid.positions, M_PER_IN)))
    .setAttribute('NORMAL', vectors(upright(solid.normals, 1)))
    .setIndices(indices.setArray(Uint32Array.from(solid.triangles)))
    .setMaterial(material);
  return document.createNode(name).setMesh(document.createMesh(name).addPrimitive(primitive));
}

/** From z up to y up: x stays, up becomes y, and away from the viewer becomes -z. */
function upright(vectors: Float32Array, scale: number): Float32Array<ArrayBuffer> {
  const turned = new Float32Array(vectors.length);
  for (let i = 0; i < vectors.length; i += 3) {
    turned[i] = vectors[i]! * scale;
    turned[i + 1] = vectors[i + 2]! * scale;
    turned[i + 2] = -vectors[i + 1]! * scale;
  }
  return turned;
}
