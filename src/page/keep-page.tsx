import type {JSX} from 'preact'
import {useState} from 'preact/hooks'
import {bringDay, bringFolder, givenOf} from './bring-in.js'
import {pageWith} from './embedded.js'
import {isText, titleOf} from './folder.js'
import {Bring, Do, save} from './parts.js'
import {app, type State} from './state.js'
import {words} from './words.js'
import {unzipFolder, zipFolder} from './zip.js'

const w = words.keep

/** A plain name for a file. */
function stem(title: string): string {
  return (
    title
      .normalize('NFKD')
      .replace(/[\u0300-\u036f]/g, '')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 50) || 'bake-day'
  )
}

/** The page as it was opened, without what it has drawn and without a day. */
function barePage(): string {
  const copy = document.documentElement.cloneNode(true) as HTMLElement
  const page = copy.querySelector('#page')
  if (page) page.innerHTML = ''
  for (const made of copy.querySelectorAll('link[rel="manifest"], [data-made]')) made.remove()
  copy.removeAttribute('data-light')
  return `<!doctype html>\n${copy.outerHTML}\n`
}

async function bring(list: readonly File[]): Promise<void> {
  const files = new Map<string, string>()
  try {
    for (const file of list) {
      if (/\.zip$/i.test(file.name))
        for (const [path, text] of await unzipFolder(new Uint8Array(await file.arrayBuffer()))) files.set(path, text)
      else if (isText(file.name)) files.set(file.webkitRelativePath || file.name, await givenOf(file).text())
    }
  } catch {
    app.say(w.inBad)
    return
  }
  await bringDay(files)
}

export function KeepPage({state}: {readonly state: State}): JSX.Element {
  const title = titleOf(state.files.get('day.md') ?? '') || words.untitled
  const [sure, setSure] = useState<string | null>(null)
  const done = state.steps.filter((step) => !step.undone)
  const when = (at: number): string => new Date(at).toLocaleString('en-GB', {dateStyle: 'medium', timeStyle: 'short'})
  return (
    <div class="keep">
      <h1>{w.title}</h1>
      <p class="lead">{w.lead}</p>
      <p class="hint">{w.care}</p>
      <div class="bench even">
        <section>
          <h2>{w.out}</h2>
          <p>{w.outLead}</p>
          <Do
            kind="main"
            off={state.files.size === 0}
            onDo={() =>
              void zipFolder(state.files, stem(title)).then((bytes) => save(`${stem(title)}.zip`, bytes, 'application/zip'))
            }
          >
            {w.outZip}
          </Do>
          <p>{w.outPageLead}</p>
          <Do
            off={state.files.size === 0}
            onDo={() => save(`${stem(title)}.html`, pageWith(barePage(), state.files), 'text/html')}
          >
            {w.outPage}
          </Do>
          <h2>{w.in}</h2>
          <div class="row">
            <Bring label={w.inZip} accept=".zip,.md,.markdown,.txt" onFiles={(list) => void bring([...list])} />
            <Bring
              label={words.receipts.folder}
              folder
              onFiles={(list) => void bringFolder([...list].map((file) => givenOf(file)))}
            />
          </div>
          {/^https?:$/.test(location.protocol) ? <Hosted /> : null}
        </section>
        <section>
          <h2>{w.shelf}</h2>
          <ul class="shelf">
            {state.shelf.map((one) => {
              const name = one.title || words.untitled
              return (
                <li key={one.id} aria-current={one.id === state.day ? 'true' : undefined}>
                  <strong>{name}</strong>{' '}
                  <span class="hint">{one.id === state.day ? w.opened : w.changed(when(one.changed))}</span>
                  <div class="row">
                    {one.id === state.day ? null : (
                      <Do onDo={() => void app.open(one.id)} label={`${w.open}: ${name}`}>
                        {w.open}
                      </Do>
                    )}
                    {sure === one.id ? (
                      <>
                        <span>{w.removeSure(name)}</span>
                        <Do onDo={() => setSure(null)}>{w.no}</Do>
                        <Do onDo={() => void app.remove(one.id).then(() => setSure(null))}>{w.yes}</Do>
                      </>
                    ) : (
                      <Do onDo={() => setSure(one.id)} label={`${w.remove}: ${name}`}>
                        {w.remove}
                      </Do>
                    )}
                  </div>
                </li>
              )
            })}
          </ul>
          <Do onDo={() => void app.begin()}>{w.fresh}</Do>
        </section>
      </div>
      <h2>{w.steps}</h2>
      <p class="hint">{w.stepsLead}</p>
      <div class="row">
        <Do off={done.length === 0} onDo={() => void app.undo()}>
          {words.undo}
        </Do>
        <Do off={done.length === state.steps.length} onDo={() => void app.redo()}>
          {words.redo}
        </Do>
      </div>
      {state.steps.length === 0 ? <p>{w.noSteps}</p> : null}
      <ol class="steps">
        {[...state.steps]
          .reverse()
          .slice(0, 60)
          .map((step) => (
            <li key={step.number} class={step.undone ? 'undone' : ''}>
              {words.steps[step.what] ?? step.what} <span class="hint">{step.changes.map((one) => one.path).join(', ')}</span>{' '}
              {step.undone ? <em>({w.undone})</em> : null}
            </li>
          ))}
      </ol>
      <h2>{w.files}</h2>
      <ul class="files">
        {[...state.files.keys()].sort().map((path) => (
          <li key={path}>
            <Do onDo={() => save(path.split('/').at(-1) ?? path, state.files.get(path) ?? '', 'text/markdown')}>{path}</Do>
          </li>
        ))}
      </ul>
    </div>
  )
}

/** Where the page comes from a server: kept by a service worker, if the file for it lies beside the page. Nothing is asked unless one presses. */
function Hosted(): JSX.Element {
  const [said, setSaid] = useState('')
  return (
    <>
      <Do
        onDo={() =>
          void navigator.serviceWorker
            ?.register(new URL(`hearthfall-offline.js?page=${encodeURIComponent(location.pathname)}`, location.href))
            .then(() => navigator.serviceWorker.ready)
            .then(() => setSaid(w.hostedDone))
            .catch(() => setSaid(w.hostedNot))
        }
      >
        {w.hosted}
      </Do>
      <p role="status">{said}</p>
    </>
  )
}
