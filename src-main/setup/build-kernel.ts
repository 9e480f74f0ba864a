/** Assembles the engine's inner loops: `npm run kernel` writes src-core/plate/kernel-bytes.ts. */
import { writeFileSync } from 'node:fs';
import wabt from 'wabt';
import { KERNEL_TEXT } from './kernel-text';

const assembler = await wabt();
const parsed = assembler.parseWat('kernel.wat', KERNEL_TEXT, { simd: true });
const { buffer } = parsed.toBinary({});
const hex = Buffer.from(buffer).toString('hex');
const chunks = hex.match(/.{1,100}/g) ?? [];
const text = `/** Made by \`npm run kernel\` from src-main/setup/kernel-text.ts; do not edit. ${buffer.length} bytes of WebAssembly. */
export const KERNEL_HEX =
${chunks.map((chunk) => `  '${chunk}'`).join(' +\n')};
`;
writeFileSync(new URL('../../src-core/plate/kernel-bytes.ts', import.meta.url), text);
process.stdout.write(`kernel-bytes.ts: ${buffer.length} bytes\n`);
