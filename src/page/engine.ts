import type {Asks, Drawings, Name, Reply} from './protocol.js'
import {painted} from './slices.js'

/** Thrown by a question that was called off, or overtaken by a newer one of its kind. */
export class CalledOff extends Error {
  constructor() {
    super('called off')
    this.name = 'CalledOff'
  }
}

/** The id of the block the build puts at the page's end: the core as one script, gzip, then base64. */
const PACKED = 'hearthfall-engine'

/** The packed core. It stands last in the page, so that the page is drawn before it has come. */
async function packedCode(): Promise<string> {
  if (document.readyState === 'loading')
    await new Promise((resolve) => document.addEventListener('DOMContentLoaded', resolve, {once: true}))
  return document.getElementById(PACKED)?.textContent ?? ''
}

/** Unpacks it away from the page's thread, which has the first view to draw. */
const UNPACK = `onmessage = async ({data}) => {
  const packed = Uint8Array.from(atob(data), (c) => c.charCodeAt(0))
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'))
  postMessage(await new Response(stream).blob())
}`

const script = (code: BlobPart): string => URL.createObjectURL(new Blob([code], {type: 'text/javascript'}))

let address: Promise<string> | null = null

/** The core's code, unpacked once, as an address workers can be started from. */
function codeAddress(): Promise<string> {
  address ??= (async () => {
    await painted()
    const packed = await packedCode()
    const unpacker = new Worker(script(UNPACK))
    try {
      return script(
        await new Promise<Blob>((resolve, reject) => {
          unpacker.onmessage = ({data}: MessageEvent<Blob>) => resolve(data)
          unpacker.onerror = (event) => reject(new Error(event.message))
          unpacker.postMessage(packed)
        }),
      )
    } finally {
      unpacker.terminate()
    }
  })()
  return address
}

interface Waiting {
  readonly answer: (value: never) => void
  readonly fail: (error: Error) => void
  readonly progress: ((share: number) => void) | undefined
}

/** What an engine may say besides its answer. */
export interface Hearing {
  readonly progress?: (share: number) => void
  /** Comes after the answer. */
  readonly drawings?: (drawings: Drawings) => void
}

/**
 * One worker with the core in it. Questions are answered in order. `stop` ends whatever it is doing and starts a fresh one, so that
 * calling off never waits for the work to look up.
 */
export class Engine {
  #worker: Promise<Worker> | null = null
  readonly #waiting = new Map<number, Waiting>()
  /** Those who wait for drawings still when they have their answer: only of the newest plan. */
  #drawing: {readonly id: number; readonly put: (drawings: Drawings) => void} | null = null
  #next = 1

  /** Start it, so that the first question need not wait. */
  warm(): void {
    void this.#ready()
  }

  async ask<K extends Name>(name: K, ask: Asks[K]['ask'], hearing: Hearing = {}): Promise<Asks[K]['answer']> {
    const id = this.#next++
    const answer = new Promise<Asks[K]['answer']>((resolve, reject) => {
      this.#waiting.set(id, {answer: resolve as (value: never) => void, fail: reject, progress: hearing.progress})
    })
    if (hearing.drawings) this.#drawing = {id, put: hearing.drawings}
    const worker = await this.#ready()
    if (this.#waiting.has(id)) worker.postMessage({id, name, ask})
    return answer
  }

  /** Whether anything is being worked on. */
  get busy(): boolean {
    return this.#waiting.size > 0
  }

  /** Call off everything under way. */
  stop(): void {
    const old = this.#worker
    this.#worker = null
    void old?.then((worker) => worker.terminate())
    const waiting = [...this.#waiting.values()]
    this.#waiting.clear()
    for (const one of waiting) one.fail(new CalledOff())
    this.warm()
  }

  #ready(): Promise<Worker> {
    this.#worker ??= codeAddress().then((url) => {
      const worker = new Worker(url)
      worker.addEventListener('message', ({data}: MessageEvent<Reply>) => {
        if ('drawings' in data) {
          if (this.#drawing?.id === data.id) this.#drawing.put(data.drawings)
          return
        }
        const waiting = this.#waiting.get(data.id)
        if (!waiting) return
        if ('progress' in data) {
          waiting.progress?.(data.progress)
          return
        }
        this.#waiting.delete(data.id)
        if ('failed' in data) waiting.fail(new Error(data.failed))
        else waiting.answer(data.answer as never)
      })
      worker.addEventListener('error', (event) => {
        for (const one of this.#waiting.values()) one.fail(new Error(event.message))
        this.#waiting.clear()
      })
      return worker
    })
    return this.#worker
  }
}
