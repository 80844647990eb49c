import {type ComponentChildren, createContext, type JSX} from 'preact'
import {useContext, useEffect, useId, useRef, useState} from 'preact/hooks'
import type {Message} from '../receipt/types.js'
import type {Drawing} from './protocol.js'
import {inAPause} from './slices.js'
import {words} from './words.js'

/** Why what is typed into a form cannot be put into its file; null where it can. */
const Refused = createContext<string | null>(null)

/** A form over a file that cannot be written to says so, and keeps what is typed into it. */
export function FormOver({
  refused,
  children,
}: {
  readonly refused: string | null
  readonly children: ComponentChildren
}): JSX.Element {
  return (
    <Refused.Provider value={refused}>
      {refused === null ? null : (
        <p class="fault" role="status">
          {refused}
        </p>
      )}
      {children}
    </Refused.Provider>
  )
}

/** A box to type a short value into, with its label. While it is being typed in, the file behind it does not change what stands in it. */
export function Field(props: {
  readonly label: string
  readonly value: string
  readonly onValue: (value: string) => void
  readonly example?: string | undefined
  readonly hint?: string | undefined
  readonly type?: 'text' | 'date'
  readonly mode?: 'decimal' | 'numeric' | 'text'
  readonly fault?: string | undefined
  readonly bare?: boolean
}): JSX.Element {
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const refused = useContext(Refused)
  const box = useRef<HTMLInputElement>(null)
  // Once the file is put right, what was typed meanwhile goes into it.
  const waited = useRef(false)
  useEffect(() => {
    if (refused !== null) {
      waited.current = true
      return
    }
    if (waited.current && draft !== null && draft !== props.value) props.onValue(draft)
    waited.current = false
    if (document.activeElement !== box.current) setDraft(null)
  }, [refused])
  const described = [props.hint ? `${id}-hint` : '', props.fault ? `${id}-fault` : ''].filter(Boolean).join(' ')
  return (
    <div class={props.bare ? 'field bare' : 'field'}>
      <label for={id} class={props.bare ? 'unseen' : ''}>
        {props.label}
      </label>
      <input
        id={id}
        ref={box}
        type={(props.type ?? 'text') as 'text'}
        inputmode={props.mode ?? 'text'}
        autocomplete="off"
        spellcheck={false}
        value={draft ?? props.value}
        placeholder={props.example ?? ''}
        {...(props.fault ? {'aria-invalid': 'true' as const} : {})}
        {...(described ? {'aria-describedby': described} : {})}
        onFocus={() => setDraft(draft ?? props.value)}
        onBlur={() => {
          if (refused === null) setDraft(null)
        }}
        onInput={(event) => {
          const {value} = event.currentTarget
          setDraft(value)
          props.onValue(value)
        }}
      />
      {props.hint ? (
        <p class="hint" id={`${id}-hint`}>
          {props.hint}
        </p>
      ) : null}
      {props.fault ? (
        <p class="fault" id={`${id}-fault`}>
          {props.fault}
        </p>
      ) : null}
    </div>
  )
}

/** A choice of a few. */
export function Choice<T extends string>(props: {
  readonly label: string
  readonly value: T
  readonly options: ReadonlyArray<readonly [T, string]>
  readonly onValue: (value: T) => void
  readonly bare?: boolean
}): JSX.Element {
  const id = useId()
  return (
    <div class={props.bare ? 'field bare' : 'field'}>
      <label for={id} class={props.bare ? 'unseen' : ''}>
        {props.label}
      </label>
      <select id={id} value={props.value} onChange={(event) => props.onValue(event.currentTarget.value as T)}>
        {props.options.map(([value, text]) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  )
}

/** A long text to type in. The caret stays where it is when another tab changes what stands above it. */
export function Page(props: {
  readonly label: string
  readonly value: string
  readonly onValue: (value: string) => void
  readonly hint?: string | undefined
  readonly rows?: number
  readonly onLeave?: () => void
  readonly onPaste?: (event: ClipboardEvent) => void
  readonly focus?: boolean
}): JSX.Element {
  const id = useId()
  const box = useRef<HTMLTextAreaElement>(null)
  useEffect(() => {
    if (props.focus) box.current?.focus()
  }, [props.focus])
  return (
    <div class="field wide">
      <label for={id}>{props.label}</label>
      <textarea
        id={id}
        ref={box}
        rows={props.rows ?? 14}
        spellcheck={false}
        value={props.value}
        aria-describedby={props.hint ? `${id}-hint` : undefined}
        onInput={(event) => props.onValue(event.currentTarget.value)}
        onBlur={props.onLeave}
        onPaste={props.onPaste}
      />
      {props.hint ? (
        <p class="hint" id={`${id}-hint`}>
          {props.hint}
        </p>
      ) : null}
    </div>
  )
}

/** A button that does what its words say. */
export function Do(props: {
  readonly onDo: () => void
  readonly children: ComponentChildren
  readonly kind?: 'main' | 'plain' | 'huge'
  readonly off?: boolean
  readonly label?: string | undefined
  readonly pressed?: boolean
  readonly open?: boolean
}): JSX.Element {
  return (
    <button
      type="button"
      class={`do ${props.kind ?? 'plain'}`}
      disabled={props.off}
      aria-label={props.label}
      aria-pressed={props.pressed}
      aria-expanded={props.open}
      onClick={() => props.onDo()}
    >
      {props.children}
    </button>
  )
}

/** Files to bring in; the button is a label, so that the browser's own chooser is used. */
export function Bring(props: {
  readonly label: string
  readonly folder?: boolean
  readonly accept?: string
  readonly onFiles: (files: FileList) => void
}): JSX.Element {
  const id = useId()
  const box = useRef<HTMLInputElement>(null)
  useEffect(() => {
    if (props.folder) box.current?.setAttribute('webkitdirectory', '')
  }, [props.folder])
  return (
    <span class="bring">
      <input
        id={id}
        ref={box}
        type="file"
        multiple
        accept={props.accept}
        onChange={(event) => {
          const {files} = event.currentTarget
          if (files && files.length > 0) props.onFiles(files)
          event.currentTarget.value = ''
        }}
      />
      <label for={id} class="do plain">
        {props.label}
      </label>
    </span>
  )
}

/** What a reader found to say, gravest first. */
export function Messages(props: {
  readonly messages: readonly Message[]
  readonly title: string
  readonly most?: number
  /** Right under the page's title. */
  readonly top?: boolean
}): JSX.Element | null {
  if (props.messages.length === 0) return null
  const Heading = props.top ? 'h2' : 'h3'
  const rank = {error: 0, warning: 1, info: 2}
  const sorted = [...props.messages].sort((a, b) => rank[a.severity] - rank[b.severity])
  return (
    <section class="told">
      <Heading>{props.title}</Heading>
      <ul>
        {sorted.slice(0, props.most ?? 40).map((m, i) => (
          <li key={i} class={m.severity}>
            <strong>{words.severity[m.severity]}</strong> <span class="where">{words.lineOf(m.file, m.line)}</span>
            <br />
            {m.reason}
            {m.suggest ? <em> → {m.suggest}</em> : null}
          </li>
        ))}
      </ul>
    </section>
  )
}

/**
 * A drawing of the sheets. It was made as a tree and cleaned of all that may not stand in one (`src/sheets/page.ts`); the page's policy
 * would let no script of it run either.
 */
export function Figure(props: {readonly drawing: Drawing; readonly small?: boolean}): JSX.Element {
  const {svg} = props.drawing
  const paper = useRef<HTMLDivElement>(null)
  const [whole, setWhole] = useState<readonly string[] | null>(null)
  // A drawing is as long to read as a page of text: each of its parts waits for its own pause, and its place is kept for it.
  useEffect(() => {
    let stop = (): void => {}
    const put = (i: number): void => {
      const box = paper.current
      const part = svg[i]
      if (!box || part === undefined) {
        setWhole(svg)
        return
      }
      if (i === 0) box.innerHTML = part
      else box.firstElementChild?.insertAdjacentHTML('beforeend', part)
      stop = inAPause(() => put(i + 1))
    }
    stop = inAPause(() => put(0))
    return () => stop()
  }, [svg])
  const [, width, height] = /viewBox="[-\d.]+ [-\d.]+ ([\d.]+) ([\d.]+)"/.exec(svg[0] ?? '') ?? []
  return (
    <figure class={props.small ? 'drawing small' : 'drawing'} aria-busy={whole === svg ? undefined : 'true'}>
      <div
        ref={paper}
        class="paper"
        {...(props.small ? {} : {tabIndex: 0, role: 'group', 'aria-label': props.drawing.title})}
        {...(whole === null && width && height ? {style: {aspectRatio: `${width} / ${height}`}} : {})}
      />
      {props.drawing.lines.length > 0 ? (
        <figcaption>
          <strong>{props.drawing.title}</strong>
          <ul>
            {props.drawing.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </figcaption>
      ) : null}
    </figure>
  )
}

/** Give the person a file. */
export function save(name: string, content: BlobPart, type: string): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([content], {type}))
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
}
