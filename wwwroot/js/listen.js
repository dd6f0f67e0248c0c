// Hears the pitch of a strung bed. Everything happens in this browser: no sound is kept or sent, only the number goes
// into the form, and only when the form is sent.

const taps = 5
const length = 16384
const padded = 65536

// Where the magnitude peaks between two frequencies, to a fraction of a bin: a Hann window, zero padding, and a parabola
// through the logarithms of the three highest bins (Smith and Serra 1987).
export function pitchOf (samples, rate, lowest, highest) {
  const re = new Float64Array(padded)
  const im = new Float64Array(padded)
  for (let i = 0; i < samples.length; i++) re[i] = samples[i] * (0.5 - 0.5 * Math.cos(2 * Math.PI * i / (samples.length - 1)))
  transform(re, im)
  const power = i => Math.log(re[i] * re[i] + im[i] * im[i] + 1e-30)
  const from = Math.ceil(lowest * padded / rate)
  const to = Math.floor(highest * padded / rate)
  let best = from
  for (let i = from; i <= to; i++) if (power(i) > power(best)) best = i
  const [a, b, c] = [power(best - 1), power(best), power(best + 1)]
  const bend = a - 2 * b + c
  return (best + (bend === 0 ? 0 : (a - c) / (2 * bend))) * rate / padded
}

// Radix-2 Cooley and Tukey, in place.
function transform (re, im) {
  const n = re.length
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1
    for (; j & bit; bit >>= 1) j ^= bit
    j ^= bit
    if (i < j) {
      [re[i], re[j]] = [re[j], re[i]];
      [im[i], im[j]] = [im[j], im[i]]
    }
  }
  for (let size = 2; size <= n; size <<= 1) {
    const half = size >> 1
    for (let k = 0; k < half; k++) {
      const angle = -2 * Math.PI * k / size
      const [wr, wi] = [Math.cos(angle), Math.sin(angle)]
      for (let i = k; i < n; i += size) {
        const j = i + half
        const [xr, xi] = [re[j] * wr - im[j] * wi, re[j] * wi + im[j] * wr];
        [re[j], im[j]] = [re[i] - xr, im[i] - xi]
        re[i] += xr
        im[i] += xi
      }
    }
  }
}

const loudness = samples => Math.sqrt(samples.reduce((sum, s) => sum + s * s, 0) / samples.length)

const median = numbers => [...numbers].sort((a, b) => a - b)[numbers.length >> 1]

async function listen (box) {
  const told = box.querySelector('[role=status]')
  const stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false } })
  const context = new AudioContext()
  const ear = context.createAnalyser()
  ear.fftSize = length
  context.createMediaStreamSource(stream).connect(ear)
  const all = new Float32Array(length)
  const heard = []
  let quiet = Infinity
  const until = Date.now() + 30000
  while (heard.length < taps && Date.now() < until) {
    await new Promise(resolve => setTimeout(resolve, 25))
    ear.getFloatTimeDomainData(all)
    const now = loudness(all.subarray(length - 1024))
    if (now < Math.max(4 * quiet, 0.01)) {
      quiet = Math.min(now, 1.05 * quiet)
      continue
    }
    // The tap itself is a thud; the tone is what rings after it.
    await new Promise(resolve => setTimeout(resolve, 1000 * length / context.sampleRate))
    ear.getFloatTimeDomainData(all)
    heard.push(pitchOf(all, context.sampleRate, +box.dataset.lowest, +box.dataset.highest))
    const hertz = median(heard)
    told.textContent = box.dataset.heard.replace('{n}', heard.length).replace('{hertz}', hertz.toFixed(1)).replace('{spread}', (Math.max(...heard) - Math.min(...heard)).toFixed(1))
    document.getElementById(box.dataset.target).value = hertz.toFixed(1)
    await new Promise(resolve => setTimeout(resolve, 200))
    ear.getFloatTimeDomainData(all)
    quiet = loudness(all.subarray(length - 1024))
  }
  for (const track of stream.getTracks()) track.stop()
  await context.close()
}

for (const box of document.querySelectorAll('[data-listen]')) {
  // Browsers grant the microphone over https only, and on this machine.
  if (!navigator.mediaDevices?.getUserMedia) break
  box.hidden = false
  const button = box.querySelector('button')
  button.addEventListener('click', async () => {
    button.disabled = true
    try {
      await listen(box)
    } catch {
      box.querySelector('[role=status]').textContent = box.dataset.denied
    }
    button.disabled = false
  })
}
