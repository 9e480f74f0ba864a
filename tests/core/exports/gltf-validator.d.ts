/** What the tests use of the validator, which brings no types. Source: its README. */
declare module 'gltf-validator' {
  interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly { readonly code: string; readonly message: string }[];
    };
    readonly info: { readonly version: string; readonly drawCallCount: number };
  }

  export function validateBytes(bytes: Uint8Array): Promise<Report>;
}
