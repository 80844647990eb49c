import {words} from './row.js'

/** Ids of the items that are a bird or a part of one. */
export const poultry: readonly string[] = words(
  'chicken, turkey, goose, duck, pigeon, partridge, grouse, pheasant, chicken thigh, chicken drumstick, chicken leg, chicken breast, chicken wing, turkey leg, turkey drumstick, turkey thigh, turkey wing, turkey breast, duck leg, duck breast, goose leg, goose breast, pheasant breast, pheasant leg, pigeon breast, poussin, quail, snipe, plover, lark, wild duck, teal, chicken mince, turkey mince',
)
