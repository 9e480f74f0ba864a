/** Every limit that is a choice rather than a law of mechanics, in one table. Editable; sources beside each. */
export interface Limits {
  /** From this share of a limit on, a check is marked amber. */
  readonly amberFrom: number;
  /** A ratio this near to 1 says so. */
  readonly nearLimit: number;
  /** Safety factor of a loose slab against turning over. */
  readonly tippingFactor: number;
  readonly tieFactor: number;
  readonly overhangEngineerIn: number;
  readonly overhangUnbracketedEngineerIn: number;
  readonly freeSpanEngineerIn: number;
  readonly thinnestIn: number;
  readonly thickestIn: number;
  readonly bracketReachEngineerIn: number;
  readonly crackWidthEngineerIn: number;
  readonly crackWidthDryIn: number;
  readonly crackWidthWetIn: number;
  readonly heavyPieceLb: number;
  /** Deflection of a span as a share of it, and the step that an eye sees against a cabinet. */
  readonly deflectionSpanShare: number;
  readonly deflectionStepIn: number;
  /** No limit of deflection is set finer than this, however short the overhang. */
  readonly deflectionLeastIn: number;
  /** Concrete beside a cutout narrower than this is looked at as a strip. */
  readonly narrowStripIn: number;
  readonly coverUnderTopIn: number;
  readonly coverWetFaceIn: number;
  /** Trade rules, shown as hints and never as checks. */
  readonly ruleOverhangShare: number;
  readonly ruleOverhangIn: number;
  readonly ruleBracketSpacingIn: number;
  readonly ruleBracketReachShare: number;
}

/** Common practice, no source, unless a line says otherwise. */
export const DEFAULT_LIMITS: Limits = {
  amberFrom: 0.8,
  nearLimit: 0.03,
  tippingFactor: 1.5,
  tieFactor: 1.5,
  overhangEngineerIn: 24,
  overhangUnbracketedEngineerIn: 16,
  freeSpanEngineerIn: 96,
  thinnestIn: 1,
  thickestIn: 6,
  bracketReachEngineerIn: 16,
  crackWidthEngineerIn: 0.016, // ACI 224R-01 Table 4.1, dry air; from memory
  crackWidthDryIn: 0.016, // ACI 224R-01 Table 4.1, dry air; from memory
  crackWidthWetIn: 0.008, // ACI 224R-01 Table 4.1, between sea water and de-icers; from memory
  heavyPieceLb: 1000,
  deflectionSpanShare: 1 / 360, // ACI 318-19 Table 24.2.2, floors with live load
  deflectionStepIn: 1 / 16,
  deflectionLeastIn: 1 / 32,
  narrowStripIn: 6,
  coverUnderTopIn: 0.5,
  coverWetFaceIn: 0.75,
  ruleOverhangShare: 1 / 3,
  ruleOverhangIn: 10,
  ruleBracketSpacingIn: 24,
  ruleBracketReachShare: 2 / 3,
};
