import type {JSX} from 'preact'
import {type DayLine, type Listed, listed, receiptPaths, titleOf, withDayLine, withDayLineAdded, withTitle} from './folder.js'
import {frontFault, stated, withStated} from './front.js'
import {Choice, Do, Field, FormOver, Messages, Page} from './parts.js'
import {Fold, Soon, useGrowing} from './slices.js'
import {app, messagesOf, type State} from './state.js'
import {words} from './words.js'

const w = words.day

/** A day to begin with: a week from now, so that there is time to prepare. */
function example(): string {
  const date = new Date(Date.now() + 7 * 86_400_000)
  const iso = `${date.getFullYear()}-${String(date.getMonth() + 1).padStart(2, '0')}-${String(date.getDate()).padStart(2, '0')}`
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone
  return `---\ndate: ${iso}\n${zone && zone !== 'UTC' ? `zone: ${zone}\n` : ''}people: 12\nfire from: 6 am\nserve: 1 pm\nhands: 1\n---\n\n# Bake day\n`
}

type When = 'no' | 'bake' | 'spare'

export function Company({state}: {readonly state: State}): JSX.Element {
  const text = state.files.get('day.md')
  const shown = useGrowing(state.files.size, 1, 3)
  if (text === undefined)
    return (
      <div>
        <h1>{w.title}</h1>
        <p class="lead">{w.lead}</p>
        <Do
          kind="main"
          onDo={() => {
            let day = example()
            for (const path of receiptPaths(app.state.files))
              day = withDayLineAdded(day, {file: path, title: titled(app.state, path), amount: '', wanted: ''}, false)
            app.edit(new Map([['day.md', day]]), 'day')
          }}
        >
          {w.begin}
        </Do>
      </div>
    )
  const said = stated(text)
  const get = (key: string): string => {
    const value = said.get(key)
    return typeof value === 'string' ? value : ''
  }
  const change = (next: string, what = 'day'): void => app.edit(new Map([['day.md', next]]), what, true)
  const set = (key: string, value: string): void =>
    change(withStated(app.state.files.get('day.md') ?? '', {[key]: value.trim() === '' ? null : value.trim()}))
  const fault = frontFault(text)
  const lines = listed(text)
  const paths = receiptPaths(state.files)
  const gone = lines.filter((line) => !state.files.has(line.file))
  return (
    <div class="company">
      <h1>{w.title}</h1>
      <p class="lead">{w.lead}</p>
      <FormOver refused={fault && words.frontFault(fault.line, fault.why)}>
        <div class="fields">
          <Field
            label={w.name}
            value={titleOf(text)}
            onValue={(value) => change(withTitle(app.state.files.get('day.md') ?? '', value || w.title))}
          />
          <Field label={w.date} type="date" value={get('date')} onValue={(value) => set('date', value)} />
          <Field
            label={w.people}
            mode="numeric"
            value={get('people')}
            example={w.example.people}
            onValue={(value) => set('people', value)}
          />
          <Field
            label={w.fireFrom}
            value={get('fire from')}
            example={w.example.fireFrom}
            onValue={(value) => set('fire from', value)}
          />
          <Field label={w.serve} value={get('serve')} example={w.example.serve} onValue={(value) => set('serve', value)} />
          <Field
            label={w.hands}
            mode="numeric"
            value={get('hands')}
            example={w.example.hands}
            onValue={(value) => set('hands', value)}
          />
          <Field
            label={w.firings}
            mode="numeric"
            value={get('firings')}
            example={w.example.firings}
            onValue={(value) => set('firings', value)}
          />
          <Field label={w.zone} value={get('zone')} example={w.example.zone} onValue={(value) => set('zone', value)} />
        </div>
      </FormOver>
      <h2>{w.list}</h2>
      <p class="hint">{w.listHint}</p>
      {paths.length === 0 ? <p>{w.noReceipts}</p> : null}
      <table class="list">
        <thead>
          <tr>
            <th scope="col">{w.receipt}</th>
            <th scope="col">{w.when}</th>
            <th scope="col">{w.amount}</th>
            <th scope="col">{w.wanted}</th>
          </tr>
        </thead>
        <tbody>
          {paths.slice(0, shown).map((path) => {
            const line = lines.find((one) => one.file === path)
            return (
              <Item key={path} path={path} line={line ?? null} title={line?.title ?? titled(state, path)} serve={get('serve')} />
            )
          })}
          {gone.map((line) => (
            <Item
              key={`${line.file}-${line.line}`}
              path={line.file}
              line={line}
              title={`${line.title} (${w.missing})`}
              serve={get('serve')}
            />
          ))}
        </tbody>
      </table>
      <Soon>
        <Messages messages={messagesOf(state, 'day.md')} title={words.receipts.messages} />
      </Soon>
      <Fold title={w.asWritten}>
        {() => <Page label={w.asWritten} hint={w.asWrittenHint} value={text} rows={18} onValue={(value) => change(value)} />}
      </Fold>
    </div>
  )
}

function titled(state: State, path: string): string {
  return state.folder?.receipts.find((one) => one.path === path)?.title ?? (titleOf(state.files.get(path) ?? '') || path)
}

function Item({
  path,
  line,
  title,
  serve,
}: {
  readonly path: string
  readonly line: Listed | null
  readonly title: string
  /** When they eat: by then a dish is wanted, where nothing else is said. */
  readonly serve: string
}): JSX.Element {
  const when: When = line === null ? 'no' : line.spare ? 'spare' : 'bake'
  /** The text as it stands at this moment: a key may come before the page is drawn anew. */
  const now = (): {text: string; line: Listed | undefined} => {
    const text = app.state.files.get('day.md') ?? ''
    return {text, line: listed(text).find((one) => one.file === path)}
  }
  const put = (change: Partial<DayLine>): void => {
    const {text, line: old} = now()
    if (old) app.edit(new Map([['day.md', withDayLine(text, old.line, {...old, ...change})]]), 'list', true)
  }
  return (
    <tr>
      <th scope="row">{title}</th>
      <td>
        <Choice<When>
          label={w.whenFor(title)}
          bare
          value={when}
          options={(['no', 'bake', 'spare'] as const).map((one) => [one, w.whens[one]] as const)}
          onValue={(value) => {
            const {text, line: old} = now()
            const without = old ? withDayLine(text, old.line, null) : text
            const entry = {file: path, title: old?.title ?? title, amount: old?.amount ?? '', wanted: old?.wanted ?? ''}
            app.edit(
              new Map([['day.md', value === 'no' ? without : withDayLineAdded(without, entry, value === 'spare')]]),
              'list',
            )
          }}
        />
      </td>
      <td>
        {line ? (
          <Field
            label={w.amountFor(title)}
            bare
            value={line.amount}
            example={w.amountExample}
            onValue={(amount) => put({amount})}
          />
        ) : null}
      </td>
      <td>
        {line ? (
          <Field
            label={w.wantedFor(title)}
            bare
            value={line.wanted}
            example={line.spare ? '' : serve}
            onValue={(wanted) => put({wanted})}
          />
        ) : null}
      </td>
    </tr>
  )
}
