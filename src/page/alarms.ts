/** Sound, shaking and the screen, where the device allows them. */

/** Samples a second: enough for plain tones. */
const RATE = 11_025

/** Tones one after the other as a WAV file (RIFF, 8-bit PCM): a file can be made and played without holding the page up. */
export function wave(
  tones: ReadonlyArray<{readonly hertz: number; readonly from: number; readonly seconds: number}>,
): Uint8Array {
  const length = Math.ceil(RATE * Math.max(...tones.map(({from, seconds}) => from + seconds)))
  const file = new Uint8Array(44 + length)
  const view = new DataView(file.buffer)
  const text = (at: number, words: string): void => {
    for (let i = 0; i < words.length; i++) file[at + i] = words.charCodeAt(i)
  }
  text(0, 'RIFF')
  view.setUint32(4, 36 + length, true)
  text(8, 'WAVEfmt ')
  view.setUint32(16, 16, true)
  view.setUint16(20, 1, true)
  view.setUint16(22, 1, true)
  view.setUint32(24, RATE, true)
  view.setUint32(28, RATE, true)
  view.setUint16(32, 1, true)
  view.setUint16(34, 8, true)
  text(36, 'data')
  view.setUint32(40, length, true)
  file.fill(128, 44)
  for (const {hertz, from, seconds} of tones)
    for (let i = 0; i < seconds * RATE; i++) {
      const at = 44 + Math.round(from * RATE) + i
      if (at >= file.length) break
      // A square tone carries over a fire; it fades, so that it does not click.
      const loud = 90 * Math.exp((-4 * i) / (seconds * RATE))
      file[at] = 128 + Math.round((Math.floor((2 * hertz * i) / RATE) % 2 === 0 ? 1 : -1) * loud)
    }
  return file
}

/** The second, every tenth second, and the alarm: three tones, low enough to be heard over a fire and by old ears. */
const sounds = {
  second: [{hertz: 660, from: 0, seconds: 0.12}],
  tenth: [{hertz: 880, from: 0, seconds: 0.2}],
  alarm: [523, 659, 784].map((hertz, i) => ({hertz, from: i * 0.5, seconds: 0.45})),
} as const
export type Sound = keyof typeof sounds

const players = new Map<Sound, HTMLAudioElement>()

function playerOf(sound: Sound): HTMLAudioElement {
  let player = players.get(sound)
  if (!player) {
    player = new Audio(URL.createObjectURL(new Blob([wave(sounds[sound]) as BlobPart], {type: 'audio/wav'})))
    players.set(sound, player)
  }
  return player
}

/** Sound may only begin with a touch; call it from one. Each player is started once unheard, and may then be started at any time. */
export function allowSound(sounds: readonly Sound[] = ['alarm']): void {
  for (const name of sounds) {
    if (players.has(name)) continue
    const player = playerOf(name)
    player.muted = true
    void player
      .play()
      .then(() => player.pause())
      .catch(() => players.delete(name))
      .finally(() => {
        player.muted = false
        player.currentTime = 0
      })
  }
}

/** Sound it now, from its beginning. */
export function sound(name: Sound): void {
  const player = playerOf(name)
  player.muted = false
  player.currentTime = 0
  void player.play().catch(() => {
    // A device that is not allowed to sound shakes, and the page shows.
  })
}

/** Shake the device. */
export function shake(pattern: number[]): void {
  try {
    navigator.vibrate?.(pattern)
  } catch {
    // A device that will not shake rings.
  }
}

let lock: WakeLockSentinel | null = null

/** Keep the screen on, or let it go. The browser lets go by itself when the page is hidden; call again when it is back. */
export async function awake(on: boolean): Promise<void> {
  try {
    if (on && document.visibilityState === 'visible')
      lock = lock?.released === false ? lock : await navigator.wakeLock.request('screen')
    else if (!on) {
      await lock?.release()
      lock = null
    }
  } catch {
    // A device with an empty battery refuses; the page works without.
  }
}
