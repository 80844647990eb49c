import type {JSX} from 'preact'
import {useMemo, useState} from 'preact/hooks'
import {bringFolder, bringReceipts, type Given, givenOf} from './bring-in.js'
import {freeReceiptPath, receiptPaths, TYPED, titleOf, withDayLine, within} from './folder.js'
import {Later, useRest} from './later.js'
import {Bring, Choice, Do, Messages, Page} from './parts.js'
import {Fold, useGrowing} from './slices.js'
import {app, type State} from './state.js'
import {words} from './words.js'

const w = words.receipts

/** Give a receipt that was begun here the name of its first heading, once the person has left its text. */
function settleName(path: string): void {
  if (!/^receipts\/new-receipt(?:-\d+)?\.md$/.test(path)) return
  const {files} = app.state
  const text = files.get(path)
  const title = text ? titleOf(text) || text.trim().split('\n')[0]?.slice(0, 40) || '' : ''
  if (!text || !title) return
  const others = new Map(files)
  others.delete(path)
  const named = freeReceiptPath(others, title)
  const changes = new Map<string, string | null>([
    [path, null],
    [named, text],
  ])
  const day = files.get('day.md')
  if (day?.includes(path)) changes.set('day.md', day.split(path).join(named))
  app.edit(changes, 'name')
  app.choose(named, app.state.receipt.index)
}

export function Receipts({state}: {readonly state: State}): JSX.Element {
  const {files, receipt} = state
  const paths = receiptPaths(files)
  const [over, setOver] = useState(false)
  const {folder} = state
  const shown = useGrowing(paths.length, 10, 10)
  // At a key only the text changes; the pile is drawn again when something of it does.
  const pile = useMemo(() => {
    const listed = new Map(folder?.receipts.map((one) => [one.path, one]))
    return (
      <ul>
        {paths.slice(0, shown).map((path) => {
          const one = listed.get(path)
          return (
            <li key={path}>
              <button
                type="button"
                class="slip"
                aria-current={path === receipt.path ? 'true' : undefined}
                onClick={() => app.choose(path)}
              >
                <span class="slip-title">
                  {one && one.count > 0 ? one.title : titleOf(files.get(path) ?? '') || words.receipts.unnamed}
                </span>
                <span class="slip-note">
                  {[
                    path.replace(/^receipts\//, ''),
                    one ? w.count(one.count) : '',
                    one && one.faults > 0 ? w.faults(one.faults) : '',
                  ]
                    .filter(Boolean)
                    .join(' · ')}
                </span>
              </button>
            </li>
          )
        })}
      </ul>
    )
  }, [folder, paths.join('\n'), receipt.path, shown])
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping files is an extra; the buttons below do the same
    <div
      class={over ? 'receipts over' : 'receipts'}
      onDragOver={(event) => {
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={(event) => {
        if (event.currentTarget === event.target) setOver(false)
      }}
      onDrop={(event) => {
        event.preventDefault()
        setOver(false)
        void dropped(event.dataTransfer).then(bringFolder)
      }}
    >
      <h1>{w.title}</h1>
      <p class="lead">{w.lead}</p>
      {over ? <p class="letgo">{w.drop}</p> : null}
      <div class="row">
        <Do kind="main" onDo={() => app.beginReceipt()}>
          {w.begin}
        </Do>
        <Bring
          label={w.files}
          accept=".md,.markdown,.txt,text/plain,text/markdown"
          onFiles={(list) => void bringReceipts([...list].map((file) => givenOf(file)))}
        />
        <Bring label={w.folder} folder onFiles={(list) => void bringFolder([...list].map((file) => givenOf(file)))} />
      </div>
      <div class="bench">
        <section class="pile">
          <h2>{w.pile}</h2>
          {paths.length === 0 ? <p>{w.empty}</p> : null}
          {pile}
        </section>
        {receipt.path !== null && files.has(receipt.path) ? (
          <OneReceipt key={receipt.path} state={state} path={receipt.path} text={files.get(receipt.path)!} />
        ) : null}
      </div>
    </div>
  )
}

/** Files of a drop, folders opened. */
async function dropped(data: DataTransfer | null): Promise<Given[]> {
  const out: Given[] = []
  const entries = [...(data?.items ?? [])].map((item) => item.webkitGetAsEntry()).filter((entry) => entry !== null)
  const walk = async (entry: FileSystemEntry): Promise<void> => {
    if (entry.isFile) {
      const file = await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject))
      out.push(givenOf(file, entry.fullPath.replace(/^\//, '')))
      return
    }
    const reader = (entry as FileSystemDirectoryEntry).createReader()
    for (;;) {
      const some = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject))
      if (some.length === 0) return
      for (const one of some) await walk(one)
    }
  }
  for (const entry of entries) await walk(entry)
  if (out.length === 0) {
    const text = data?.getData('text/plain') ?? ''
    if (text.trim()) out.push({path: `${titleOf(text) || 'receipt'}.md`, text: () => Promise.resolve(text)})
  }
  return out
}

function OneReceipt({state, path, text}: {readonly state: State; readonly path: string; readonly text: string}): JSX.Element {
  const {reading} = state
  const read = reading?.path === path ? reading : null
  const chosen = read?.chosen ?? null
  const {readingOf} = state
  // What was read is drawn when it was read anew, and not at every key.
  const rest = useRest()
  const article = useMemo(
    () => (chosen && rest ? <rest.AsRead key={`${path} ${chosen.start}`} view={chosen} path={path} text={readingOf} /> : null),
    [chosen, path, readingOf, rest],
  )
  const typed = within(text, TYPED)
  return (
    <section class="one">
      {typed ? (
        <Page
          label={w.text}
          hint={w.textHint}
          value={text}
          rows={12}
          focus={text === ''}
          onValue={(value) => app.edit(new Map([[path, value]]), 'text', true)}
          onLeave={() => settleName(path)}
          onPaste={(event) => {
            // A paste too long to be typed in would hold the page up: it goes into the file without passing through the box.
            const pasted = event.clipboardData?.getData('text/plain') ?? ''
            if (within(pasted, TYPED) && pasted.length + text.length <= TYPED.text) return
            event.preventDefault()
            const box = event.currentTarget as HTMLTextAreaElement
            app.edit(new Map([[path, text.slice(0, box.selectionStart) + pasted + text.slice(box.selectionEnd)]]), 'text')
          }}
        />
      ) : (
        <div class="field wide">
          <p>{w.big}</p>
          <pre class="long">{text.slice(0, 4000)}</pre>
        </div>
      )}
      <Fold class="facts" title={w.facts}>
        {() => <Later>{({Facts}) => <Facts path={path} text={text} />}</Later>}
      </Fold>
      <div class="row">
        <Do
          onDo={() => {
            const changes = new Map<string, string | null>([[path, null]])
            let day = app.state.files.get('day.md') ?? ''
            const lines = [...(state.folder?.day?.items ?? []), ...(state.folder?.day?.spare ?? [])].filter(
              (item) => item.file === path,
            )
            for (const item of lines.sort((a, b) => b.line - a.line)) day = withDayLine(day, item.line, null)
            if (lines.length > 0) changes.set('day.md', day)
            app.edit(changes, 'take receipt')
            app.choose(receiptPaths(app.state.files)[0] ?? null)
          }}
        >
          {w.take}
        </Do>
      </div>
      <div class="as-read" aria-busy={read ? undefined : 'true'} data-took={Math.round(state.readingMs)}>
        <h2>{w.read}</h2>
        {read && read.titles.length > 1 ? (
          <Choice
            label={w.several}
            value={String(read.index)}
            options={read.titles.slice(0, 2000).map((title, i) => [String(i), `${i + 1}. ${title}`] as const)}
            onValue={(value) => app.choose(path, Number(value))}
          />
        ) : null}
        {read ? chosen ? (article ?? <p>{w.reading}</p>) : <p>{w.nothing}</p> : <p>{text.trim() ? w.reading : w.nothing}</p>}
        {read ? <Messages messages={read.messages.filter((m) => m.rule !== 'empty')} title={w.messages} most={12} /> : null}
      </div>
    </section>
  )
}
