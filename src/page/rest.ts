import {AsRead, Facts} from './as-read.js'
import {Bake} from './bake.js'
import {Company} from './day.js'
import {heldOf} from './due.js'
import {stated} from './front.js'
import {KeepPage} from './keep-page.js'
import {moved} from './moved.js'
import {Oven} from './oven.js'
import {PlanPage} from './plan.js'
import {Print} from './print.js'

/** All of the page's script that the first view can do without: it is read once that is painted (`later.tsx`). */
export const rest = {AsRead, Bake, Company, Facts, heldOf, KeepPage, moved, Oven, PlanPage, Print, stated}

export type Rest = typeof rest

globalThis.hearthfallRest = rest
