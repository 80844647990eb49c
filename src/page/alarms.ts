/** Sound, shaking and the screen, where the device allows them. */

let audio: AudioContext | null = null

/** Sound may only begin with a touch; call it from one. */
export function allowSound(): void {
  try {
    audio ??= new AudioContext()
    void audio.resume()
  } catch {
    audio = null
  }
}

/** One tone. `at` is seconds from now. */
export function beep(hertz: number, seconds: number, at = 0, loud = 0.4): void {
  if (!audio || audio.state !== 'running') return
  const from = audio.currentTime + at
  const tone = audio.createOscillator()
  const volume = audio.createGain()
  tone.type = 'square'
  tone.frequency.value = hertz
  volume.gain.setValueAtTime(loud, from)
  volume.gain.exponentialRampToValueAtTime(0.001, from + seconds)
  tone.connect(volume).connect(audio.destination)
  tone.start(from)
  tone.stop(from + seconds)
}

/** Three tones, low enough to be heard over a fire and by old ears. */
export function ring(): void {
  for (const [i, hertz] of [523, 659, 784].entries()) beep(hertz, 0.45, i * 0.5, 0.6)
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
