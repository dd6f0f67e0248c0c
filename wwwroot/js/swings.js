// A stop-watch for a swinging racket: a tap or the space bar at each turn on one side. The seconds go into a text field,
// which can be typed in as well; the program works everything out from there.

// Two taps closer than this are one finger.
const shortest = 0.2

for (const watch of document.querySelectorAll('[data-swings]')) {
  const field = document.getElementById(watch.dataset.swings)
  const status = watch.querySelector('[role=status]')
  const button = watch.querySelector('[data-tap]')
  let taps = []
  watch.hidden = false

  const tap = event => {
    const now = event.timeStamp / 1000
    if (taps.length && now - taps.at(-1) < shortest) return
    taps.push(now)
    field.value = taps.map(t => (t - taps[0]).toFixed(3)).join('\n')
    status.textContent = say(taps)
  }

  button.addEventListener('pointerdown', event => { event.preventDefault(); tap(event) })
  // Enter, and whatever else presses a button without a pointer.
  button.addEventListener('click', event => { if (event.detail === 0) tap(event) })
  document.addEventListener('keydown', event => {
    if (event.key !== ' ' || event.repeat || event.target.closest('input, textarea, select, a, [data-again]')) return
    event.preventDefault()
    tap(event)
  })
  // The space bar has tapped already when it comes up over the button.
  button.addEventListener('keyup', event => { if (event.key === ' ') event.preventDefault() })
  watch.querySelector('[data-again]').addEventListener('click', () => {
    taps = []
    field.value = ''
    status.textContent = 'No swing counted yet.'
  })
}

function say(taps) {
  if (taps.length < 2) return 'Counting from here.'
  const { counted, missed } = count(taps)
  const swings = counted.at(-1).swing
  const said = `${swings} ${swings === 1 ? 'swing' : 'swings'}${missed ? `, ${missed} without a tap` : ''}`
  if (counted.length < 4) return `${said}.`
  const { period, off } = line(counted)
  return `${said}, ${period.toFixed(3)} ± ${off.toFixed(3)} s each.`
}

// Which swing each tap belongs to, as the program counts it: a gap of twice the usual one is two, and a tap far too soon is none.
function count(taps) {
  const gaps = taps.slice(1).map((t, i) => t - taps[i]).sort((a, b) => a - b)
  const usual = gaps[Math.floor(gaps.length / 2)]
  const counted = [{ swing: 0, at: taps[0] }]
  let missed = 0
  for (const at of taps.slice(1)) {
    const swings = Math.round((at - counted.at(-1).at) / usual)
    if (swings < 1) continue
    counted.push({ swing: counted.at(-1).swing + swings, at })
    missed += swings - 1
  }
  return { counted, missed }
}

// The slope of a straight line through the taps, and its standard error.
function line(taps) {
  const n = taps.length
  const middle = taps.reduce((sum, t) => sum + t.swing, 0) / n
  const mean = taps.reduce((sum, t) => sum + t.at, 0) / n
  const spread = taps.reduce((sum, t) => sum + (t.swing - middle) ** 2, 0)
  const period = taps.reduce((sum, t) => sum + (t.swing - middle) * (t.at - mean), 0) / spread
  const left = taps.reduce((sum, t) => sum + (t.at - mean - period * (t.swing - middle)) ** 2, 0)
  return { period, off: Math.sqrt(left / (n - 2) / spread) }
}
