/** Printed with every result, on screen and on paper. */
export const NOTICE =
  'Planning arithmetic for one builder, not engineered drawings. Local code and inspectors rule. Supports, walls, floors and anchors must be checked by someone who can see them. If in doubt leave the props in.';
