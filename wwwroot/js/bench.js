// Single keys for the bench and for tickets, where the settings allow them. Every one of them presses what is there to be pressed.
const rows = () => [...document.querySelectorAll('[data-rows] .job')]
const current = () => document.activeElement?.closest('.job')
const list = document.querySelector('[data-keys-list]')

const step = by => {
  const all = rows()
  const at = all.indexOf(current())
  const to = all[at < 0 ? (by > 0 ? 0 : all.length - 1) : Math.min(Math.max(at + by, 0), all.length - 1)]
  to?.querySelector('.no').focus()
}

const press = (where, what) => where?.querySelector(what)?.click()

const keys = {
  j: () => step(1),
  k: () => step(-1),
  m: () => press(current() ?? (rows().length ? null : document.querySelector('main')), '[data-move]'),
  u: () => press(document, '[data-undo]'),
  n: () => press(document, '[data-key=n]'),
  '?': () => {
    if (!list) return
    list.open = !list.open
    list.querySelector('summary').focus()
  },
}
const arrows = { ArrowDown: keys.j, ArrowUp: keys.k }

if (document.body.dataset.keys !== 'off') {
  if (list) list.hidden = false
  document.addEventListener('keydown', event => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || event.target.closest('input, textarea, select, [contenteditable]')) return
    const act = keys[event.key] ?? (current() ? arrows[event.key] : undefined)
    if (!act) return
    event.preventDefault()
    act()
  })
}

// A timer goes on while somebody looks.
const timers = document.querySelectorAll('[data-since]')
if (timers.length) {
  setInterval(() => {
    for (const timer of timers) timer.textContent = Math.floor((Date.now() - new Date(timer.dataset.since)) / 60000)
  }, 20000)
}
