/** Inputs of a formula by the symbols of its source; units stand in the docstring and in the spec. */
export type Symbols<Name extends string> = Readonly<Record<Name, number>>;
