import type {JSX} from 'preact'
import type {AshBed} from '../oven/types.js'
import {words} from './words.js'

const w = words.oven

/** The sizes of an oven as far as they are known, metres, each with the words it was given in. */
export interface Sizes {
  readonly shape: 'round' | 'oval' | 'rectangle'
  readonly depth: number | null
  readonly depthText: string
  readonly width: number | null
  readonly widthText: string
  readonly vault: number | null
  readonly vaultText: string
  readonly mouthWidth: number | null
  readonly mouthWidthText: string
  readonly mouthHeight: number | null
  readonly mouthHeightText: string
  /** Ash left along one side of the floor. */
  readonly ashBed: (AshBed & {readonly text: string}) | null
  readonly hearth: ReadonlyArray<{readonly material: string; readonly thickness: number; readonly text: string}>
  readonly walls: ReadonlyArray<{readonly material: string; readonly thickness: number; readonly text: string}>
}

const hatches = ['hatch-a', 'hatch-b', 'hatch-c', 'hatch-d'] as const

/** The oven to scale: its floor from above, and cut from mouth to back. It follows the sizes as they are typed. */
export function OvenDrawing({sizes}: {readonly sizes: Sizes}): JSX.Element {
  const depth = sizes.depth
  const width = sizes.width ?? sizes.depth
  if (depth === null || width === null)
    return (
      <figure class="drawing">
        <p>{w.noDrawing}</p>
      </figure>
    )
  const vault = sizes.vault ?? depth * 0.4
  const walls = sizes.walls.slice(0, 12)
  const hearth = sizes.hearth.slice(0, 12)
  const thick = Math.min(
    1.5,
    walls.reduce((sum, one) => sum + one.thickness, 0),
  )
  const under = Math.min(
    1.5,
    hearth.reduce((sum, one) => sum + one.thickness, 0),
  )
  // One scale for both drawings, so that they can be compared.
  const scale = 300 / Math.max(depth + 2 * thick, width + 2 * thick, vault + thick + under)
  const pad = 46
  const said = [
    `${w.floor} ${w.shapes[sizes.shape]} ${sizes.depthText}${sizes.shape === 'round' ? '' : ` x ${sizes.widthText}`}`,
    sizes.vault === null ? '' : `${w.vaultHeight} ${sizes.vaultText}`,
    sizes.mouthWidth === null ? '' : `${w.mouth} ${sizes.mouthWidthText} x ${sizes.mouthHeightText}`,
    sizes.ashBed === null ? '' : `${w.ashBed} ${sizes.ashBed.side} ${sizes.ashBed.text}`,
  ]
    .filter(Boolean)
    .join('; ')
  return (
    <figure class="drawing oven-drawing">
      <Above sizes={sizes} depth={depth} width={width} thick={thick} scale={scale} pad={pad} said={said} />
      <Section sizes={sizes} depth={depth} vault={vault} thick={thick} under={under} scale={scale} pad={pad} said={said} />
    </figure>
  )
}

function Patterns(): JSX.Element {
  return (
    <defs>
      {hatches.map((id, i) => (
        <pattern key={id} id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform={`rotate(${45 + i * 45})`}>
          <line x1="0" x2="0" y1="0" y2="7" class={i === 2 ? 'ink dotted' : 'ink'} />
        </pattern>
      ))}
    </defs>
  )
}

interface Common {
  readonly sizes: Sizes
  readonly depth: number
  readonly thick: number
  readonly scale: number
  readonly pad: number
  readonly said: string
}

function Above({sizes, depth, width, thick, scale, pad, said}: Common & {readonly width: number}): JSX.Element {
  const full = {x: (width + 2 * thick) * scale + 2 * pad, y: (depth + 2 * thick) * scale + 2 * pad}
  const cx = full.x / 2
  const cy = full.y / 2
  const outer = {x: (width / 2 + thick) * scale, y: (depth / 2 + thick) * scale}
  const inner = {x: (width / 2) * scale, y: (depth / 2) * scale}
  const mouth = ((sizes.mouthWidth ?? 0) / 2) * scale
  const box = sizes.shape === 'rectangle'
  const bed = sizes.ashBed
  return (
    <svg viewBox={`0 0 ${r(full.x)} ${r(full.y)}`} role="img" aria-label={`${w.drawnPlan}. ${w.drawnDesc(said)}`}>
      <Patterns />
      <text x={r(cx)} y="16" text-anchor="middle" class="label">
        {w.drawnPlan}
      </text>
      {box ? (
        <>
          <rect
            x={r(cx - outer.x)}
            y={r(cy - outer.y)}
            width={r(2 * outer.x)}
            height={r(2 * outer.y)}
            class="wall"
            fill="url(#hatch-a)"
          />
          <rect x={r(cx - inner.x)} y={r(cy - inner.y)} width={r(2 * inner.x)} height={r(2 * inner.y)} class="bare" />
        </>
      ) : (
        <>
          <ellipse cx={r(cx)} cy={r(cy)} rx={r(outer.x)} ry={r(outer.y)} class="wall" fill="url(#hatch-a)" />
          <ellipse cx={r(cx)} cy={r(cy)} rx={r(inner.x)} ry={r(inner.y)} class="bare" />
        </>
      )}
      {bed === null ? null : (
        <>
          <clipPath id="floor-wall">
            {box ? (
              <rect x={r(cx - inner.x)} y={r(cy - inner.y)} width={r(2 * inner.x)} height={r(2 * inner.y)} />
            ) : (
              <ellipse cx={r(cx)} cy={r(cy)} rx={r(inner.x)} ry={r(inner.y)} />
            )}
          </clipPath>
          <rect
            x={r(bed.side === 'right' ? cx + inner.x - bed.width * scale : cx - inner.x)}
            y={r(cy - inner.y)}
            width={r(bed.side === 'back' ? 2 * inner.x : bed.width * scale)}
            height={r(bed.side === 'back' ? bed.width * scale : 2 * inner.y)}
            class="wall ash-bed"
            fill="url(#hatch-c)"
            clip-path="url(#floor-wall)"
          >
            <title>{`${w.ashBed} ${bed.text}`}</title>
          </rect>
        </>
      )}
      {mouth > 0 ? (
        <>
          <rect
            x={r(cx - mouth)}
            y={r(cy + inner.y * 0.8)}
            width={r(2 * mouth)}
            height={r(outer.y - inner.y * 0.8 + 3)}
            class="opening"
          />
          <line x1={r(cx - mouth)} x2={r(cx - mouth)} y1={r(cy + inner.y)} y2={r(cy + outer.y + 3)} class="edge" />
          <line x1={r(cx + mouth)} x2={r(cx + mouth)} y1={r(cy + inner.y)} y2={r(cy + outer.y + 3)} class="edge" />
          <text x={r(cx)} y={r(full.y - 8)} text-anchor="middle" class="label">
            {w.mouth} {sizes.mouthWidthText}
          </text>
        </>
      ) : null}
      <Measure x1={cx - inner.x} y1={cy} x2={cx + inner.x} y2={cy} text={sizes.widthText} />
      {sizes.shape === 'round' ? null : (
        <Measure
          x1={cx - inner.x * 0.55}
          y1={cy - inner.y * 0.82}
          x2={cx - inner.x * 0.55}
          y2={cy + inner.y * 0.82}
          text={sizes.depthText}
          along={0.75}
        />
      )}
      <text x={r(cx)} y={r(cy - inner.y + 18)} text-anchor="middle" class="label">
        {w.back}
      </text>
    </svg>
  )
}

function Section({
  sizes,
  depth,
  vault,
  thick,
  under,
  scale,
  pad,
  said,
}: Common & {readonly vault: number; readonly under: number}): JSX.Element {
  const wide = (depth + 2 * thick) * scale
  const full = {x: wide + 2 * pad, y: (vault + thick + under) * scale + 2 * pad}
  const left = pad + thick * scale
  const right = left + depth * scale
  const base = pad + (thick + vault) * scale
  const mouth = Math.min(sizes.mouthHeight ?? 0, vault) * scale
  let out = 0
  let down = 0
  // The vault as half an ellipse over the floor, each layer outside the last.
  const arch = (by: number): string =>
    `M${r(left - by * scale)},${r(base)} A${r((depth / 2 + by) * scale)},${r((vault + by) * scale)} 0 0 1 ${r(right + by * scale)},${r(base)} Z`
  const shells = sizes.walls.slice(0, 12).map((one, i) => {
    out += one.thickness
    return {by: Math.min(out, 1.5), hatch: hatches[i % hatches.length]!, one}
  })
  return (
    <svg viewBox={`0 0 ${r(full.x)} ${r(full.y)}`} role="img" aria-label={`${w.drawnSection}. ${w.drawnDesc(said)}`}>
      <text x={r(full.x / 2)} y="16" text-anchor="middle" class="label">
        {w.drawnSection}
      </text>
      {[...shells].reverse().map(({by, hatch, one}) => (
        <g key={`${by}`}>
          <path d={arch(by)} class="bare" />
          <path d={arch(by)} class="wall" fill={`url(#${hatch})`}>
            <title>{`${one.material} ${one.text}`}</title>
          </path>
        </g>
      ))}
      <path d={arch(0)} class="bare" />
      {sizes.hearth.slice(0, 12).map((one, i) => {
        const top = base + down * scale
        down += one.thickness
        return (
          <rect
            key={`${i}`}
            x={r(pad)}
            y={r(top)}
            width={r(wide)}
            height={r(Math.min(one.thickness, 1.5) * scale)}
            class="wall"
            fill={`url(#${hatches[(i + 1) % hatches.length]})`}
          >
            <title>{`${one.material} ${one.text}`}</title>
          </rect>
        )
      })}
      {mouth > 0 ? (
        <>
          <rect
            x={r(pad - 2)}
            y={r(base - mouth)}
            width={r(thick * scale + depth * scale * 0.06 + 2)}
            height={r(mouth)}
            class="opening"
          />
          <line x1={r(pad)} x2={r(left + depth * scale * 0.05)} y1={r(base - mouth)} y2={r(base - mouth)} class="edge" />
          <text x="2" y={r(base - mouth / 2 + 5)} class="label">
            {w.mouth} {sizes.mouthHeightText}
          </text>
        </>
      ) : null}
      {sizes.vault === null ? null : (
        <Measure x1={(left + right) / 2} y1={base} x2={(left + right) / 2} y2={base - vault * scale} text={sizes.vaultText} />
      )}
    </svg>
  )
}

/** A line with its measure, ends marked. */
function Measure({
  x1,
  y1,
  x2,
  y2,
  text,
  along = 0.5,
}: {
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly text: string
  /** Where on the line the figure stands, as a share of it: two lines that cross have theirs apart. */
  readonly along?: number
}): JSX.Element {
  const upright = x1 === x2
  return (
    <g>
      <line x1={r(x1)} y1={r(y1)} x2={r(x2)} y2={r(y2)} class="measure" />
      {[
        [x1, y1],
        [x2, y2],
      ].map(([x, y], i) => (
        <line
          key={`${i}`}
          x1={r(upright ? x! - 5 : x!)}
          x2={r(upright ? x! + 5 : x!)}
          y1={r(upright ? y! : y! - 5)}
          y2={r(upright ? y! : y! + 5)}
          class="measure"
        />
      ))}
      <text
        x={r(x1 + (x2 - x1) * along + (upright ? 7 : 0))}
        y={r(y1 + (y2 - y1) * along - (upright ? 0 : 6))}
        text-anchor={upright ? 'start' : 'middle'}
        class="figure"
      >
        {text}
      </text>
    </g>
  )
}

const r = (value: number): number => Math.round(value * 10) / 10
